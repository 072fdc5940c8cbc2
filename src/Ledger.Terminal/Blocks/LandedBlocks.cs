namespace Ledger.Terminal.Blocks;

/// <summary>
/// What each line of a delivery comes to on the shelf, exactly: with its share of what was paid for all of them.
/// </summary>
internal static class LandedBlocks
{
    /// <summary>The block of what would come.</summary>
    /// <param name="posting">The delivery.</param>
    /// <param name="settings">The ledger's settings before it.</param>
    public static IReadOnlyList<Block> Of(Posting posting, Settings settings)
    {
        var lots = posting.Facts.OfType<LotReceived>().Select(fact => fact.Lot).ToList();
        var currency = (posting.Facts.OfType<SettingChanged>().LastOrDefault()?.Settings ?? settings).Currency;
        List<(string What, string Held, Money Cost, string Each)> rows =
        [
            .. lots.Select(lot => (lot.Item, lot.Quantity.ToText(settings.Style), lot.Cost, Each(new(
                lot.Item, lot.ReceivedOn, lot.Id, lot.Quantity, lot.Cost, null) { IsPriced = lot.IsPriced },
                    settings.Style))),
        ];
        if (rows.Count > 1)
            rows.Add(("together", "", new(lots.Sum(lot => lot.Cost.Millionths)), ""));
        return [new($"Cost on the shelf{(currency.Length == 0 ? "" : $", {currency}")}", _ => Lines(rows))];
    }

    private static IEnumerable<string> Lines(List<(string What, string Held, Money Cost, string Each)> rows)
    {
        var (what, held, cost) = (rows.Max(row => row.What.Length), rows.Max(row => row.Held.Length),
            rows.Max(row => $"{row.Cost}".Length));
        return rows.Select(row =>
            $"{row.What.PadRight(what)}  {row.Held.PadLeft(held)}  {$"{row.Cost}"
                .PadLeft(cost)}  {row.Each}".TrimEnd());
    }

    private static string Each(LotPrice price, MeasureStyle style) =>
        $"{price.PerUnitText(style)} a {price.Quantity.Unit.Name()}";
}
