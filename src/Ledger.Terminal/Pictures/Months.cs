namespace Ledger.Terminal.Pictures;

/// <summary>Amounts gathered by month, for a bar chart of use.</summary>
internal static class Months
{
    /// <summary>
    /// One bar for each of the last <paramref name="count"/> months, the latest first, back to the first with an
    /// amount.
    /// </summary>
    public static IReadOnlyList<Bar> Of(
        IEnumerable<(LocalDate Date, long Amount)> amounts, LocalDate today, int count, Func<long, string> figure)
    {
        var first = today.With(DateAdjusters.StartOfMonth).PlusMonths(1 - count);
        var sums = new long[count];
        foreach (var (date, amount) in amounts)
            if (date >= first && date <= today)
                sums[(date.Year - first.Year) * 12 + date.Month - first.Month] += amount;
        var bars = sums.Select((sum, i) => new Bar(Label(first.PlusMonths(i)), sum, figure(sum)));
        return [.. bars.SkipWhile(bar => bar.Value == 0).Reverse()];
    }

    private static string Label(LocalDate month) =>
        string.Create(CultureInfo.InvariantCulture, $"{month.Year:0000}-{month.Month:00}");
}
