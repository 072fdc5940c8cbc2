using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;

namespace Ledger.Core.Notices;

/// <summary>
/// What needs the user about baths: ends that have come or are near, replenisher that is due, control strips out of
/// limits.
/// </summary>
internal static class BathNotices
{
    private const int NearlyFullPercent = 90;

    public static IEnumerable<Notice> Of(Holdings holdings) =>
        holdings.Baths.Select(bath => new BathReading(bath, holdings.AsOf))
            .SelectMany(reading => Of(reading, holdings));

    private static IEnumerable<Notice> Of(BathReading reading, Holdings holdings)
    {
        var (code, style) = (reading.Bath.Code, holdings.Settings.Style);
        if (reading.EndedBy is { } end)
        {
            yield return new(
                end == BathEnd.Age ? NoticeKind.BathExpired : NoticeKind.BathExhausted,
                Severity.Now, code, Ended(reading, end), Reason(reading, style),
                Step(reading.Bath, holdings), end == BathEnd.Age ? reading.GoodUntil!.Date : null);
            yield break;
        }

        if (reading.IsUnknown)
        {
            var (word, step) = BathReading.Unknown(reading.Bath);
            yield return new(
                NoticeKind.CannotBeSaid, Severity.Note, code, word,
                $"{reading.Bath.WorkedWeighted.ToText(style)} of film went through it", step, null);
        }

        if (reading.UsedPercent >= NearlyFullPercent)
            yield return Ending(reading, $"bath {code} is nearly exhausted", null, holdings);
        else if (reading.GoodUntil is { } good && good.DaysLeft(holdings.AsOf) <= holdings.Settings.WarnDays)
            yield return Ending(
                reading,
                good.DaysLeft(holdings.AsOf) is > 0 and var days
                    ? $"bath {code} expires in {Counted.Of(days, "day")}"
                    : $"bath {code} is good until today",
                good, holdings);
        foreach (var notice in Replenished(reading, style))
            yield return notice;
    }

    private static string Ended(BathReading reading, BathEnd end) => end == BathEnd.Age
        ? $"bath {reading.Bath.Code} expired "
            + $"{Counted.Of(reading.AgeDays
                - Period.DaysBetween(reading.Bath.MixedOn, reading.GoodUntil!.Date), "day")} ago"
        : $"bath {reading.Bath.Code} is {end.State()}";

    private static Notice Ending(BathReading reading, string text, GoodUntil? good, Holdings holdings) => new(
        NoticeKind.BathEnding, Severity.Soon, reading.Bath.Code, text, Reason(reading, holdings.Settings.Style),
        Step(reading.Bath, holdings), good?.Date);

    private static IEnumerable<Notice> Replenished(BathReading reading, MeasureStyle style)
    {
        var bath = reading.Bath;
        if (reading.Replenishment is { } replenished && replenished.Due > default(Volume))
            yield return new(
                NoticeKind.ReplenisherDue, Severity.Soon, bath.Code,
                $"bath {bath.Code}: {replenished.Due.ToText(style)} of replenisher due",
                $"{bath.Worked.ToText(style)} at {replenished.Per80SquareInches.ToText(style)} per "
                    + $"{Area.Unit80.ToText(style)}; {replenished.Added.ToText(style)} added of at most "
                    + $"{replenished.Ceiling.ToText(style)}",
                $"replenish it with {replenished.Due.ToText(style)} before the next session", null);
        if (bath.ControlStrips is [.., { IsWithinLimits: false } strip])
            yield return new(
                NoticeKind.ControlStripOut, Severity.Soon, bath.Code,
                $"bath {bath.Code}: the last control strip was out of "
                    + "limits", $"{Dates.Text(strip.Date)}: {strip.Result}",
                        "replenish it or mix a fresh one, then develop another strip", null);
    }

    /// <summary>
    /// The one step: a pair is rotated until its ceiling, then a fresh pair is mixed; a bath alone is replaced.
    /// </summary>
    private static string Step(Bath bath, Holdings holdings)
    {
        if ((holdings.IsSecond(bath) ? bath : holdings.SecondAfter(bath)) is not { } second)
            return $"discard it and mix a fresh one from {bath.Item}";
        return holdings.IsAtCeiling(second)
            ? $"{PairCeiling.FreshPair(second)}; it was rotated {second.Rotations} of "
                + $"{Counted.Of(holdings.Settings.RotationCeiling, "time")}"
            : "rotate the pair: discard the first bath, move the second up, mix a new second";
    }

    /// <summary>What ended a bath, or will: its age beside the area it has left, since either may come first.</summary>
    private static string Reason(BathReading reading, MeasureStyle style)
    {
        var ends = string.Concat(reading.Ends.Where(end => end.By is not (BathEnd.Age or BathEnd.Area))
            .Select(end => $"{end.Reason}; "));
        var added = reading.Replenishment is { } replenished && reading.EndedBy == BathEnd.Replenisher
            ? $"{replenished.Added.ToText(style)} added of at most {replenished.Ceiling.ToText(style)}; " : "";
        var age = ends + added + (reading.GoodUntil is { } good
            ? $"{Counted.Of(reading.AgeDays, "day")} old, good until {Dates.Text(good.Date)} (limited by "
                + $"{good.Rule.Name()})"
            : $"{Counted.Of(reading.AgeDays, "day")} old");
        return reading.Remaining is { } left
            ? $"{age}; {left.ToText(style)} of its {reading.Bath.TotalCapacity!.Value.ToText(style)} capacity left ("
                + $"{reading.Bath.Capacity!.Basis})"
            : age;
    }
}
