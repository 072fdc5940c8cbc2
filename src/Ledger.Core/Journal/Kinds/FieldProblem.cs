namespace Ledger.Core.Journal.Kinds;

/// <summary>A field that could not be read.</summary>
/// <param name="Field">The field; null when the whole entry is meant.</param>
/// <param name="Line">The line of the entry, counting from 1; 0 where it has none, or only one.</param>
/// <param name="Found">What was found; empty when nothing was.</param>
/// <param name="Accepted">What is accepted, continuing "accepted is".</param>
public sealed record FieldProblem(Field? Field, int Line, string Found, string Accepted)
{
    private const int LongestShown = 60;

    /// <summary>The lines that are meant as a whole, where they are.</summary>
    public LineKind? Lines { get; init; }

    /// <summary>The problem as a sentence, the same in every door.</summary>
    /// <param name="nameOf">How the door calls a field: its label, its option, its column.</param>
    /// <param name="linesOf">How it calls the lines of an entry; by their name unless said.</param>
    public string Sentence(Func<Field, string> nameOf, Func<LineKind, string>? linesOf = null) =>
        $"{Where(nameOf, linesOf ?? (lines => lines.Name))}found {What}; accepted is {Accepted}";

    private string Where(Func<Field, string> nameOf, Func<LineKind, string> linesOf) =>
        Lines is not null ? $"{linesOf(Lines)}: " :
            (Line == 0 ? "" : Field is null ? $"line {Line}: " : $"line {Line}, ")
                + (Field is null ? "" : $"{nameOf(Field)}: ");

    private string What => Found.Length == 0 ? "nothing" : $"\"{Shown(Found)}\"";

    private static string Shown(string text)
    {
        var printable = Measures.UserText.Shown(text);
        return printable.Length <= LongestShown ? printable : string.Concat(printable.AsSpan(0, LongestShown), "…");
    }
}
