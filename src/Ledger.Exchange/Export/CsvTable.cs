using System.Buffers;

namespace Ledger.Exchange.Export;

/// <summary>
/// Writes a table as CSV: RFC 4180, a header row, lines that end with CR LF, text that no spreadsheet runs as a
/// formula.
/// </summary>
public static class CsvTable
{
    // A byte order mark is among them, because without quotes it would vanish from the beginning of a file.
    private static readonly SearchValues<char> NeedQuotes = SearchValues.Create(",\"\r\n\uFEFF");

    /// <summary>Writes the header and all rows.</summary>
    /// <param name="writer">Takes the text; it should write UTF-8.</param>
    /// <param name="columns">The names of the columns.</param>
    /// <param name="rows">The rows, each with a value or null for every column.</param>
    public static void Write(TextWriter writer, IReadOnlyList<string> columns, IEnumerable<IReadOnlyList<string?>> rows)
    {
        WriteRow(writer, columns);
        foreach (var row in rows)
            WriteRow(writer, row);
    }

    private static void WriteRow(TextWriter writer, IReadOnlyList<string?> cells)
    {
        for (var i = 0; i < cells.Count; i++)
        {
            if (i > 0)
                writer.Write(',');
            var text = SpreadsheetText.Harmless(cells[i] ?? "");
            if (NeedsQuotes(text, isAlone: cells.Count == 1))
                WriteQuoted(writer, text);
            else
                writer.Write(text);
        }

        writer.Write("\r\n");
    }

    /// <summary>
    /// Beside what the format asks for: an empty cell alone in its row would read as an empty line, and blanks at the
    /// ends as padding.
    /// </summary>
    private static bool NeedsQuotes(ReadOnlySpan<char> text, bool isAlone) =>
        text.ContainsAny(NeedQuotes) || text.Trim().Length != text.Length || (isAlone && text.IsEmpty);

    private static void WriteQuoted(TextWriter writer, string text)
    {
        writer.Write('"');
        writer.Write(text.Replace("\"", "\"\"", StringComparison.Ordinal));
        writer.Write('"');
    }
}
