using System.Text;
using CsCheck;

namespace Ledger.Exchange.Tests.Import;

public class MalformedFileTests
{
    private const string Deliveries = "date,item,packs,price\n";

    [Fact]
    public void An_unknown_kind_is_a_mistake_of_the_caller() =>
        Assert.Contains("items, processes, holders",
            Assert.Throws<ArgumentException>(() => Csv.Read("films", "")).Message, StringComparison.Ordinal);

    [Fact]
    public void An_empty_file_is_told_which_header_is_needed() =>
        Assert.Equal(
            "the file: found nothing; accepted is a header row with the columns date, item, and rows below it",
            Csv.Problem("deliveries", "").ToString());

    [Fact]
    public void A_header_alone_is_a_remark()
    {
        var file = Csv.Read("deliveries", Deliveries);
        Assert.Empty(file.Problems);
        Assert.Equal(["the file has a header and no rows"], file.Remarks);
    }

    [Fact]
    public void A_missing_column_that_is_needed_is_a_problem_and_an_optional_one_is_not()
    {
        Assert.Equal(
            "line 1: found a header without item; accepted is a header row that names at least date, item",
            Csv.Problem("deliveries", "date,packs\n2025-05-12,1\n").ToString());
        Assert.Empty(Csv.Read("deliveries", "date,item,packs\n2025-05-12,pan,1\n").Problems);
    }

    [Fact]
    public void An_unknown_column_is_reported_and_left_out()
    {
        var file = Csv.Read("deliveries", "date,item,packs,colour\n2025-05-12,pan,1,yellow\n");
        Assert.Empty(file.Problems);
        Assert.StartsWith("the column colour is not known in deliveries and was left out",
            Assert.Single(file.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void A_column_that_stands_twice_is_a_problem() =>
        Assert.Equal(
            "line 1: found the column item more than once; accepted is each column once",
            Csv.Problem("deliveries", "date,item,Item,packs\n2025-05-12,pan,pan,1\n").ToString());

    [Theory]
    [InlineData("2025-05-12,pan\n", "line 2: found 2 fields; accepted are 4, as in the header")]
    [InlineData("2025-05-12,pan,1,162,50\n", "line 2: found 5 fields; accepted are 4, as in the header")]
    [InlineData("2025-05-12,\"pan,1,162.50\n2025-05-13,pan,1,3\n",
        "line 2: found a quote that is never closed; accepted are quotes around a whole field, and two quotes for one "
            + "inside it")]
    [InlineData("2025-05-12,\"pan\"x,1,2\n",
        "line 2: found text after a closing quote; accepted are quotes around a whole field, and two quotes for one "
            + "inside it")]
    [InlineData("2025-05-12,8\"x10\",1,2\n",
        "line 2: found a quote inside a field; accepted are quotes around a whole field, and two quotes for one inside "
            + "it")]
    public void A_broken_row_is_told(string row, string sentence) =>
        Assert.Equal(sentence, Csv.Problem("deliveries", Deliveries + row).ToString());

    [Fact]
    public void Every_bad_row_is_listed_and_the_good_ones_are_read()
    {
        var file = Csv.Read("deliveries",
            Deliveries + "2025-05-12,pan,1,2\n12.5.2025,pan,x,2\nrubbish\n2025-05-14,pan,1,2\n");
        Assert.Equal([(3, "date"), (3, "packs"), (4, "")],
            file.Problems.Select(problem => (problem.Line, problem.Column)));
        Assert.Equal([2, 5], file.Entries.Select(entry => entry.Line));
    }

    [Theory]
    [InlineData(new byte[] { 0x64, 0x00, 0x61 }, "a NUL byte")]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x64, 0x00 }, "bytes that are not UTF-8")]
    [InlineData(new byte[] { 0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A }, "bytes that are not UTF-8")]
    public void A_binary_file_is_no_text(byte[] bytes, string found) =>
        Assert.Equal(
            $"the file: found {found}; accepted is text in UTF-8, such as a spreadsheet saves as CSV",
            Assert.Single(Csv.Read("deliveries", bytes).Problems).ToString());

    [Fact]
    public void Rubbish_far_behind_a_good_beginning_is_found_too()
    {
        var bytes = new List<byte>(Encoding.UTF8.GetBytes(Deliveries));
        for (var i = 0; i < 20_000; i++)
            bytes.AddRange("2025-05-12,pan,1,2\n"u8);
        bytes.Add(0xE4);
        Assert.Equal("bytes that are not UTF-8", Assert.Single(Csv.Read("deliveries", [.. bytes]).Problems).Found);
    }

    [Fact]
    public void A_field_of_too_many_bytes_is_told() =>
        Assert.Equal(
            "line 3: found a text that is too long in field 2; accepted are 65536 bytes at most",
            Csv.Problem("deliveries",
                Deliveries + "2025-05-12,pan,1,2\n2025-05-12," + new string('x', 70_000) + ",1,2\n").ToString());

    [Theory]
    [InlineData("2025-05-12,", 'x')]
    [InlineData("2025-05-12,\"", '\n')]
    [InlineData("", ',')]
    public void An_endless_row_is_told_without_keeping_it(string start, char filling)
    {
        using var endless = new Endless(Encoding.UTF8.GetBytes(Deliveries + start), (byte)filling, length: 100_000_000);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var file = CsvImport.Read("deliveries", endless, Csv.Nothing);
        var problem = Assert.Single(file.Problems);
        Assert.Equal((2, "a row longer than 262144 bytes"), (problem.Line, problem.Found));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 20_000_000);
    }

    [Fact]
    public void The_nothing_thrown_holds_for_any_bytes() =>
        Check.Sample(
            Gen.Select(Gen.OneOf([.. CsvImport.Kinds]), Gen.Byte.Array[0, 400]),
            (kind, bytes) => Csv.Read(kind, bytes).Problems.Count >= 0);

    [Fact]
    public void The_nothing_thrown_holds_for_any_cells()
    {
        var cells = Gen.OneOf(
            "", "2025-02-29", "9999-12-31", "-0001-01-01", "1:39", "1+39", "1+1+100", "-1",
            "1e9", "79228162514264337593543950335", "0.0000001", "film", "ml", "8x10", "99999x99999in",
            "pan", "syrup", "1,5", "\"", "a\"b", "\r\n", "'=x", "30 g", "30g", "g", "5 pieces", "\u0001");
        Check.Sample(
            Gen.Select(Gen.OneOf([.. CsvImport.Kinds]), cells.Array[0, 60]),
            (kind, values) =>
            {
                var columns = CsvImport.ColumnsOf(kind);
                using var text = new StringWriter();
                Exchange.Export.CsvTable.Write(text, columns,
                    values.Chunk(columns.Count).Where(row => row.Length == columns.Count));
                var file = Csv.Read(kind, text.ToString());
                return file.Problems.All(problem => problem.ToString().Length > 0);
            });
    }
}
