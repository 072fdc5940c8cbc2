using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;

namespace Ledger.Core.Notices;

/// <summary>What needs the user about baths: ends that have come or are near, replenisher that is due, control strips out of limits.</summary>
internal static class BathNotices
{
    private const int NearlyFullPercent = 90;

    public static IEnumerable<Notice> Of(Holdings holdings) =>
        holdings.Baths.Select(bath => new BathReading(bath, holdings.AsOf)).SelectMany(reading => Of(reading, holdings));

    private static IEnumerable<Notice> Of(BathReading reading, Holdings holdings)
    {
        var (code, style) = (reading.Bath.Code, holdings.Settings.Style);
        if (reading.EndedBy is { } end)
        {
            yield return new(
                end == BathEnd.Age ? NoticeKind.BathExpired : NoticeKind.BathExhausted,
                Severity.Now, code, $"bath {code} has ended by {end.Name()}", Reason(reading, style),
                Step(reading.Bath, holdings), end == BathEnd.Age ? reading.GoodUntil!.Date : null);
            yield break;
        }

        if (reading.IsUnknown)
        {
            var (word, step) = BathReading.Unknown(reading.Bath);
            yield return new(NoticeKind.CannotBeSaid, Severity.Note, code, word, $"it has taken {reading.Bath.WorkedWeighted.ToText(style)}", step, null);
        }

        if (reading.UsedPercent >= NearlyFullPercent)
            yield return Ending(reading, $"bath {code} is nearly full", null, holdings);
        else if (reading.GoodUntil is { } good && good.DaysLeft(holdings.AsOf) <= holdings.Settings.WarnDays)
            yield return Ending(reading, $"bath {code} ends in {Days(good.DaysLeft(holdings.AsOf))}", good, holdings);
        foreach (var notice in Replenished(reading, style))
            yield return notice;
    }

    private static Notice Ending(BathReading reading, string text, GoodUntil? good, Holdings holdings) => new(
        NoticeKind.BathEnding, Severity.Soon, reading.Bath.Code, text, Reason(reading, holdings.Settings.Style),
        Step(reading.Bath, holdings), good?.Date);

    private static IEnumerable<Notice> Replenished(BathReading reading, MeasureStyle style)
    {
        var bath = reading.Bath;
        if (reading.Replenishment is { } replenished && replenished.Due > default(Volume))
            yield return new(
                NoticeKind.ReplenisherDue, Severity.Soon, bath.Code, $"bath {bath.Code}: {replenished.Due.ToText(style)} of replenisher due",
                $"{bath.Worked.ToText(style)} at {replenished.Per80SquareInches.ToText(style)} per {Area.Unit80.ToText(style)}; "
                + $"{replenished.Added.ToText(style)} added of at most {replenished.Ceiling.ToText(style)}",
                $"top it up with {replenished.Due.ToText(style)} before the next session", null);
        if (bath.ControlStrips is [.., { IsWithinLimits: false } strip])
            yield return new(
                NoticeKind.ControlStripOut, Severity.Soon, bath.Code, $"bath {bath.Code}: the last control strip was out of limits",
                $"{Dates.Text(strip.Date)}: {strip.Result}", "top it up or mix it anew, then develop another strip", null);
    }

    /// <summary>The one step: a pair is rotated until its ceiling, then both are mixed anew; a bath alone has no pair to speak of.</summary>
    private static string Step(Bath bath, Holdings holdings)
    {
        if ((holdings.IsSecond(bath) ? bath : holdings.SecondAfter(bath)) is not { } second)
            return $"pour it out and mix a new one from {bath.Item}";
        return holdings.IsAtCeiling(second)
            ? $"{PairCeiling.MixAnew(second)}: the pair is at rotation {second.Rotations} of at most {holdings.Settings.RotationCeiling}"
            : "pour out the first bath, move the second up, mix a new one";
    }

    /// <summary>What has ended a bath, or will: its age beside the area it has left, since either may come first.</summary>
    private static string Reason(BathReading reading, MeasureStyle style)
    {
        var ends = string.Concat(reading.Ends.Where(end => end.By is not (BathEnd.Age or BathEnd.Area)).Select(end => $"{end.Reason}; "));
        var added = reading.Replenishment is { } replenished && reading.EndedBy == BathEnd.Replenisher
            ? $"{replenished.Added.ToText(style)} added of at most {replenished.Ceiling.ToText(style)}; " : "";
        var age = ends + added + (reading.GoodUntil is { } good
            ? $"{reading.AgeDays} days old, good until {Dates.Text(good.Date)} ({good.Rule.Name()})"
            : $"{reading.AgeDays} days old");
        return reading.Remaining is { } left
            ? $"{age}; {left.ToText(style)} of {reading.Bath.TotalCapacity!.Value.ToText(style)} left ({reading.Bath.Capacity!.Basis})"
            : age;
    }

    private static string Days(int days) => days == 1 ? "1 day" : $"{days} days";
}
