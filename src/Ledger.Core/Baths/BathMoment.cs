using Ledger.Core.Measures;

namespace Ledger.Core.Baths;

/// <summary>How a bath stood when something went through it.</summary>
/// <param name="Bath">The bath with all that is known of it by now.</param>
/// <param name="On">The day.</param>
/// <param name="Before">The weighted area that it had taken before.</param>
/// <param name="After">The same afterwards.</param>
public sealed record BathMoment(Bath Bath, LocalDate On, Area Before, Area After)
{
    /// <summary>The weighted area per litre that it had taken afterwards, in square inches.</summary>
    public decimal SquareInchesPerLitre => After.SquareInches / Bath.WorkingVolume.Litres;

    /// <summary>Days since it was mixed.</summary>
    public int AgeDays => Period.DaysBetween(Bath.MixedOn, On);

    /// <summary>The last test made by then; null without any.</summary>
    public BathTest? LastTest => BathTest.Of(Bath).LastOrDefault(test => test.Date <= On && test.IsGood is not null);

    /// <summary>The last test by then that found it in order; null without any.</summary>
    public BathTest? LastGoodTest => BathTest.Of(Bath).LastOrDefault(test => test.Date <= On && test.IsGood == true);

    /// <summary>
    /// The first test on that day or later that found it in order; null without any. A fixer only gets worse, so that
    /// what went through it before was
    /// fixed too.
    /// </summary>
    public BathTest? GoodTestSince => BathTest.Of(Bath).FirstOrDefault(test => test.Date >= On && test.IsGood == true);

    /// <summary>Why it was past its limits already; null where it was not, as far as is known.</summary>
    public string? PastLimit
    {
        get
        {
            if (Bath.TotalCapacity is { } capacity && After > capacity)
                return $"beyond its capacity ({Bath.Capacity!.Basis})";
            var ends = new BathReading(Bath with { WorkedWeighted = Before, FilledOn = null },
                On).Ends.Where(end => end.On <= On && end.By != BathEnd.Area);
            return ends.FirstOrDefault() is { } first
                ? $"it had ended by {first.By.Name()} on {Dates.Text(first.On)}: {first.Reason}" : null;
        }
    }

    /// <summary>"1067 of 2000 sq in a litre, 63 days old, rotation 1, last tested on 2026-08-02, 22 days before:
    /// …".</summary>
    public string Text(MeasureStyle style)
    {
        var litre = Area.FromSquareInches(decimal.Ceiling(SquareInchesPerLitre)).ToText(style);
        var through = Bath.Capacity is { } capacity
            ? $"{litre.Split(' ')[0]} of {capacity.PerLitre.ToText(style)} a litre"
            : $"{litre} a litre, no capacity set";
        var tested = LastTest is not { } test ? "not tested by then"
            : "last tested "
                + (test.Date == On ? "that day"
                    : $"{Counted.Of(Period.DaysBetween(test.Date, On), "day")} before, on {Dates.Text(test.Date)}")
                + $": {test.Text}";
        return $"{through}, {Counted.Of(AgeDays, "day")} old"
            + $"{(Bath.Rotations > 0 ? $", rotation {Bath.Rotations}" : "")}, {tested}";
    }
}
