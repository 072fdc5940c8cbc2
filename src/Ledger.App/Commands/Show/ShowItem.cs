namespace Ledger.App.Commands.Show;

/// <summary>show item X: one item's settings, its containers, its moves, and its stock's worth.</summary>
internal sealed class ShowItem : ShowCommand<ItemShown>
{
    private readonly Argument<string> _item = Typed.Argument("item", Text.NotEmpty, "the item's code")
        .Offered(Offers.Items);
    private readonly LastOption _last = new("moves", 30);

    public ShowItem(Workbench bench)
        : base(bench, "item",
            "Shows one item: its settings, its boxes and bottles, deliveries and use, and its value by each cost "
                + "formula.", """
            Example: trayledger show item tarnfix
            """, ItemShape.Of)
    {
        Arguments.Add(_item);
        Options.Add(_last);
    }

    protected override ItemShown Read(View view, ParseResult parse)
    {
        var code = parse.GetRequiredValue(_item).Trim();
        var item = view.Holdings.Item(code) ?? throw new RefusedByCommandException(
            $"there is no item \"{code}\"; {Known.Names(code, view.Holdings.ItemCodes, "known")}");
        var moves = view.Ledger.MovesOf(item.Code, view.AsOf, int.MaxValue);
        return new(
            new(item, view.Holdings.ContainersOf(item.Code), view.AsOf),
            [.. moves.Take(_last.In(parse))],
            [.. Enum.GetValues<CostFormula>().Select(formula => (formula, StockValue.Of(moves.Reverse(), formula)))],
            view.Ledger.PlacesOf(item.Code, view.AsOf));
    }

    protected override void WriteText(ItemShown shown, View view, TextWriter output) =>
        ItemText.Write(shown, view, output);
}

/// <summary>An item as it is shown.</summary>
/// <param name="Shelf">Its stock.</param>
/// <param name="Moves">What its containers took in and gave, the last first.</param>
/// <param name="Values">What its stock is worth by each cost formula.</param>
/// <param name="Places">Where all of it is and went.</param>
internal sealed record ItemShown(
    ShelfReading Shelf, IReadOnlyList<ItemMove> Moves, IReadOnlyList<(CostFormula Formula, Money? Value)> Values,
    IReadOnlyList<PlaceHeld> Places);
