using CsCheck;
using Ledger.Exchange.Export;
using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Tests.Export;

public class CsvTableTests
{
    [Fact]
    public void A_table_is_written_as_rfc4180() =>
        Assert.Equal(
            "item,note\r\npan,\"8x10, \"\"fresh\"\"\"\r\n,\"two\r\nlines\"\r\n\" padded \",\r\n",
            Written(["item", "note"], ["pan", "8x10, \"fresh\""], [null, "two\r\nlines"], [" padded ", ""]));

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+1", "'+1")]
    [InlineData("-1+2", "'-1+2")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("-", "'-")]
    [InlineData("-1.", "'-1.")]
    [InlineData("-1.2.3", "'-1.2.3")]
    [InlineData("'=1", "''=1")]
    [InlineData("-11", "-11")]
    [InlineData("-0.462", "-0.462")]
    [InlineData("11", "11")]
    [InlineData("N-1", "N-1")]
    [InlineData("'tis", "'tis")]
    [InlineData("", "")]
    public void What_a_spreadsheet_would_run_is_made_harmless(string text, string cell)
    {
        Assert.Equal(cell, SpreadsheetText.Harmless(text));
        Assert.Equal(text, SpreadsheetText.Plain(cell));
    }

    [Fact]
    public void A_cell_that_begins_with_a_tabulator_or_a_return_is_made_harmless_too() =>
        Assert.Equal("a\r\n\"'\tx\"\r\n\"'\rx\"\r\n".Replace("\"'\tx\"", "'\tx", StringComparison.Ordinal),
            Written(["a"], ["\tx"], ["\rx"]));

    [Fact]
    public void Any_table_reads_back_the_same()
    {
        var text = Gen.OneOf(
            Gen.String[Gen.Char["abc ,;\"\r\n\t'=+-@.0129éß漢"], 0, 8],
            Gen.String[Gen.Char['\u0001', '\ud7ff'], 0, 20],
            Gen.OneOf("", "-11", "'", "''=x", "\"", "\r", "\n", "\r\n", "\uFEFF", "🎞"));
        Gen.Int[1, 5].SelectMany(columns => text.Array[columns].Array[1, 8]).Sample(table =>
        {
            using var reader = new StringReader(Written(table[0], table[1..]));
            var read = CsvRows.Read(reader, ',')
                .Select(record => record.Fields.Select(SpreadsheetText.Plain).ToArray()).ToArray();
            return read.Length == table.Length && read.Zip(table).All(rows => rows.First.SequenceEqual(rows.Second));
        });
    }

    private static string Written(IReadOnlyList<string> columns, params IReadOnlyList<string?>[] rows)
    {
        using var writer = new StringWriter();
        CsvTable.Write(writer, columns, rows);
        return writer.ToString();
    }
}
