using Ledger.Core.Measures;

namespace Ledger.Core.Baths;

/// <summary>Anything that was found out about a bath, of every kind alike.</summary>
/// <param name="Date">The day.</param>
/// <param name="Text">What it showed.</param>
/// <param name="IsGood">Whether the bath was in order then; null where it does not say.</param>
public sealed record BathTest(LocalDate Date, string Text, bool? IsGood)
{
    /// <summary>All that was found out about a bath, the first one first.</summary>
    public static IReadOnlyList<BathTest> Of(Bath bath) =>
    [
        .. bath.ClearingTests.Select(test => new BathTest(
                test.Date,
                $"{test.Film} cleared in {Scaled.ToText(test.Seconds, 1)} s" + (test.IsFresh ? ", fresh"
                    : test.Ratio is { } ratio ? $", {Scaled.ToText(ratio, 2)} times the fresh time" : ""),
                test.IsFresh ? true : test.Ratio is null ? null
                    : !test.IsExhaustedAt(bath.Limits.ExhaustedMultipleThousandths)))
            .Concat(bath.SilverReadings.Select(silver => new BathTest(
                silver.Date, $"{Scaled.ToText(silver.GramsPerLitre, 3)} g of silver per litre",
                bath.Limits.SilverMilligramsPerLitre is { } limit ? silver.MilligramsPerLitre < limit : null)))
            .Concat(bath.ResidualTests.Select(test => new BathTest(
                test.Date,
                    $"residual {test.Kind} test{(test.Session is { } session ? $" of {session}" : "")}: {test.Result}",
                    test.HasPassed)))
            .Concat(bath.ControlStrips.Select(strip => new BathTest(strip.Date, $"control strip: {strip.Result}",
                strip.IsWithinLimits)))
            .Concat(bath.Observations.Select(seen => new BathTest(seen.Date, seen.Sign, seen.EndsUse ? false : null)))
            .OrderBy(test => test.Date),
    ];
}
