using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>A sealed container is opened.</summary>
internal static class OpeningRules
{
    public static void Post(Opening opening, Draft draft)
    {
        var container = draft.Holdings.Item(opening.Container) is { } item
            ? Sealed(item, opening.Batch, draft)
            : draft.Container(opening.Container);
        SuspicionRules.RequireClear(container, draft);
        if (!container.IsSealed)
            throw new RefusedException(
                RefusalKind.AlreadyThere,
                container.OpenedOn is { } day
                    ? $"{container.Code} is open since {Dates.Text(day)}; open another, or amend that entry first"
                    : $"{container.Code} is no longer full, so it is open; open another");
        draft.Add(new ContainerOpened(container.Place));
        draft.DoubtTheCold(container);
        draft.Touch(container with { OpenedOn = draft.Date });
        draft.Summary = $"opened {container.Code}";
        if (opening.Envelopes is { } envelopes)
            TakeOut(envelopes, container, draft);
    }

    /// <summary>
    /// A large box holds its sheets in sealed envelopes: each becomes a container of its own, and the box is empty.
    /// </summary>
    private static void TakeOut(int envelopes, Container box, Draft draft)
    {
        Require.That(draft.Item(box.Lot.Item).Kind == ItemKind.Film,
            $"{box.Code} holds no film, and so no envelopes; leave the envelopes out");
        Require.That(
            envelopes is >= 2 and <= 50 && box.Held.Base % envelopes == 0,
            $"{box.Held} do not lie in {envelopes} envelopes of the same size; at least 2 and at most 50 are accepted");
        var size = box.Held with { Base = box.Held.Base / envelopes };
        for (var i = 0; i < envelopes; i++)
        {
            var (number, cost) = (draft.NextContainerNumber(box.Lot.Item), box.CostOf(size));
            var (place, code) = (draft.NewPlace(), $"{box.Lot.Item}/{number}");
            draft.Add(new ContainerArrived(place, code, number, box.Lot, size));
            draft.Add(new Movement(box.Lot.Id, box.Place, place, size.Base, cost));
            draft.Touch(new(place, code, box.Lot, size, size, cost, null) { Moves = box.Moves });
            box = box.Less(size, cost);
        }

        draft.Touch(box with { OpenedOn = draft.Date });
        draft.Summary += $": {envelopes} envelopes of {size}";
    }

    private static Container Sealed(Item item, string batch, Draft draft) =>
        draft.ContainersOf(item).OrderBy(container => !draft.IsClear(container)).FirstOrDefault(container =>
            container.IsSealed
                && (batch.Length == 0 || container.Lot.Batch.Equals(batch, StringComparison.OrdinalIgnoreCase)))
        ?? throw new RefusedException(
            RefusalKind.Unknown,
            $"there is no sealed container of {item.Code}{(batch.Length > 0 ? $" of batch {batch}" : "")} on "
                + $"{Dates.Text(draft.Date)}");
}
