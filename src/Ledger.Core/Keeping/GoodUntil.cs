using NodaTime;

namespace Ledger.Core.Keeping;

/// <summary>The last day on which something is good, and the rule that says so.</summary>
/// <param name="Date">The last good day, inclusive.</param>
/// <param name="Rule">The rule that governs: the earliest of all that apply.</param>
public sealed record GoodUntil(LocalDate Date, KeepingRule Rule)
{
    /// <summary>Whether it is past its last good day.</summary>
    public bool IsPast(LocalDate today) => today > Date;

    /// <summary>Days from today to the last good day; negative when it is past.</summary>
    public int DaysLeft(LocalDate today) => Period.DaysBetween(today, Date);

    /// <summary>A closed container: the earliest of its printed date and its lives sealed, opened and below half full.</summary>
    /// <param name="limits">The item's limits.</param>
    /// <param name="printed">The date on the label, if any.</param>
    /// <param name="receivedOn">The day of the delivery.</param>
    /// <param name="openedOn">The day it was opened, if it was.</param>
    /// <param name="halfEmptyOn">The day on which it fell below half, if it did.</param>
    public static GoodUntil? OfContainer(
        KeepingLimits limits, LocalDate? printed, LocalDate receivedOn, LocalDate? openedOn, LocalDate? halfEmptyOn) =>
        Earliest(
            (printed, KeepingRule.PrintedDate),
            (openedOn is null ? After(receivedOn, limits.SealedDays) : null, KeepingRule.SealedLife),
            (After(openedOn, limits.OpenedFullDays), KeepingRule.SinceOpening),
            (After(halfEmptyOn, limits.OpenedPartDays), KeepingRule.SinceHalfEmpty));

    /// <summary>A working solution kept in a full closed bottle.</summary>
    public static GoodUntil? OfWorkingSolution(KeepingLimits limits, LocalDate mixedOn) =>
        Earliest((After(mixedOn, limits.WorkingFullDays), KeepingRule.SinceMixing));

    private static LocalDate? After(LocalDate? start, int? days) => days is { } n ? start?.PlusDays(n) : null;

    private static GoodUntil? Earliest(params ReadOnlySpan<(LocalDate? Date, KeepingRule Rule)> ends)
    {
        GoodUntil? earliest = null;
        foreach (var (date, rule) in ends)
            if (date is { } end && (earliest is null || end < earliest.Date))
                earliest = new(end, rule);
        return earliest;
    }
}
