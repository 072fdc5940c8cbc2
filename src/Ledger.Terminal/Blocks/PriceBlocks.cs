using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Blocks;

/// <summary>What a unit of an item cost on the shelf, delivery by delivery.</summary>
internal static class PriceBlocks
{
    private const int Most = 12;

    /// <summary>The block of an item's latest prices; none when nothing of it was bought.</summary>
    /// <param name="all">What its deliveries cost, the first first.</param>
    /// <param name="style">How amounts are read.</param>
    public static IEnumerable<Block> Of(IReadOnlyList<LotPrice> all, MeasureStyle style)
    {
        if (!all.Any(price => price.IsPriced))
            yield break;
        List<LotPrice> prices = [.. all.Where(price => price.IsPriced).TakeLast(Most)];
        Bar[] bars = [
            .. prices.Select(price => new Bar(Dates.Text(price.Date), price.PerUnit.Amount, price.PerUnitText(style)))];
        yield return new($"A {prices[0].Quantity.Unit.Name()} of {prices[0].Item}, bought", width =>
        [
            .. BarChart.Of(bars, width),
            .. Change(prices) is { } change ? Paragraph.Of(change, width) : [],
        ]);
    }

    private static string? Change(List<LotPrice> prices) =>
        prices.Count > 1 && prices[^1].PercentMoreThan(prices[0]) is { } percent and not 0
            ? $"{Scaled.ToText(Math.Abs(percent), 1)} % {(percent > 0 ? "more" : "less")} than on "
                + $"{Dates.Text(prices[0].Date)}."
            : null;
}
