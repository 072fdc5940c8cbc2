using Ledger.Terminal.Forms;
using Terminal.Gui.Input;

namespace Ledger.Terminal.Tables;

/// <summary>A key of a screen: what it is called on the key line, what the help says, and what it does to the selected row.</summary>
/// <param name="Key">The key.</param>
/// <param name="Name">The key as it is written.</param>
/// <param name="Label">What the key line says.</param>
/// <param name="Meaning">What the help says.</param>
/// <param name="Press">What it does; it gets the selected row, or -1.</param>
internal sealed record ScreenKey(Key Key, string Name, string Label, string Meaning, Func<int, Step?> Press)
{
    /// <summary>A letter that opens a form about the selected row.</summary>
    public static ScreenKey OnRow(char letter, string label, string meaning, Func<int, Form> form) =>
        Letter(letter, label, meaning, row => row < 0 ? null : new Fill(form(row)));

    /// <summary>The key that puts a page about the selected row on paper: the same letter on every screen.</summary>
    public static ScreenKey Paper(string what, Func<int, Func<IPaper, string>> page) =>
        Letter('W', "On paper", $"writes {what} for paper and says where", row => row < 0 ? null : new OnPaper(page(row)));

    /// <summary>A key that is a letter.</summary>
    public static ScreenKey Letter(char letter, string label, string meaning, Func<int, Step?> press) =>
        new(new Key(char.ToLowerInvariant(letter)), char.ToUpperInvariant(letter).ToString(), label, meaning, press);
}
