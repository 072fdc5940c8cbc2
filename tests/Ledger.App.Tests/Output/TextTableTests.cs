using Ledger.App.Output;

namespace Ledger.App.Tests.Output;

public class TextTableTests
{
    [Fact]
    public void Figures_end_at_one_edge_and_the_last_column_continues_below()
    {
        var table = new TextTable(Column.Left("item"), Column.Right("on hand"), Column.Left("name"));
        table.Add("fen80", "49 sheets", "a film with quite a long name");
        table.Add("syrup", "64 ml", "developer");
        Assert.Equal(
            """
            item     on hand  name
            fen80  49 sheets  a film with
                              quite a long
                              name
            syrup      64 ml  developer

            """.ReplaceLineEndings("\n"),
            Written(table, 34));
    }

    [Fact]
    public void A_table_without_titles_has_no_title_line_and_an_empty_one_nothing()
    {
        var table = new TextTable(Column.Left(""), Column.Right(""));
        Assert.Equal("", Written(table, 80));
        table.Add("spent", "12.00");
        Assert.Equal("spent  12.00\n", Written(table, 80));
    }

    [Fact]
    public void A_word_longer_than_its_line_stands_alone() =>
        Assert.Equal(["a", "verylongword", "b"], Prose.Wrap("a verylongword b", 5));

    private static string Written(TextTable table, int width)
    {
        using var text = new StringWriter { NewLine = "\n" };
        table.WriteTo(text, width);
        return text.ToString();
    }
}
