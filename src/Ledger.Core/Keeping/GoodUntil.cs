using Ledger.Core.Measures;

namespace Ledger.Core.Keeping;

/// <summary>The last day on which something is good, and the rule that says so.</summary>
/// <param name="Date">The last good day, inclusive.</param>
/// <param name="Rule">The rule that governs: the earliest of all that apply.</param>
public sealed record GoodUntil(LocalDate Date, KeepingRule Rule)
{
    /// <summary>
    /// The days by which the time spent in the cold has moved the date so far; already in <see cref="Date"/>.
    /// </summary>
    public int ColdDays { get; init; }

    /// <summary>The rule in words, with what cold storage adds: it is never left out in silence.</summary>
    public string Reason => ColdDays == 0 ? Rule.Name()
        : $"{Rule.Name()} {Dates.Text(Date.PlusDays(-ColdDays))} and {Counted.Of(ColdDays, "day")} for the time in the "
            + "cold";

    /// <summary>Whether it is past its last good day.</summary>
    public bool IsPast(LocalDate today) => today > Date;

    /// <summary>Days from today to the last good day; negative when it is past.</summary>
    public int DaysLeft(LocalDate today) => Period.DaysBetween(today, Date);

    /// <summary>
    /// A closed container: the earliest of its expiry date and its lives sealed, opened and below half full.
    /// </summary>
    /// <param name="limits">The item's limits.</param>
    /// <param name="printed">The date on the label, if any.</param>
    /// <param name="receivedOn">The day of the delivery, or of mixing.</param>
    /// <param name="openedOn">The day it was opened, if it was.</param>
    /// <param name="halfEmptyOn">The day on which it fell below half, if it did.</param>
    /// <param name="cold">The time in the cold, which moves the expiry date and the sealed life; null for none.</param>
    /// <param name="isMixed">Whether it is a stock solution, whose life in the bottle begins with its mixing.</param>
    public static GoodUntil? OfContainer(
        KeepingLimits limits, LocalDate? printed, LocalDate receivedOn, LocalDate? openedOn, LocalDate? halfEmptyOn,
        ColdTime? cold = null, bool isMixed = false)
    {
        var earliest = Earliest(
            (Moved(printed, cold), KeepingRule.PrintedDate),
            (openedOn is null && !isMixed ? Moved(After(receivedOn, limits.SealedDays), cold) : null,
                KeepingRule.SealedLife),
            (After(isMixed ? receivedOn : openedOn, limits.OpenedFullDays),
                isMixed ? KeepingRule.SinceMixing : KeepingRule.SinceOpening),
            (After(halfEmptyOn, limits.OpenedPartDays), KeepingRule.SinceHalfEmpty));
        LocalDate? warm = earliest?.Rule switch
        {
            KeepingRule.PrintedDate => printed,
            KeepingRule.SealedLife => After(receivedOn, limits.SealedDays),
            _ => null,
        };
        return warm is { } day ? earliest! with { ColdDays = Period.DaysBetween(day, earliest.Date) } : earliest;
    }

    /// <summary>
    /// A working solution: never longer than in a full closed bottle since its mixing, and never longer in any
    /// container than that container allows. A stay that ended in time does not count any more.
    /// </summary>
    /// <param name="limits">The item's limits.</param>
    /// <param name="mixedOn">The day of mixing.</param>
    /// <param name="standings">What it stood in, in the order of days; none for a full bottle.</param>
    public static GoodUntil? OfWorkingSolution(KeepingLimits limits, LocalDate mixedOn,
        IReadOnlyList<Standing>? standings = null)
    {
        var earliest = Earliest((After(mixedOn, limits.WorkingFullDays), KeepingRule.SinceMixing));
        for (var i = 0; i < standings?.Count; i++)
        {
            var (since, container) = standings[i];
            if (container == WorkingContainer.FullBottle || After(since, limits.DaysIn(container)) is not { } end)
                continue;
            if (i + 1 < standings.Count && standings[i + 1].Since <= end)
                continue;
            if (earliest is null || end < earliest.Date)
                earliest = new(end, container.Rule());
        }

        return earliest;
    }

    private static LocalDate? Moved(LocalDate? date, ColdTime? cold) => date?.PlusDays(cold?.DaysWon(date.Value) ?? 0);

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
