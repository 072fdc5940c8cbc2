using Ledger.Core.Measures;

namespace Ledger.Core.Costing;

/// <summary>Why a negative cost more or less than in the month or the year before.</summary>
/// <param name="Before">What a negative cost then.</param>
/// <param name="After">What it cost now.</param>
/// <param name="Since">The name of the month or year before.</param>
/// <param name="In">The name of this one.</param>
public sealed record CostChange(NegativeParts Before, NegativeParts After, string Since, string In)
{
    /// <summary>
    /// The change of a part against the last one before it that had negatives; null when there is none, or no negatives
    /// now.
    /// </summary>
    /// <param name="parts">The months or years in order.</param>
    /// <param name="index">Which of them.</param>
    public static CostChange? Of(IReadOnlyList<CostSlice> parts, int index) =>
        NegativeParts.Of(parts[index].PerSheet) is { } now
        && parts.Take(index).LastOrDefault(part => part.PerSheet.Negatives > 0) is { } earlier
            ? new(NegativeParts.Of(earlier.PerSheet)!, now, earlier.Name, parts[index].Name) : null;

    /// <summary>The change of the last part that had negatives; null when there are no two of them.</summary>
    public static CostChange? Latest(IReadOnlyList<CostSlice> parts)
    {
        for (var i = parts.Count - 1; i > 0; i--)
            if (parts[i].PerSheet.Negatives > 0)
                return Of(parts, i);
        return null;
    }

    /// <summary>
    /// The same in a sentence, the part that changed most first. The amounts are compared as they are read.
    /// </summary>
    public string Sentence(MeasureStyle style)
    {
        var total = Change(Before.Total, After.Total, style);
        var parts = NegativeParts.Names.Select((name, i) => (name, Change: Change(Before.All[i], After.All[i], style)))
            .Where(part => part.Change != Money.Zero)
            .OrderByDescending(part => Math.Abs(part.Change.Millionths))
            .Select(part => $"{part.name} {Signed(part.Change, style)}").ToList();
        var how = total == Money.Zero
            ? "as much as"
            : $"{(total < Money.Zero ? Money.Zero - total : total).Text(style)} "
                + $"{(total < Money.Zero ? "less" : "more")} than";
        return $"In {In} a negative cost {After.Total.Text(style)}, {how} in {Since}"
            + $"{(parts.Count == 0 ? "" : $": {string.Join(", ", parts)}")}.";
    }

    private static Money Change(Money before, Money after, MeasureStyle style) =>
        after.ToNearest(style.MoneyDecimals) - before.ToNearest(style.MoneyDecimals);

    private static string Signed(Money change, MeasureStyle style) =>
        (change > Money.Zero ? "+" : "") + change.Text(style);
}
