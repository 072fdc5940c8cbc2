namespace Ledger.Terminal.Pages;

/// <summary>
/// What can be done on a screen: what it is called, what the help says, and what it does to the selected row. What is
/// rare has no key and is found in the list of actions.
/// </summary>
/// <param name="Key">The key; null for none.</param>
/// <param name="Name">The key as it is written; empty for none.</param>
/// <param name="Label">What the key line and the list of actions say.</param>
/// <param name="Meaning">What the help says.</param>
/// <param name="Press">What it does; it gets the selected row, or -1.</param>
internal sealed record ScreenAction(Key? Key, string Name, string Label, string Meaning, Func<int, Step?> Press)
{
    /// <summary>Other words by which the list of actions finds it.</summary>
    public string FindBy { get; init; } = "";

    /// <summary>What the verb of <see cref="KeyTable"/> does here.</summary>
    public static ScreenAction Of(Verb verb, string meaning, Func<int, Step?> press) =>
        Letter(verb.Letter, verb.Word, meaning, press) with { FindBy = verb.FindBy };

    /// <summary>Whether the key line has it; what is the same on every screen need not take room there.</summary>
    public bool IsOnLine { get; init; } = true;

    /// <summary>What the verb does here, left to the help and the list of actions.</summary>
    public static ScreenAction Quiet(Verb verb, string meaning, Func<int, Step?> press) =>
        Of(verb, meaning, press) with { IsOnLine = false };

    /// <summary>What the verb does here: it opens a form about the selected row.</summary>
    public static ScreenAction OnRow(Verb verb, string meaning, Func<int, Form> form) =>
        Of(verb, meaning, ForRow(form));

    /// <summary>An action without a key.</summary>
    public static ScreenAction Rare(string label, string meaning, Func<int, Step?> press) =>
        new(null, "", label, meaning, press);

    /// <summary>An action without a key that opens a form about the selected row.</summary>
    public static ScreenAction RareOnRow(string label, string meaning, Func<int, Form> form) =>
        Rare(label, meaning, ForRow(form));

    /// <summary>Puts a page about the selected row on paper.</summary>
    public static ScreenAction Paper(string what, Func<int, Func<IPaper, string>> page) => Of(
        KeyTable.Paper, $"writes {what} for paper and says where", row => row < 0 ? null : new PaperStep(page(row)));

    /// <summary>Puts labels of the selected row on paper.</summary>
    public static ScreenAction Labels(string what, Func<int, string> of,
        Func<int, Func<IPaper, LabelPlace, string>> page) => Of(
        KeyTable.Paper, $"writes {what}, on plain paper or ready-cut sheets",
        row => row < 0 ? null : new LabelStep(of(row), page(row)));

    /// <summary>The digit of a main screen.</summary>
    public static ScreenAction Screen(char digit, string screen) =>
        Letter(digit, screen, $"goes to {screen}", _ => new ScreenStep(screen, null));

    private static Func<int, Step?> ForRow(Func<int, Form> form) => row => row < 0 ? null : new FormStep(form(row));

    private static ScreenAction Letter(char letter, string label, string meaning, Func<int, Step?> press) =>
        new(new Key(char.ToLowerInvariant(letter)), letter.ToString(), label, meaning, press);
}
