namespace Ledger.Core.Glossary;

/// <summary>A word of the trade that a beginner may not know, explained once for commands and screens alike.</summary>
/// <param name="Word">The word, as the program's texts use it.</param>
/// <param name="Meaning">What it means, in a sentence or two.</param>
public sealed record Term(string Word, string Meaning)
{
    /// <summary>Other words by which users may look for it.</summary>
    public IReadOnlyList<string> FindBy { get; init; } = [];

    /// <summary>The command that shows or records it, without the program's name; empty for none.</summary>
    public string See { get; init; } = "";
}
