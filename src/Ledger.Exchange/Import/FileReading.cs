using CsvHelper;
using Ledger.Exchange.Import.Kinds;
using Ledger.Exchange.Import.Rows;
using NodaTime;

namespace Ledger.Exchange.Import;

/// <summary>The reading of one file: its header, its rows, and what is wrong with either.</summary>
internal sealed class FileReading(FileKind kind, Func<LocalDate, LocalDate> shift)
{
    public List<RowProblem> Problems { get; } = [];

    public List<string> Remarks { get; } = [];

    /// <summary>The rows that are whole. What ends the reading before the end of the file is put down as a problem.</summary>
    public IEnumerable<Row> Rows(PlainText text)
    {
        using var records = Records(text).GetEnumerator();
        if (!Next(records))
        {
            if (Problems.Count == 0)
                Problems.Add(new(0, "", "nothing", $"accepted is a header row with the columns {string.Join(", ", kind.NeededColumns)}, and rows below it"));
            yield break;
        }

        if (ReadHeader(records.Current) is not { } header)
            yield break;
        var count = 0;
        while (Next(records))
        {
            if (records.Current.IsBlank)
                continue;
            count++;
            if (IsWhole(records.Current, header))
                yield return new(records.Current.Line, header, records.Current.Fields, shift, Problems);
        }

        if (count == 0 && Problems.Count == 0)
            Remarks.Add("the file has a header and no rows");
    }

    private IEnumerable<CsvRecord> Records(PlainText text)
    {
        foreach (var record in CsvRows.Read(text, Separator.In(text.PeekLine(), kind.Columns)))
            yield return record;
    }

    private bool Next(IEnumerator<CsvRecord> records)
    {
        try
        {
            return records.MoveNext();
        }
        catch (NotTextException fault)
        {
            Problems.Add(new(0, "", fault.Message, "accepted is text in UTF-8, such as a spreadsheet saves as CSV"));
        }
        catch (CsvFormatException fault)
        {
            Problems.Add(new(
                checked((int)fault.LineNumber), "", $"a row longer than {4 * CsvRows.LongestField} bytes",
                "accepted are shorter rows; a quote that is never closed also makes one"));
        }

        return false;
    }

    private Header? ReadHeader(CsvRecord record)
    {
        var header = new Header(record.Fields);
        if (record.Fault is { } fault)
            Problems.Add(new(record.Line, "", Quotes(fault), QuotesAccepted));
        foreach (var name in header.Repeated)
            Problems.Add(new(record.Line, "", $"the column {Row.Shown(name)} more than once", "accepted is each column once"));
        var missing = kind.NeededColumns.Where(name => header.Position(name) < 0).ToList();
        if (missing.Count > 0)
            Problems.Add(new(
                record.Line, "", $"a header without {string.Join(", ", missing)}",
                $"accepted is a header row that names at least {string.Join(", ", kind.NeededColumns)}"));
        foreach (var name in header.Names.Where(name => !kind.Columns.Contains(name)))
            Remarks.Add($"the column {Row.Shown(name)} is not known in {kind.Name} and was left out; known are {string.Join(", ", kind.Columns)}");
        return Problems.Count == 0 ? header : null;
    }

    private bool IsWhole(CsvRecord record, Header header)
    {
        if (record.Fault is { } fault)
            Problems.Add(new(record.Line, "", Quotes(fault), QuotesAccepted));
        else if (record.Fields.Length != header.Width)
            Problems.Add(new(record.Line, "", Fields(record.Fields.Length), $"accepted are {header.Width}, as in the header"));
        else if (record.TooLong is { } position)
            Problems.Add(new(record.Line, "", $"a text that is too long in field {position + 1}", $"accepted are {CsvRows.LongestField} bytes at most"));
        else
            return true;
        return false;
    }

    private const string QuotesAccepted = "accepted are quotes around a whole field, and two quotes for one inside it";

    private static string Quotes(CsvMalformedReason fault) => fault switch
    {
        CsvMalformedReason.UnterminatedQuote => "a quote that is never closed",
        CsvMalformedReason.TextAfterClosingQuote => "text after a closing quote",
        _ => "a quote inside a field",
    };

    private static string Fields(int count) => count == 1 ? "1 field" : $"{count} fields";
}
