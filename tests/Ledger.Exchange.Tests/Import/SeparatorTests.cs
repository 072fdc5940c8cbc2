namespace Ledger.Exchange.Tests.Import;

public class SeparatorTests
{
    [Theory]
    [InlineData(",")]
    [InlineData(";")]
    [InlineData("\t")]
    public void The_separator_is_found_by_itself(string separator)
    {
        var text = "date,item,packs,price\n2025-05-12,pan,2,162.50\n".Replace(",", separator, StringComparison.Ordinal);
        var delivery = Csv.One<Delivery>("deliveries", text);
        Assert.Equal(162.5m, delivery.Lines[0].Price?.Amount);
    }

    [Fact]
    public void Many_other_marks_in_the_text_do_not_mislead()
    {
        const string text = "what;date;reason\nsyrup/1;2025-05-12;old, thin, brown, cloudy, and smelling\n";
        Assert.Equal("old, thin, brown, cloudy, and smelling", Csv.One<Discard>("discards", text).Reason);
    }

    [Fact]
    public void A_quoted_field_holds_separators_quotes_and_line_breaks()
    {
        const string text =
            "what,date,reason\r\nsyrup/1,2025-05-12,\"old, \"\"brown\"\"\r\nand thin\"\r\nF1,2025-05-13,spent\r\n";
        var file = Csv.Read("discards", text);
        Assert.Equal("old, \"brown\"\r\nand thin", Assert.IsType<Discard>(file.Entries[0].Entry).Reason);
        Assert.Equal([2, 4], file.Entries.Select(entry => entry.Line));
    }

    [Fact]
    public void A_byte_order_mark_empty_lines_and_empty_spreadsheet_rows_are_skipped()
    {
        const string text = "\uFEFF\n\nDate , Item,PACKS\n\n 2025-05-12 , pan ,2\n,,\n";
        var file = Csv.Read("deliveries", text);
        Assert.Empty(file.Problems);
        Assert.Equal(5, Assert.Single(file.Entries).Line);
    }
}
