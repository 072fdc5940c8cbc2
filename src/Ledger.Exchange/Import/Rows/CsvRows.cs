using CsvHelper;

namespace Ledger.Exchange.Import.Rows;

/// <summary>The records of a CSV text as strings, whatever they mean.</summary>
internal static class CsvRows
{
    /// <summary>The longest field that is read, in bytes of UTF-8.</summary>
    public const int LongestField = 64 * 1024;

    /// <summary>The longest record that is waited for, in bytes of UTF-8.</summary>
    public const int LongestRecord = 4 * LongestField;

    /// <summary>
    /// Reads record by record. Quoting that is broken is told with the record; a record far too long ends the reading.
    /// </summary>
    /// <exception cref="CsvFormatException">A record is far too long.</exception>
    public static IEnumerable<CsvRecord> Read(TextReader text, char separator)
    {
        CsvMalformedReason? fault = null;
        var options = CsvReaderOptions.Default with
        {
            Separator = separator,
            HasHeader = false,
            TrackLineNumbers = true,
            MaxRecordSize = LongestRecord,
            OnMalformedRecord = record => fault ??= record.Reason,
        };
        using var reader = CsvReader.Create(text, options, leaveOpen: true);
        while (reader.Read())
        {
            var fields = new string[reader.FieldCount];
            int? tooLong = null;
            for (var i = 0; i < fields.Length; i++)
                if (reader[i].Length <= LongestField)
                    fields[i] = reader.GetString(i);
                else
                    (fields[i], tooLong) = ("", i);
            yield return new(checked((int)reader.LineNumber), fields, fault, tooLong);
            fault = null;
        }
    }
}

/// <summary>A record of a CSV text.</summary>
/// <param name="Line">The line on which it begins, counting from 1.</param>
/// <param name="Fields">Its fields, without their quotes.</param>
/// <param name="Fault">What is wrong with its quotes, if anything is.</param>
/// <param name="TooLong">The position of a field that was too long to be kept, if there is one.</param>
internal sealed record CsvRecord(int Line, string[] Fields, CsvMalformedReason? Fault, int? TooLong)
{
    /// <summary>Whether nothing stands in it, as in a spreadsheet's empty rows.</summary>
    public bool IsBlank => Fault is null && TooLong is null && Fields.All(string.IsNullOrWhiteSpace);
}
