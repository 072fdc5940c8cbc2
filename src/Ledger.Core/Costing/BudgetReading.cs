using Ledger.Core.Measures;

namespace Ledger.Core.Costing;

/// <summary>
/// The rate at which a period's work used things up, against what the user means to spend in a month.
/// </summary>
/// <param name="Monthly">The user's monthly amount.</param>
/// <param name="UsedPerMonth">What was used in a month on the average.</param>
/// <param name="BoughtPerMonth">What was bought in a month on the average.</param>
/// <param name="Days">The days that the average is of: the period, from the first use on where nothing was there
/// before.</param>
public sealed record BudgetReading(Money Monthly, Money UsedPerMonth, Money BoughtPerMonth, int Days)
{
    /// <summary>A mean month has 30.4375 days: 487 sixteenths.</summary>
    private const int MonthSixteenths = 487;

    /// <summary>What was used in the period's last month so far; null when the period begins within it.</summary>
    public CostSlice? LastMonth { get; init; }

    /// <summary>
    /// What is left of the monthly amount at this rate of use; less than nothing when it does not suffice.
    /// </summary>
    public Money Left => Monthly - UsedPerMonth;

    /// <summary>The same in a sentence.</summary>
    public string Sentence(MeasureStyle style)
    {
        var left = Left < Money.Zero ? $"{(Money.Zero - Left).Text(style)} more than" : $"{Left.Text(style)} less than";
        return $"{UsedPerMonth.Text(style)} were used in a month, over {Counted.Of(Days, "day")}: {left} the "
            + $"{Monthly.Text(style)} that you mean to spend; {BoughtPerMonth.Text(style)} were bought in a month."
            + (LastMonth is { } month
                ? $" In {month.Name}, {month.Used.Text(style)} of the {Monthly.Text(style)} are used so far."
                : "");
    }

    /// <summary>Reads the rate of a period; null when nothing was used in it.</summary>
    public static BudgetReading? Of(CostReading costs, Money monthly)
    {
        var days = costs.Sheets.Select(sheet => sheet.Date).Concat(costs.Facts.Losses.Select(loss => loss.Date))
            .Concat(costs.Facts.Prints.Select(print => print.Date)).ToList();
        if (days.Count == 0)
            return null;
        var (from, to) = (costs.Opening > Money.Zero ? costs.Facts.From : days.Min(), costs.Facts.To);
        var count = Period.DaysBetween(from, to) + 1;
        return new(monthly, PerMonth(costs.Used, count), PerMonth(costs.Facts.Bought, count), count)
        {
            LastMonth = costs.Facts.From.Day == 1 || costs.Facts.From < to.With(DateAdjusters.StartOfMonth)
                ? CostSlices.Of(costs, CostGrouping.Month).LastOrDefault(month => month.Name == Dates.Text(to)[..7])
                : null,
        };
    }

    private static Money PerMonth(Money amount, int days) =>
        new(Share.Nearest(amount.Millionths, MonthSixteenths, 16L * days));
}
