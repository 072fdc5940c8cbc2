using Ledger.Core.Costing;
using Ledger.Core.Film;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Planning;

/// <summary>What a session will cost: the very lots that are drawn, and the baths' share by area.</summary>
/// <param name="Film">The film.</param>
/// <param name="Developer">The developer.</param>
/// <param name="OtherChemistry">The other one-shot chemistry.</param>
/// <param name="Baths">The share of the bath that the area uses up.</param>
/// <param name="Supplies">The supplies.</param>
/// <param name="Sheets">The sheets it is shared by.</param>
/// <param name="IsComplete">Whether everything has a price; otherwise it costs more than this.</param>
public sealed record PlanCost(Money Film, Money Developer, Money OtherChemistry, Money Baths,
    Money Supplies, int Sheets, bool IsComplete)
{
    /// <summary>What of it is short, at what the last delivery cost.</summary>
    public Money ShortCost { get; init; }

    /// <summary>The items that are short and are counted at the price of the day of their last delivery.</summary>
    public IReadOnlyList<(string Item, LocalDate Bought)> AtLastPrice { get; init; } = [];

    /// <summary>
    /// The items of which something has no price: what is short and was never bought, or what came without a price.
    /// </summary>
    public IReadOnlyList<string> Unpriced { get; init; } = [];

    /// <summary>All of it.</summary>
    public Money Total => Film + Developer + OtherChemistry + Baths + Supplies;

    /// <summary>
    /// The same for one sheet; null where something has no price: a part of the cost is not divided by all sheets.
    /// </summary>
    public Money? PerSheet => IsComplete ? Total.Per(Sheets) : null;

    /// <summary>What is said of prices that are of an earlier day, or unknown; empty when all is known.</summary>
    public string Remark(MeasureStyle style)
    {
        var sentences = new List<string>();
        if (AtLastPrice.Count > 0)
            sentences.Add($"What is short, {ShortCost.Text(style)} of it, is counted at the last price: "
                + string.Join(", ", AtLastPrice.Select(one => $"{one.Item} of {Dates.Text(one.Bought)}")));
        if (Unpriced.Count > 0)
            sentences.Add($"It costs more than that: there is no price for {string.Join(", ", Unpriced)}");
        return string.Join(". ", sentences);
    }

    /// <summary>Adds up the uses of a session.</summary>
    /// <param name="draft">The session.</param>
    /// <param name="uses">What it uses.</param>
    /// <param name="baths">The baths that it goes through.</param>
    /// <param name="prices">What deliveries cost, for what is short; null when nobody knows.</param>
    internal static PlanCost Of(
        SessionPlanDraft draft, IReadOnlyList<PlannedUse> uses, IEnumerable<BathOutlook> baths, ICostRecords? prices)
    {
        var sheets = draft.Batches.SelectMany(batch => batch.Sheets).Select(sheet => sheet.Known)
            .OfType<Sheet>().ToList();
        var shortUses = uses.Where(use => !use.IsEnough)
            .Select(use => (Use: use, Last: LastPrice(use.Item.Code, prices, draft.Day))).ToList();
        var missing = shortUses.Where(one => one.Last is not null).ToDictionary(
            one => one.Use.Item.Code, one => one.Last!.Cost.PartOf(one.Use.Missing.Base, one.Last.Quantity.Base));
        Money Sum(Func<Item, bool> which) => new(uses.Where(use => which(use.Item))
            .Sum(use => use.Cost.Millionths + missing.GetValueOrDefault(use.Item.Code).Millionths));
        var outlooks = baths.Where(bath => bath.IsFirst).ToList();
        List<string> unpriced =
        [
            .. shortUses.Where(one => one.Last is null).Select(one => one.Use.Item.Code),
            .. uses.Where(use => use.Draws.Any(draw => !draw.From.Lot.IsPriced)).Select(use => use.Item.Code),
            .. sheets.Where(sheet => !sheet.Lot.IsPriced).Select(sheet => sheet.Item),
            .. outlooks.Where(bath => bath.Bath is null).Select(bath => $"the bath of {bath.Item}"),
        ];
        return new(
            Sum(item => item.Kind == ItemKind.Film) + new Money(sheets.Sum(sheet => sheet.Cost.Millionths)),
            Sum(item => item is { Kind: ItemKind.Chemical, Role: ItemRole.Developer }),
            Sum(item => item.Kind == ItemKind.Chemical && item.Role != ItemRole.Developer),
            new(outlooks.Sum(bath => bath.Share.Millionths)),
            Sum(item => item.Kind == ItemKind.Supply),
            draft.SheetCount,
            unpriced.Count == 0)
        {
            ShortCost = new(missing.Values.Sum(cost => cost.Millionths)),
            AtLastPrice = [.. shortUses.Where(one => one.Last is not null)
                .Select(one => (one.Use.Item.Code, one.Last!.Date))],
            Unpriced = [.. unpriced.Distinct(StringComparer.OrdinalIgnoreCase)],
        };
    }

    private static LotPrice? LastPrice(string item, ICostRecords? prices, LocalDate day) =>
        prices?.PricesOf(item, day).LastOrDefault(price => price.IsPriced && price.Cost > Money.Zero);
}
