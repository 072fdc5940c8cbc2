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
        if (!container.IsSealed)
            throw new RefusedException(
                RefusalKind.AlreadyThere,
                $"{container.Code} is open since {Dates.Text(container.OpenedOn!.Value)}; open another, or correct that entry first");
        draft.Add(new ContainerOpened(container.Place));
        draft.RemarkOnCold(container);
        draft.Touch(container with { OpenedOn = draft.Date });
        draft.Summary = $"opened {container.Code}";
    }

    private static Container Sealed(Item item, string batch, Draft draft) =>
        draft.ContainersOf(item).FirstOrDefault(container =>
            container.IsSealed && (batch.Length == 0 || container.Lot.Batch.Equals(batch, StringComparison.OrdinalIgnoreCase)))
        ?? throw new RefusedException(
            RefusalKind.Unknown,
            $"there is no sealed container of {item.Code}{(batch.Length > 0 ? $" of batch {batch}" : "")} on {Dates.Text(draft.Date)}");
}
