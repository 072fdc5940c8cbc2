namespace Ledger.Exchange.Print;

/// <summary>
/// What a unit of each item cost on the shelf, delivery by delivery: the items that were bought in a period, all their
/// life.
/// </summary>
internal static class PriceHistory
{
    public static IEnumerable<PageBlock> Of(IReadOnlyList<LotPrice> prices, LocalDate from,
        LocalDate to, Settings settings)
    {
        var items = prices.Where(price => price.Date <= to).GroupBy(price => price.Item,
            StringComparer.OrdinalIgnoreCase)
            .Where(item => item.Any(price => price.Date >= from)).OrderBy(item => item.Key,
                StringComparer.OrdinalIgnoreCase).ToList();
        if (items.Count == 0)
            yield break;
        yield return new Heading("Prices on the shelf");
        yield return new Paragraph("What each delivery cost with its share of shipping, duty and tax, less discount.");
        foreach (var item in items.Where(
            item => item.Where(price => price.IsPriced).Select(price => price.PerUnit).Distinct().Count() > 1))
            yield return Chart(item.Key, [.. item.Where(price => price.IsPriced)], to, settings);
        yield return new Grid(
            ["item", "date", "came", "cost", "each", "change"],
            [.. items.SelectMany(item => Rows([.. item], settings.Style))]) { FiguresFrom = 2 };
    }

    /// <summary>The last delivery of a day stands for the day.</summary>
    private static StepChart Chart(string item, IReadOnlyList<LotPrice> prices, LocalDate to, Settings settings)
    {
        var unit = prices[0].Quantity.Unit.Name();
        var points = prices.GroupBy(price => price.Date).Select(day => day.Last())
            .Select(price => new StepPoint(price.Date, price.PerUnit.Amount, price.PerUnitText(settings.Style)));
        return new($"a {unit} of {item}{(settings.Currency.Length == 0 ? "" : $", {settings.Currency}")}",
            [.. points], to);
    }

    private static IEnumerable<IReadOnlyList<string>> Rows(IReadOnlyList<LotPrice> prices, MeasureStyle style) =>
        prices.Select((price, i) =>
            (IReadOnlyList<string>)
            [
                price.Item, Dates.Text(price.Date), price.Quantity.ToText(style), price.CostText(style),
                price.PerUnitText(style), i > 0 && price.PercentMoreThan(prices[i - 1]) is { } percent and not 0
                    ? $"{(percent > 0 ? "+" : "")}{Scaled.ToText(percent, 1)} %"
                    : "",
            ]);
}
