using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Rules;

/// <summary>Boxes move between freezer, fridge and shelf; lots are given an exposure index.</summary>
internal static class StorageRules
{
    public static void Post(StorageMove move, Draft draft)
    {
        var container = draft.Container(move.Container);
        var to = Require.Name(move.To, "the storage");
        Require.That(!to.Equals(container.Storage, StringComparison.OrdinalIgnoreCase),
            $"{container.Code} is kept in the {to} already");
        Require.That(
            move.OpensFrom is null || move.OpensFrom >= move.Date,
            "the first day of opening cannot be before the day of the move");
        var hours = draft.Holdings.Settings.ThawHours(draft.Item(container.Lot.Item), container.Storage, to);
        var warming = Warming.Of(draft.Date, hours, move.OpensFrom);
        draft.Add(new ContainerStored(container.Place, to, warming?.From));
        if (warming is not null)
            draft.Remark($"{container.Code} comes out of the cold: leave it closed {warming.Text}, or it sweats");
        draft.Summary =
            $"{container.Code} to the "
                + $"{to}{(warming is { From: var from } ? $", to be opened from {Dates.Text(from)}" : "")}";
    }

    public static void Post(ExposureIndexSetting rating, Draft draft)
    {
        var container = draft.Container(rating.Container);
        Require.That(draft.Item(container.Lot.Item).Kind == Stock.ItemKind.Film,
            $"{container.Lot.Item} is not film, and only film has an exposure index; name a box of film");
        Require.That(rating.ExposureIndex is >= 1 and <= 100_000, "the exposure index must be from 1 to 100000");
        draft.Add(new ExposureIndexSet(container.Lot.Id, rating.ExposureIndex));
        var batch = container.Lot.Batch.Length > 0 ? $", {container.Lot.NumberText(Stock.ItemKind.Film)}" : "";
        draft.Summary = $"{container.Lot.Item}{batch}, is exposed at {rating.ExposureIndex}";
    }
}
