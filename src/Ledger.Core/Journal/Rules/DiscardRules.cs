using Ledger.Core.Baths;
using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>A bath is discarded, or stock is discarded unused.</summary>
internal static class DiscardRules
{
    public static void Post(Discard discard, Draft draft)
    {
        var reason = Require.Reason(discard.Reason);
        if (draft.Holdings.Bath(discard.What) is not null)
            DiscardWhole(draft.Bath(discard.What), discard, reason, draft);
        else if (draft.Holdings.Item(discard.What) is { } item)
            DiscardUnused(item, null, discard, reason, draft);
        else if (draft.Film.Find(discard.What) is { } sheets)
            DiscardUnused(sheets, discard, reason, draft);
        else
        {
            var container = draft.Container(discard.What);
            DiscardUnused(draft.Item(container.Lot.Item), container, discard, reason, draft);
        }
    }

    private static void DiscardWhole(Bath bath, Discard discard, string reason, Draft draft)
    {
        Require.That(discard.Quantity is null,
            $"{bath.Code} is a bath, which is discarded whole; leave the quantity out");
        BathDiscarding.Of(bath, reason, new(discard.Jug, discard.To), draft);
        draft.Summary = $"discarded bath {bath.Code}{WhereTo(discard)}: {reason}";
    }

    /// <summary>
    /// Sheets in a holder or a box of exposed ones; when not all are meant, the ones that came first.
    /// </summary>
    private static void DiscardUnused(IReadOnlyList<Sheet> sheets, Discard discard, string reason, Draft draft)
    {
        Require.That(discard.Jug is not { Length: > 0 }, $"{discard.What} holds sheets; only liquids go into a jug");
        var count = discard.Quantity ?? new Quantity(sheets.Count, Unit.Sheet);
        Require.That(count.Unit == Unit.Sheet, $"{discard.What} holds sheets, not {count.Unit.Name()}");
        Require.Positive(count, $"the sheets of {discard.What}");
        if (count.Base > sheets.Count)
            throw new RefusedException(
                RefusalKind.MoreThanHeld,
                $"{discard.What} holds {new Quantity(sheets.Count, Unit.Sheet)}, not {count}; discard at most those");
        foreach (var sheet in sheets.Take((int)count.Base))
            draft.Film.Move(sheet, Places.Discarded);
        draft.Film.RemindOfLabels();
        draft.Summary = $"discarded {count} of {discard.What}: {reason}";
    }

    private static void DiscardUnused(Item item, Container? container, Discard discard, string reason, Draft draft)
    {
        Require.That(
            discard.Quantity is not null || container is not null,
            $"say how much of {item.Code} is discarded, or name the container");
        var quantity = discard.Quantity ?? container!.Held;
        draft.Take(item, quantity, container?.Code, Places.Discarded, booksDifference: false);
        Require.That(
            discard.Jug is not { Length: > 0 } || item.Unit == Unit.Millilitre,
            $"{item.Code} is kept in {item.Unit.Plural()}; only liquids go into a jug");
        if (item.Unit == Unit.Millilitre && item.Role != ItemRole.Water)
            new WayOut(discard.Jug, discard.To).Take(
                $"unused {item.Code}", Volume.FromMicrolitres(quantity.Base), null, WasteKinds.Of(item.Role), draft);
        draft.Summary =
            $"discarded {quantity.ToText(draft.Style)} of {container?.Code ?? item.Code}{WhereTo(discard)}: {reason}";
    }

    private static string WhereTo(Discard discard) => discard.Jug is { Length: > 0 } jug ? $" into jug {jug}"
        : discard.To is { Length: > 0 } to ? $" to {to}" : "";
}
