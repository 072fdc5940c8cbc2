using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>A count posts the difference between what is there and what the book says.</summary>
internal static class CountRules
{
    public static void Post(StockCount count, Draft draft)
    {
        var reason = Require.Reason(count.Reason);
        Require.That(count.Found.Base >= 0, "a count cannot be negative; say what is there, 0 for nothing");
        var item = draft.Holdings.Item(count.What);
        if (item is null && draft.Film.Find(count.What) is { } sheets)
        {
            Miss(sheets, count, reason, draft);
            return;
        }

        var containers = item is not null ? draft.ContainersOf(item).ToList() : [draft.Container(count.What)];
        item ??= draft.Item(containers[0].Lot.Item);
        Require.Unit(item, count.Found);
        var book = item.Of(containers.Sum(container => container.Held.Base));
        var style = draft.Style;
        var difference = count.Found - book;
        Require.That(!difference.IsZero,
            $"{count.What} holds {book.ToText(style)} in the book too; there is nothing to post");

        if (difference.Base < 0)
            draft.Take(item, item.Of(-difference.Base), ContainerName(item, count), Places.LostOrGained,
                booksDifference: false);
        else
        {
            Require.That(containers.Count > 0,
                $"no container of {item.Code} holds anything; record a delivery instead");
            draft.Find(containers[0], difference);
        }

        var sign = difference.Base > 0 ? "+" : "";
        draft.Summary =
            $"counted {count.What}: {count.Found.ToText(style)}, {sign}{difference.ToText(style)}, {reason}";
    }

    /// <summary>
    /// Sheets that are missing from a holder or a box of exposed ones; those in excess have a story, and are unloaded
    /// instead.
    /// </summary>
    private static void Miss(IReadOnlyList<Sheet> sheets, StockCount count, string reason, Draft draft)
    {
        Require.That(count.Found.Unit == Unit.Sheet, $"{count.What} holds sheets, not {count.Found.Unit.Name()}");
        var missing = sheets.Count - count.Found.Base;
        Require.That(missing != 0, $"{count.What} holds {count.Found} in the book too; there is nothing to post");
        Require.That(
            missing > 0,
            $"{count.What} holds {new Quantity(sheets.Count, Unit.Sheet)} in the book; record the loading or unloading "
                + "of the others");
        foreach (var sheet in sheets.Take((int)missing))
            draft.Film.Move(sheet, Places.LostOrGained);
        draft.Film.RemindOfLabels();
        draft.Summary = $"counted {count.What}: {count.Found}, -{new Quantity(missing, Unit.Sheet)}, {reason}";
    }

    private static string? ContainerName(Item item, StockCount count) =>
        item.Code.Equals(count.What.Trim(), StringComparison.OrdinalIgnoreCase) ? null : count.What;
}
