using CsvHelper;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import;

/// <summary>What can be wrong with a file or with the shape of its rows, in words.</summary>
internal static class FileProblems
{
    public static RowProblem NoHeader(KindFile kind) => new(
        0, "", "nothing",
        $"accepted is a header row with the columns {string.Join(", ", kind.NeededColumns)}, and rows below it");

    public static RowProblem NoText(string found) =>
        new(0, "", found, "accepted is text in UTF-8, such as a spreadsheet saves as CSV");

    public static RowProblem EndlessRow(int line) => new(
        line, "", $"a row longer than {CsvRows.LongestRecord} bytes",
        "accepted are shorter rows; a quote that is never closed also makes one");

    public static IEnumerable<RowProblem> OfHeader(CsvRecord record, Header header, KindFile kind)
    {
        if (record.Fault is { } fault)
            yield return Quotes(record.Line, fault);
        foreach (var name in header.Repeated)
            yield return new(record.Line, "", $"the column {Row.Shown(name)} more than once",
                "accepted is each column once");
        var missing = kind.NeededColumns.Where(name => header.Position(name) < 0).ToList();
        if (missing.Count > 0)
            yield return new(
                record.Line, "", $"a header without {string.Join(", ", missing)}",
                $"accepted is a header row that names at least {string.Join(", ", kind.NeededColumns)}");
    }

    /// <summary>What is wrong with a row before its cells are looked at, or null.</summary>
    public static RowProblem? OfShape(CsvRecord record, Header header)
    {
        if (record.Fault is { } fault)
            return Quotes(record.Line, fault);
        if (record.Fields.Length is var count && count != header.Width)
            return new(record.Line, "", Counted.Of(count, "field"), $"accepted are {header.Width}, as in the header");
        if (record.TooLong is { } position)
            return new(
                record.Line, "", $"a text that is too long in field {position + 1}",
                $"accepted are {CsvRows.LongestField} bytes at most");
        return null;
    }

    private static RowProblem Quotes(int line, CsvMalformedReason fault)
    {
        var found = fault switch
        {
            CsvMalformedReason.UnterminatedQuote => "a quote that is never closed",
            CsvMalformedReason.TextAfterClosingQuote => "text after a closing quote",
            _ => "a quote inside a field",
        };
        return new(line, "", found, "accepted are quotes around a whole field, and two quotes for one inside it");
    }
}
