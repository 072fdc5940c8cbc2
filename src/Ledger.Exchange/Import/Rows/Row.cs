using Ledger.Exchange.Export;

namespace Ledger.Exchange.Import.Rows;

/// <summary>A row of a file, read column by column. Once something in it is refused, the row is bad.</summary>
internal sealed class Row(int line, Header header, string[] fields, List<RowProblem> problems)
{
    private const int LongestShown = 60;

    /// <summary>The line on which it begins.</summary>
    public int Line => line;

    /// <summary>Whether nothing in it was refused.</summary>
    public bool IsGood { get; private set; } = true;

    /// <summary>How the whole file writes days and numbers.</summary>
    public FileSpeech Speech { get; set; } = FileSpeech.Plain;

    /// <summary>
    /// The text in a column without blanks around it, as the program writes it; empty when there is none.
    /// </summary>
    public string Text(string column) => Speech.Plainly(column, Cell(column));

    /// <summary>The same as it stands in the file.</summary>
    public string Cell(string column) =>
        header.Position(column) is >= 0 and var position ? SpreadsheetText.Plain(fields[position].Trim()) : "";

    /// <summary>Puts down that a column holds what is not accepted; an empty column means the whole row.</summary>
    public void Refuse(string column, string accepted)
    {
        IsGood = false;
        problems.Add(new(line, column, column.Length == 0 ? "nothing" : Shown(Cell(column)), accepted));
    }

    /// <summary>A cell's text as a sentence can hold it.</summary>
    public static string Shown(string text)
    {
        var printable = Core.Measures.UserText.Shown(text);
        return printable.Length <= LongestShown ? printable : string.Concat(printable.AsSpan(0, LongestShown), "…");
    }
}
