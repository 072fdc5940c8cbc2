namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// One thing that an entry, or a line of one, says: its name, its words, and how its value is read and written.
/// </summary>
/// <param name="name">The name as a column has it: fixer_factor.</param>
/// <param name="notation">How its value is read and written.</param>
public abstract class Field(string name, Notation notation)
{
    /// <summary>The name as a column of CSV has it: fixer_factor.</summary>
    public string Name => name;

    /// <summary>
    /// The name as an option of a command: --fixer-factor; the column's own unless said, which names its unit too
    /// (added_ml).
    /// </summary>
    public string Option { get; init; } = $"--{name.Replace('_', '-')}";

    /// <summary>The name as JSON has it: fixerFactor.</summary>
    public string JsonName { get; } = Camel(name);

    /// <summary>How its value is read and written.</summary>
    public Notation Notation => notation;

    /// <summary>The words that stand before it in a form; the name's own unless said.</summary>
    public string Label { get; init; } = Capital(name);

    /// <summary>What it is, in a few words or a sentence without a full stop: for help, hints and templates.</summary>
    public required string Help { get; init; }

    /// <summary>Whether it must be said.</summary>
    public bool IsNeeded { get; init; }

    /// <summary>Whether a command takes it by its position, without an option's name.</summary>
    public bool IsArgument { get; init; }

    /// <summary>
    /// The word that introduces it in a line of words ("from fen80/3"); null where its position or its shape tells.
    /// </summary>
    public string? Keyword { get; init; }

    /// <summary>
    /// Whether that word may be left out, because what is written there tells: "N" for "group N", "250ml" for "of
    /// 250ml".
    /// </summary>
    public bool MayLackKeyword { get; init; }

    /// <summary>How many columns a form gives it.</summary>
    public int Width { get; init; } = 20;

    /// <summary>What the ledger can offer to choose from, given what was read before it.</summary>
    public Func<FieldValues, Holdings, IEnumerable<string>>? Choices { get; init; }

    /// <summary>
    /// What a form writes into it before anybody types, given what stands in the others; null for nothing.
    /// </summary>
    public Func<FieldValues, Holdings, string?>? Offer { get; init; }

    /// <summary>An example of what is written there, for templates and help.</summary>
    public required string Example { get; init; }

    /// <summary>A text as its value is written: in the user's unit. What cannot be read stays as it is.</summary>
    /// <param name="text">The text.</param>
    /// <param name="read">What stands in the fields before it.</param>
    /// <param name="terms">What the reading needs to know.</param>
    public string Rewritten(string text, FieldValues read, ReadingTerms terms) =>
        Notation.ReadBoxed(text, read, terms) is { IsRead: true, Value: var value }
            ? Notation.WriteBoxed(value, terms)
            : text;

    private static string Camel(string name) =>
        string.Concat(name.Split('_').Select((word, i) => i == 0 ? word : Capital(word)));

    private static string Capital(string words) =>
        string.Create(CultureInfo.InvariantCulture, $"{char.ToUpperInvariant(words[0])}{words.AsSpan(1)}")
            .Replace('_', ' ');
}

/// <summary>A field with values of a type.</summary>
/// <typeparam name="T">The type.</typeparam>
/// <param name="name">The name as a column has it.</param>
/// <param name="notation">How its value is read and written.</param>
public sealed class Field<T>(string name, Notation<T> notation) : Field(name, notation)
    where T : notnull;
