using CsvHelper;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import;

/// <summary>The reading of one file: its header, its rows, and what is wrong with either.</summary>
internal sealed class FileReading(KindFile kind)
{
    public List<RowProblem> Problems { get; } = [];

    public List<string> Remarks { get; } = [];

    /// <summary>What separates the fields, once the header was read.</summary>
    public char Mark { get; private set; } = ',';

    /// <summary>Whether all rows were found; not where the header is bad, or something ended the reading.</summary>
    public bool IsWhole { get; private set; } = true;

    /// <summary>
    /// The rows that are whole. What ends the reading before the end of the file is put down as a problem.
    /// </summary>
    public IEnumerable<Row> Rows(PlainText text)
    {
        using var records = Records(text).GetEnumerator();
        if (!Next(records))
        {
            if (Problems.Count == 0)
                Break(FileProblems.NoHeader(kind));
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
            IsWhole &= records.Current.Fault != CsvMalformedReason.UnterminatedQuote;
            if (FileProblems.OfShape(records.Current, header) is { } problem)
                Problems.Add(problem);
            else
                yield return new(records.Current.Line, header, records.Current.Fields, Problems);
        }

        if (count == 0 && Problems.Count == 0)
            Remarks.Add("the file has a header and no rows");
    }

    /// <summary>
    /// The records; the text is touched only when the first one is asked for, so that every fault in it comes up there.
    /// </summary>
    private IEnumerable<CsvRecord> Records(PlainText text)
    {
        Mark = Separator.In(text.PeekLine(), kind.Columns);
        foreach (var record in CsvRows.Read(text, Mark))
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
            Break(FileProblems.NoText(fault.Message));
        }
        catch (CsvFormatException fault)
        {
            Break(FileProblems.EndlessRow(checked((int)fault.LineNumber)));
        }

        return false;
    }

    private Header? ReadHeader(CsvRecord record)
    {
        var header = new Header(record.Fields);
        Problems.AddRange(FileProblems.OfHeader(record, header, kind));
        foreach (var name in header.Names.Where(name => !kind.Columns.Contains(name)))
            Remarks.Add(
                $"the column {Row.Shown(name)} is not known in {kind.Name} and was left out; known are "
                    + $"{string.Join(", ", kind.Columns)}");
        IsWhole = Problems.Count == 0;
        return IsWhole ? header : null;
    }

    private void Break(RowProblem problem)
    {
        IsWhole = false;
        Problems.Add(problem);
    }
}
