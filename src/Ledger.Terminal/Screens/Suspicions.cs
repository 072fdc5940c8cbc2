using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>Suspicion of a bath, a box or a bottle, raised and cleared: the same wherever such things are
/// shown.</summary>
internal static class Suspicions
{
    /// <summary>The two actions.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="name">What a row is called.</param>
    public static IEnumerable<ScreenAction> Of(ILedger ledger, Func<int, string> name) =>
    [
        ScreenAction.RareOnRow(
            "Raise suspicion", "something may be wrong with it: nothing of it is used until that is cleared",
            row => new KindForm(ledger, "suspicion", ("what",
                name(row)))) with { FindBy = "fault, fogged, off, leak, recall, quarantine" },
        ScreenAction.Rare("Clear suspicion", "it is in order and is used again",
            row => Clear(ledger, row < 0 ? "" : name(row))),
    ];

    /// <summary>
    /// The form of what is under suspicion: of the row, or of the only such thing; nothing else can be cleared.
    /// </summary>
    private static Step Clear(ILedger ledger, string row)
    {
        var holdings = ledger.HoldingsOn(ledger.Today);
        var suspects = holdings.Containers.Where(container => container.Suspicion is not null)
            .Select(container => (Row: container.Code, What: container.OwnSuspicion is null
                ? container.Lot.Batch
                : container.Code))
            .Concat(holdings.WorkingBaths.Where(bath => bath.Suspicion is not null)
                .Select(bath => (Row: bath.Code, What: bath.Code)))
            .Concat(holdings.Film.Sheets.Where(sheet => sheet.Lot.Suspicion is not null)
                .Select(sheet => (Row: sheet.Lot.Batch, What: sheet.Lot.Batch)))
            .ToList();
        var what = suspects.Where(suspect => suspect.Row.Equals(row, StringComparison.OrdinalIgnoreCase))
            .Concat(suspects)
            .Select(suspect => suspect.What).FirstOrDefault();
        return what is null ? new MessageStep("Nothing is under suspicion.")
            : new FormStep(new KindForm(ledger, "clearance", ("what", what)));
    }
}

/// <summary>What happens to developed sheets: the same wherever they are shown.</summary>
internal static class SheetLife
{
    /// <summary>The actions.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="name">What a row's sheet is called.</param>
    public static IEnumerable<ScreenAction> Of(ILedger ledger, Func<int, string> name) =>
    [
        ScreenAction.RareOnRow(
            "Another fate", "it is a reject, a negative or a keeper from a day on",
                row => new KindForm(ledger, "fate", ("sheets", name(row))))
            with { FindBy = "reject, spoiled, no longer a keeper, good again, under-fixed" },
        ScreenAction.RareOnRow(
            "Note on the sheet", "a residual test, refixing, rewashing, spotting, toning",
                row => new KindForm(ledger, "sheet-note", ("sheets", name(row))))
            with { FindBy = "test, refix, rewash, spot, tone, inspect" },
        ScreenAction.RareOnRow(
            "File the sheet", "says where it is kept: sleeve, page, binder, box",
                row => new KindForm(ledger, "filing", ("sheets", name(row))))
            with { FindBy = "sleeve, page, binder, box, place" },
    ];
}
