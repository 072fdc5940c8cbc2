using Ledger.Exchange.Export;
using NodaTime;

namespace Ledger.Exchange.Import.Rows;

/// <summary>
/// A row of a file, read column by column. What cannot be read is put down as a problem, and the row is bad from then on.
/// </summary>
internal sealed class Row(int line, Header header, string[] fields, Func<LocalDate, LocalDate> shift, List<RowProblem> problems)
{
    private const int LongestShown = 60;

    /// <summary>The line on which it begins.</summary>
    public int Line => line;

    /// <summary>Whether everything that was read so far could be read.</summary>
    public bool IsGood { get; private set; } = true;

    /// <summary>Moves a date as the whole file is moved in time.</summary>
    public LocalDate Shifted(LocalDate date) => shift(date);

    /// <summary>The text in a column without blanks around it; empty when there is none.</summary>
    public string Text(string column) =>
        header.Position(column) is >= 0 and var position ? SpreadsheetText.Plain(fields[position].Trim()) : "";

    /// <summary>The same, or null when there is none.</summary>
    public string? TextOrNull(string column) => Text(column) is { Length: > 0 } text ? text : null;

    /// <summary>The text in a column that must not be empty.</summary>
    public string Needed(string column, string accepted)
    {
        var text = Text(column);
        if (text.Length == 0)
            Refuse(column, accepted);
        return text;
    }

    /// <summary>Puts down that a column holds what is not accepted.</summary>
    public void Refuse(string column, string accepted)
    {
        IsGood = false;
        problems.Add(new(line, column, Shown(Text(column)), accepted));
    }

    /// <summary>A cell's text as a sentence can hold it.</summary>
    public static string Shown(string text)
    {
        var printable = string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c));
        return printable.Length <= LongestShown ? printable : string.Concat(printable.AsSpan(0, LongestShown), "…");
    }
}
