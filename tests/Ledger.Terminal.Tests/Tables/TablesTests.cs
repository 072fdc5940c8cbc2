namespace Ledger.Terminal.Tests.Tables;

public sealed class TablesTests
{
    private static readonly TableColumn[] Columns = [new("No.", 5), new("What", 40, Least: 10), new("By", 10)];

    [Theory]
    [InlineData(80, new[] { 5, 31, 10 })]
    [InlineData(40, new[] { 4, 23, 10 })]
    [InlineData(27, new[] { 4, 10, 10 })]
    [InlineData(26, new[] { 4, 20, 0 })]
    [InlineData(9, new[] { 9, 0, 0 })]
    public void Texts_give_way_first_then_the_last_columns_stay_away(int available, int[] widths) =>
        Assert.Equal(widths, ColumnFit.Of(Columns, [4, 30, 10], available));

    [Fact]
    public void A_long_history_is_read_only_as_far_as_it_is_seen()
    {
        var asked = 0;
        var rows = new PagedRows<string>((before, atMost) =>
        {
            asked++;
            var first = before is null
                ? 1000
                : int.Parse(before, System.Globalization.CultureInfo.InvariantCulture) - 1;
            return [.. Enumerable.Range(0, Math.Min(atMost, first)).Select(i => $"{first - i}")];
        });

        rows.Refresh();
        rows.Reach(10);
        Assert.Equal((200, 1), (rows.Rows.Count, asked));

        rows.Reach(190);
        Assert.Equal(400, rows.Rows.Count);

        rows.Reach(5000);
        Assert.Equal((1000, "1"), (rows.Rows.Count, rows.Rows[^1]));
    }

    [Theory]
    [InlineData("S22", "S23")]
    [InlineData("F09", "F10")]
    [InlineData("F9", "F10")]
    [InlineData("2026-99", "2026-100")]
    [InlineData("fixer", "fixer2")]
    public void The_next_name_raises_the_last_number(string name, string next) =>
        Assert.Equal(next, NextName.After(name));
}
