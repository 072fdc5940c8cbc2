namespace Ledger.App.Commands.Show;

/// <summary>show prices: what each delivery of an item cost on the shelf, over time.</summary>
internal sealed class ShowPrices : ShowCommand<IReadOnlyList<LotPrice>>
{
    private static readonly Shape<IReadOnlyList<LotPrice>> _shape = new Shape<IReadOnlyList<LotPrice>>()
        .AsOf()
        .Table("prices", (prices, _) => WithEarlier(prices), new Shape<(LotPrice Price, LotPrice? Earlier)>()
            .Text("item", row => row.Price.Item)
            .Date("date", row => row.Price.Date)
            .Whole("lot", row => row.Price.Lot.Value)
            .Quantity("quantity", row => row.Price.Quantity)
            .Money("cost", row => row.Price.IsPriced ? row.Price.Cost : null)
            .Money("perUnit", row => row.Price.IsPriced ? row.Price.PerUnit : null)
            .Figure("changePercent", row => row.Earlier is null ? null : row.Price.PercentMoreThan(row.Earlier),
                "how much more than the delivery before")
            .Text("paidIn", (row, view) => row.Price.Currency ?? view.Currency));

    private readonly Argument<string?> _item = new Argument<string?>("item") { Arity = ArgumentArity.ZeroOrOne,
        Description = "one item only" }
        .Offered(Offers.Items);

    public ShowPrices(Workbench bench)
        : base(
            bench, "prices",
            "Shows what each delivery cost, shipping and duty included, and how much more than the one before.",
            "Example: trayledger show prices fen80", _shape) =>
        Arguments.Add(_item);

    protected override IReadOnlyList<LotPrice> Read(View view, ParseResult parse)
    {
        var code = parse.GetValue(_item)?.Trim();
        if (code is not null && view.Holdings.Item(code) is null)
            throw new RefusedByCommandException(
                $"there is no item \"{code}\"; {Known.Names(code, view.Holdings.ItemCodes, "known")}");
        return
        [
            .. view.Ledger.Prices(view.AsOf)
                .Where(price => code is null || price.Item.Equals(code, StringComparison.OrdinalIgnoreCase))
                .OrderBy(price => price.Item, StringComparer.OrdinalIgnoreCase),
        ];
    }

    protected override void WriteText(IReadOnlyList<LotPrice> prices, View view, TextWriter output)
    {
        if (prices.Count == 0)
            output.WriteLine("Nothing was bought.");
        var table = new TextTable(
            Column.Left("item"), Column.Left("date"), Column.Right("delivered"), Column.Right("cost"),
            Column.Right("a unit"), Column.Right("change"));
        foreach (var (price, earlier) in WithEarlier(prices))
            table.Add(
                price.Item, Dates.Text(price.Date), price.Quantity.ToText(view.Style), price.CostText(view.Style),
                price.PerUnitText(view.Style),
                Change(price, earlier));
        table.WriteTo(output, view.Width);
    }

    private static string Change(LotPrice price, LotPrice? earlier) =>
        earlier is null || price.PercentMoreThan(earlier) is not { } percent
            ? ""
            : $"{(percent > 0 ? "+" : "")}{Scaled.ToText(percent, 1)} %";

    private static IEnumerable<(LotPrice Price, LotPrice? Earlier)> WithEarlier(IReadOnlyList<LotPrice> prices) =>
        prices.Select((price, i) => (price, i > 0 && prices[i - 1].Item == price.Item ? prices[i - 1] : null));
}
