using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using NodaTime;

namespace Ledger.Core.Baths;

/// <summary>How a bath stands on a day: what it has taken, what it can still take, and what ends it.</summary>
public sealed record BathReading
{
    private readonly LocalDate _today;

    /// <summary>Reads a bath.</summary>
    /// <param name="bath">The bath with the work it has taken.</param>
    /// <param name="today">The day of the reading.</param>
    public BathReading(Bath bath, LocalDate today)
    {
        Bath = bath;
        _today = today;
    }

    /// <summary>The bath itself.</summary>
    public Bath Bath { get; }

    /// <summary>Weighted area fixed per litre, in square inches.</summary>
    public decimal ThroughputSquareInchesPerLitre => Bath.WorkedWeighted.SquareInches / Bath.WorkingVolume.Litres;

    /// <summary>The weighted area it can still take; null without a capacity.</summary>
    public Area? Remaining => Bath.TotalCapacity?.LessUsed(Bath.WorkedWeighted);

    /// <summary>How much of the capacity is used, in per cent; above 100 when it was overrun; null without a capacity.</summary>
    public decimal? UsedPercent => Bath.TotalCapacity is { Hundredths: > 0 } capacity
        ? 100m * Bath.WorkedWeighted.Hundredths / capacity.Hundredths
        : null;

    /// <summary>Days since it was mixed.</summary>
    public int AgeDays => Period.DaysBetween(Bath.MixedOn, _today);

    /// <summary>The last good day and its rule, or null when nothing limits its age.</summary>
    public GoodUntil? GoodUntil => GoodUntil.OfWorkingSolution(Bath.Keeping, Bath.MixedOn);

    /// <summary>What has ended it, or null while it is good.</summary>
    public BathEnd? EndedBy =>
        UsedPercent >= 100 ? BathEnd.Area
        : GoodUntil is { } limit && limit.IsPast(_today) ? BathEnd.Age
        : null;

    /// <summary>Whether it must not be used again.</summary>
    public bool IsSpent => EndedBy is not null;

    /// <summary>
    /// How many whole sheets or rolls of a format it can still take, never rounded up; none when it is spent, null without a capacity.
    /// </summary>
    /// <param name="format">The format.</param>
    /// <param name="weightThousandths">The film's weight on the fixer, in thousandths.</param>
    public long? RemainingSheets(Format format, int weightThousandths = 1000) =>
        Remaining is not { } left ? null
        : IsSpent ? 0
        : left.Hundredths / format.Area.Weighted(weightThousandths).Hundredths;

    /// <summary>Whether so much more weighted area fits into its capacity; a bath without a capacity never refuses.</summary>
    public bool Fits(Area weighted) => Bath.TotalCapacity is not { } capacity || Bath.WorkedWeighted + weighted <= capacity;
}
