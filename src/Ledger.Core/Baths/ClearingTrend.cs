using Ledger.Core.Measures;

namespace Ledger.Core.Baths;

/// <summary>
/// The line through a bath's clearing tests: ratio to the fresh time against weighted area per litre.
/// </summary>
public sealed record ClearingTrend
{
    /// <summary>As few tests as a line can be drawn through with something left to judge it by.</summary>
    public const int FewestTests = 3;

    /// <summary>Reads the trend of a bath's tests.</summary>
    /// <param name="tests">The tests.</param>
    /// <param name="volume">The bath's working volume.</param>
    /// <param name="exhaustedMultipleThousandths">The ratio at which the bath is exhausted.</param>
    public ClearingTrend(IEnumerable<ClearingTime> tests, Volume volume, int exhaustedMultipleThousandths)
    {
        Limit = exhaustedMultipleThousandths / 1000.0;
        Points = [.. tests.Where(test => test.Ratio is not null)
            .Select(test => ((double)(test.Worked.SquareInches / volume.Litres), (double)test.Ratio!.Value))];
        Line = FittedLine.Through(Points);
        if (Line?.Reaches(Limit) is { } end && end.At > 0)
            (ReachedAt, NotBefore, NotAfter) = (end.At, Math.Max(0, end.Least), end.Most);
    }

    /// <summary>The ratio at which the bath is exhausted.</summary>
    public double Limit { get; }

    /// <summary>The tests: weighted square inches per litre, and the ratio to the fresh time.</summary>
    public IReadOnlyList<(double SquareInchesPerLitre, double Ratio)> Points { get; }

    /// <summary>The line, when there are tests enough at different areas.</summary>
    public FittedLine? Line { get; }

    /// <summary>The area per litre at which the line reaches the limit; null when nothing can be said.</summary>
    public double? ReachedAt { get; }

    /// <summary>The least area per litre at which it may, with 95 % confidence.</summary>
    public double? NotBefore { get; }

    /// <summary>The largest, with 95 % confidence.</summary>
    public double? NotAfter { get; }

    /// <summary>What can be said of the end, in a sentence.</summary>
    public string Text =>
        Points.Count < FewestTests
            ? $"{Points.Count} of {FewestTests} tests that a line needs: too few to predict the end"
        : Line is null ? "all tests were made at the same area: too few to predict the end"
        : Line.Slope <= 0 ? "the tests do not rise yet: no end can be predicted"
        : ReachedAt is not { } at ? "the tests scatter too much to predict the end; more are needed"
        : $"the limit of {Scaled.ToText((decimal)Limit, 2)} times is reached at about {Whole(at)} sq in per litre "
            + $"(95 %: {Whole(NotBefore)} to {Whole(NotAfter)}), from {Points.Count} tests";

    /// <summary>An area as people say it; the end of the range may be so far away that no number holds it.</summary>
    private static string Whole(double? area) =>
        area is { } known && known < 1e15 ? Scaled.ToText((decimal)known, 0) : "never";
}
