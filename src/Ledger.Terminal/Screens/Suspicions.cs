using Ledger.Core.Journal;
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
        ScreenAction.RareOnRow(
            "Clear suspicion", "it is in order and is used again",
                row => new KindForm(ledger, "clearance", ("what", name(row)))),
    ];
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
