namespace Ledger.Terminal.Tests.Screens;

/// <summary>
/// Items that are only defined: their rows are told without looking them up, and say what looking them up would.
/// </summary>
public sealed class NeverThereTests : OnTheDemoYear
{
    public NeverThereTests()
    {
        Item[] defined =
        [
            Products.Film("moss25", "Quarrel Moss 25"), Products.Fixer("peatfix", "Peatwater fixer", "handbook"),
            Products.Developer("loam", "Loam Syrup"), Products.Developer("loam-stock", "Loam") with { StockOf = "loam" },
        ];
        foreach (var item in defined)
            Assert.IsType<Posted>(Ledger.Post(
                new ItemDefinition { Key = Some.Key(), Date = Ledger.Today, Item = item }));
    }

    [Fact]
    public void Their_rows_on_the_shelf_are_those_of_the_items_looked_up()
    {
        using var again = LedgerFile.Open(Ledger.Path, Clock);
        var shelf = new ShelfModel(again);
        shelf.Refresh();
        var told = Rows(shelf);
        Assert.Equal(again.HoldingsOn(again.Today).ItemNames.Count, shelf.Count);
        for (var row = 0; row < shelf.Count; row++)
            Assert.NotEmpty(shelf.Details(row));

        Assert.Equal(told, Rows(shelf));
        Assert.Contains(told, row => row.StartsWith("moss25|0 sheets||none||0.00|", StringComparison.Ordinal));
    }

    [Fact]
    public void Their_rows_among_what_to_order_are_those_of_the_items_looked_up_and_stock_solutions_are_not_among_them()
    {
        using var again = LedgerFile.Open(Ledger.Path, Clock);
        var (lazy, whole) = (new ReorderModel(again), new ReorderModel(Ledger));
        lazy.Refresh();
        whole.Refresh();

        Assert.Equal(Rows(whole).Order(StringComparer.Ordinal), Rows(lazy).Order(StringComparer.Ordinal));
        Assert.Equal(["loam", "moss25", "peatfix"], Enumerable.Range(0, lazy.Count).Select(lazy.IdOf).TakeLast(3));
        for (var row = 0; row < lazy.Count; row++)
            Assert.NotEmpty(lazy.Details(row));
    }

    [Fact]
    public void They_are_found_by_a_word_of_their_name_on_the_shelf_and_in_the_list_of_actions()
    {
        Screen.Type("2/quarrel");
        Assert.Contains("moss25", Screen.Text);
        Look(120, 40).Find("quarrel moss");
        Assert.Contains("moss25", Screen.Lines.First(line => line.Contains("Quarrel", StringComparison.Ordinal)));
    }

    private static string[] Rows(TableModel table) =>
    [
        .. Enumerable.Range(0, table.Count).Select(row =>
            string.Join('|', Enumerable.Range(0, table.Columns.Count).Select(column => table.Cell(row, column)))),
    ];
}
