namespace Ledger.Exchange.Print;

/// <summary>
/// Upright bars in a row, such as months, each divided into the same parts. The HTML draws them with a scale in round
/// steps and shades that black and white tells apart; plain text draws them lying.
/// </summary>
/// <param name="Caption">What is measured, and in what: a negative, EUR.</param>
/// <param name="Parts">The names of the parts, from the foot of a bar to its top.</param>
/// <param name="Bars">The bars in order.</param>
public sealed record ColumnChart(string Caption, IReadOnlyList<string> Parts,
    IReadOnlyList<ColumnBar> Bars) : PageBlock;

/// <summary>A bar of a <see cref="ColumnChart"/>.</summary>
/// <param name="Label">What it is of.</param>
/// <param name="Values">The lengths of its parts; a part that is less than nothing is not drawn.</param>
/// <param name="Figure">The exact figure of the whole.</param>
public sealed record ColumnBar(string Label, IReadOnlyList<decimal> Values, string Figure)
{
    /// <summary>How long the whole bar is.</summary>
    public decimal Length => Values.Sum(value => Math.Max(0, value));
}

/// <summary>
/// Bars that lie one below the other, each with its name before it and its exact figure behind it: shares of a whole.
/// </summary>
/// <param name="Caption">What is measured.</param>
/// <param name="Bars">The bars in order.</param>
public sealed record ShareChart(string Caption, IReadOnlyList<ShareBar> Bars) : PageBlock;

/// <summary>A bar of a <see cref="ShareChart"/>.</summary>
/// <param name="Label">What it is of.</param>
/// <param name="Value">Its length.</param>
/// <param name="Figure">The exact figure.</param>
public sealed record ShareBar(string Label, decimal Value, string Figure);

/// <summary>A value over time that stands until it changes, such as a price.</summary>
/// <param name="Caption">What is measured, and in what.</param>
/// <param name="Points">The days on which it changed, in order; never empty.</param>
/// <param name="Until">The last day that is shown.</param>
public sealed record StepChart(string Caption, IReadOnlyList<StepPoint> Points, LocalDate Until) : PageBlock;

/// <summary>A change in a <see cref="StepChart"/>.</summary>
/// <param name="Date">The day.</param>
/// <param name="Value">The value from then on.</param>
/// <param name="Figure">The exact figure.</param>
public sealed record StepPoint(LocalDate Date, decimal Value, string Figure);
