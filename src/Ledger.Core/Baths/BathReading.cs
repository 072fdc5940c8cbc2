using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

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

    /// <summary>
    /// How much of the capacity is used, in per cent; above 100 when it was overrun; null without a capacity.
    /// </summary>
    public decimal? UsedPercent => Bath.TotalCapacity is { Hundredths: > 0 } capacity
        ? 100m * Bath.WorkedWeighted.Hundredths / capacity.Hundredths
        : null;

    /// <summary>Days since it was mixed.</summary>
    public int AgeDays => Period.DaysBetween(Bath.MixedOn, _today);

    /// <summary>The last good day and its rule, or null when nothing limits its age.</summary>
    public GoodUntil? GoodUntil => GoodUntil.OfWorkingSolution(Bath.Keeping, Bath.MixedOn, Bath.Standings);

    /// <summary>
    /// Every end that has come, the first one first; the same day's in the order area, age, test, sight, replenisher.
    /// </summary>
    public IReadOnlyList<EndReached> Ends => [.. Reached().OrderBy(end => end.On).ThenBy(end => end.By)];

    /// <summary>What ended it, or null while it works: the end that came first.</summary>
    public BathEnd? EndedBy => Ends is [var first, ..] ? first.By : null;

    /// <summary>The line through its clearing tests.</summary>
    public ClearingTrend Clearing =>
        new(Bath.ClearingTests, Bath.WorkingVolume, Bath.Limits.ExhaustedMultipleThousandths);

    /// <summary>How long to fix the film of the last clearing test, in seconds; null without a test.</summary>
    public decimal? FixingSeconds => Bath.ClearingTests is [.., var last]
        ? last.FixingTenths(Bath.Limits.FixingMultipleThousandths) / 10m
        : null;

    /// <summary>
    /// What will end it first if it goes on taking work as it has since it was mixed; null when it no longer works or
    /// nothing can be said.
    /// </summary>
    public EndReached? ComesFirst =>
        IsUnusable ? null : Expected().OrderBy(end => end.On).ThenBy(end => end.By).FirstOrDefault();

    /// <summary>Its capacity on every basis: the one that counts first, then the item's others.</summary>
    public IReadOnlyList<BasisReading> Bases =>
    [
        .. new[] { Bath.Capacity }.Concat(Bath.OtherCapacities).OfType<Capacity>()
            .DistinctBy(capacity => capacity.Basis)
            .Select(capacity => new BasisReading(capacity, Bath.WorkingVolume, Bath.WorkedWeighted)),
    ];

    /// <summary>What it is owed in replenisher; null for a bath that is not replenished.</summary>
    public ReplenishmentReading? Replenishment =>
        Bath.ReplenisherPer80SquareInches is { } rate ? new(Bath, rate) : null;

    /// <summary>Whether it must not be used: it has ended, or it is under suspicion.</summary>
    public bool IsUnusable => EndedBy is not null || Bath.Suspicion is not null;

    /// <summary>Whether it works, or how it came to its end.</summary>
    public BathState State => Bath.Discarded is not null ? BathState.Discarded
        : EndedBy switch { null => BathState.InUse, BathEnd.Age => BathState.Expired, _ => BathState.Exhausted };

    /// <summary>
    /// How many whole sheets or rolls of a format it can still take, never rounded up; none when it no longer works,
    /// null without a capacity.
    /// </summary>
    /// <param name="format">The format.</param>
    /// <param name="factorThousandths">The film's fixer factor, in thousandths.</param>
    public long? RemainingSheets(Format format, int factorThousandths = 1000) =>
        Remaining is not { } left ? null
        : IsUnusable ? 0
        : left.Hundredths / format.Area.Weighted(factorThousandths).Hundredths;

    /// <summary>
    /// Whether so much more weighted area fits into its capacity; null where that cannot be said: a fixer without a
    /// capacity. What else is given no capacity is not counted by area.
    /// </summary>
    public bool? Fits(Area weighted) => Bath.TotalCapacity is { } capacity ? Bath.WorkedWeighted + weighted <= capacity
        : IsUnknown ? null : true;

    /// <summary>Whether its capacity left is not known: a fixer that was given no capacity.</summary>
    public bool IsUnknown => Bath is { TotalCapacity: null, Role: ItemRole.Fixer };

    /// <summary>What cannot be said of a fixer without a capacity, and the step that gives the figure.</summary>
    public static (string Word, string Step) Unknown(Bath bath) => (
        $"the capacity left in {bath.Code} is not known: {bath.Item} has no capacity",
        $"set one, for the baths that are mixed from then on: `record item {bath.Item} --capacity`; until then make "
            + "clearing tests");

    private IEnumerable<EndReached> Reached()
    {
        if (UsedPercent >= 100)
            yield return new(BathEnd.Area, Bath.FilledOn ?? _today, $"{Bath.Capacity!.Basis} capacity used");
        if (Replenishment?.CeilingReachedOn is { } day)
            yield return new(BathEnd.Replenisher, day, "replenisher added up to its ceiling");
        if (GoodUntil is { } limit && limit.IsPast(_today))
            yield return new(BathEnd.Age, limit.Date.PlusDays(1), $"{limit.Rule.Name()} is over");
        if (Bath.ClearingTests.FirstOrDefault(
            test => test.IsExhaustedAt(Bath.Limits.ExhaustedMultipleThousandths)) is { } test)
            yield return new(
                BathEnd.Test, test.Date,
                $"{test.Film} cleared in {Scaled.ToText(test.Seconds, 1)} s, {Scaled.ToText(test.Ratio ?? 0, 2)} times "
                    + "the fresh time");
        if (Bath.SilverReadings.FirstOrDefault(silver => silver.MilligramsPerLitre
            >= Bath.Limits.SilverMilligramsPerLitre) is { } reading)
            yield return new(BathEnd.Test, reading.Date,
                $"{Scaled.ToText(reading.GramsPerLitre, 3)} g of silver per litre");
        if (Bath.ResidualTests.FirstOrDefault(one => one.Ends(Bath.Role)) is { } residue)
            yield return new(BathEnd.Test, residue.Date, $"residual {residue.Kind}: {residue.Result}");
        if (Bath.Observations.FirstOrDefault(seen => seen.EndsUse) is { } sign)
            yield return new(BathEnd.Sight, sign.Date, sign.Sign);
    }

    private IEnumerable<EndReached> Expected()
    {
        if (GoodUntil is { } limit)
            yield return new(BathEnd.Age, limit.Date.PlusDays(1), limit.Rule.Name());
        var perDay = AgeDays > 0 ? Bath.WorkedWeighted.Hundredths / (double)AgeDays : 0;
        if (Remaining is { } left && DayAfter(left.Hundredths, perDay) is { } filled)
            yield return new(BathEnd.Area, filled, $"{Bath.Capacity!.Basis} capacity");
        if (Clearing.ReachedAt is { } at
            && (at - (double)ThroughputSquareInchesPerLitre) * (double)Bath.WorkingVolume.Litres
                * Area.PerSquareInch is var ahead
            && DayAfter(ahead, perDay) is { } slow)
            yield return new(BathEnd.Test, slow, "line through the clearing tests");
    }

    private LocalDate? DayAfter(double area, double perDay)
    {
        var days = area / perDay;
        return days is >= 0 and < 36_500 ? _today.PlusDays((int)days) : null;
    }
}

/// <summary>An end of a bath, come or to come.</summary>
/// <param name="By">What ends it.</param>
/// <param name="On">The first day on which it no longer works.</param>
/// <param name="Reason">The figure or rule behind it.</param>
public sealed record EndReached(BathEnd By, LocalDate On, string Reason);
