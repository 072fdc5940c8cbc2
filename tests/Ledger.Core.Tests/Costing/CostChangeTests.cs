namespace Ledger.Core.Tests.Costing;

/// <summary>Why a negative cost more or less than in the month before.</summary>
public sealed class CostChangeTests
{
    /// <summary>
    /// Four sheets at 6 for four negatives with 2 of chemistry; then six at 7 for four, with 3 of chemistry.
    /// </summary>
    private static readonly CostSlice[] Months =
    [
        Month("2026-01", 4, film: 24, spoiled: 0, chemistry: 2), Month("2026-02", 0, film: 6, spoiled: 6, chemistry: 1),
        Month("2026-03", 4, film: 42, spoiled: 14, chemistry: 3),
    ];

    [Fact]
    public void It_names_what_changed_most_first_and_passes_over_a_month_without_negatives() => Assert.Equal(
        "In 2026-03 a negative cost 11.25, 4.75 more than in 2026-01: spoiled film +3.50, film +1.00, chemistry +0.25.",
        CostChange.Latest(Months)!.Sentence(MeasureStyle.Metric));

    [Fact]
    public void The_parts_of_a_negative_add_up_to_it() =>
        Assert.All(Months.Where(month => month.PerSheet.Negatives > 0), month =>
            Assert.Equal(month.PerSheet.PerNegative, NegativeParts.Of(month.PerSheet)!.Total));

    [Fact]
    public void Without_negatives_before_or_now_there_is_nothing_to_compare()
    {
        Assert.Null(CostChange.Of(Months, 0));
        Assert.Null(CostChange.Of(Months, 1));
        Assert.Null(CostChange.Latest([Months[2]]));
    }

    [Fact]
    public void The_same_is_as_much() => Assert.Equal(
        "In 2026-03 a negative cost 11.25, as much as in "
            + "2026-03.", CostChange.Latest([Months[2], Months[2]])!.Sentence(MeasureStyle.Metric));

    [Fact]
    public void What_reads_the_same_is_as_much() => Assert.Equal(
        "In 2026-02 a negative cost 3.10, as much as in 2026-01.",
        CostChange.Latest([Month("2026-01", 1, 3.096m, 0, 0), Month("2026-02", 1, 3.104m, 0, 0)])!.Sentence(
            MeasureStyle.Metric));

    [Fact]
    public void What_reads_a_cent_apart_is_a_cent_less_and_what_goes_up_and_down_is_told() => Assert.Equal(
        "In 2026-02 a negative cost 3.10, 0.01 less than in 2026-01: film -0.02, chemistry +0.01.",
        CostChange.Latest([Month("2026-01", 1, 3.105m, 0, 0), Month("2026-02", 1, 3.094m, 0, 0.01m)])!.Sentence(
            MeasureStyle.Metric));

    private static CostSlice Month(string name, long negatives, decimal film, decimal spoiled,
        decimal chemistry) => new(
        name,
        new FilmCost(name, 6, negatives, 0, Money.Of(film), Money.Of(chemistry),
            Money.Zero) { Spoiled = Money.Of(spoiled) },
        Money.Of(film - spoiled), Money.Of(chemistry), Money.Zero, Money.Of(spoiled));
}
