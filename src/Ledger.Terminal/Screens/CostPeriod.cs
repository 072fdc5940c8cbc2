namespace Ledger.Terminal.Screens;

/// <summary>A period that costs are shown for.</summary>
/// <param name="Name">As the title says it.</param>
/// <param name="From">The first day.</param>
/// <param name="To">The last day, inclusive.</param>
internal sealed record CostPeriod(string Name, LocalDate From, LocalDate To)
{
    /// <summary>The periods that can be chosen, the usual one first.</summary>
    public static IReadOnlyList<CostPeriod> On(LocalDate today) =>
    [
        new("the last 12 months", today.PlusYears(-1).PlusDays(1), today),
        new("this month", today.With(DateAdjusters.StartOfMonth), today),
        new("this year", new(today.Year, 1, 1), today),
        new("last year", new(today.Year - 1, 1, 1), new(today.Year - 1, 12, 31)),
        new("all years", new(1900, 1, 1), today),
    ];
}
