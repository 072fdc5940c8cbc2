using Ledger.Core.Baths;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// An area passes through a bath; the second one of a pair takes it too, but its capacity is not counted yet.
/// </summary>
internal static class BathPass
{
    public static void Through(Bath bath, Area area, Area weighted, Draft draft)
    {
        Require.That(!draft.Holdings.IsSecond(bath),
            $"bath {bath.Code} is the second bath of a pair; name the first, {bath.PairedWith}");
        var load = bath.LoadOf(area, weighted);
        var reading = new BathReading(bath, draft.Date);
        if (reading.IsUnknown)
            draft.Remark($"{BathReading.Unknown(bath).Word}; {BathReading.Unknown(bath).Step}");
        if (reading.Fits(load) == false)
            draft.Remark(
                $"bath {bath.Code} would be at {(bath.WorkedWeighted + load).ToText(draft.Style)} "
                + $"of {bath.TotalCapacity!.Value.ToText(draft.Style)} ({bath.Capacity!.Basis}): "
                + $"{Before(bath, draft.Holdings)} first");
        if (reading.GoodUntil is { } good && good.IsPast(draft.Date))
            draft.Remark(
                $"bath {bath.Code} was good until {Dates.Text(good.Date)} and is {Counted.Of(reading.AgeDays, "day")} "
                    + "old");
        if (reading.Replenishment is { IsAtCeiling: true } full)
            draft.Remark(
                $"bath {bath.Code} has had {full.Added.ToText(draft.Style)} of replenisher, its ceiling: mix a fresh "
                    + "one first");
        if (bath.ControlStrips is [.., { IsWithinLimits: false } strip])
            draft.Remark(
                $"the last control strip in {bath.Code}, {Dates.Text(strip.Date)}, was out of limits: {strip.Result}");
        foreach (var end in reading.Ends.Where(end => end.By is BathEnd.Test or BathEnd.Sight))
            draft.Remark($"bath {bath.Code} is {end.By.State()} since {Dates.Text(end.On)}: {end.Reason}");
        if (reading.Replenishment is { } replenished)
            draft.Remark(
                $"replenisher due in {bath.Code} after this: "
                + (replenished.Due + ReplenishmentReading.For(area, replenished.Per80SquareInches)).ToText(
                    draft.Style));
        draft.Add(new BathWorked(bath.Place, IsFirst: true, area, load));
        if (draft.Holdings.SecondAfter(bath) is { } second && second.MixedOn <= draft.Date)
            draft.Add(new BathWorked(second.Place, IsFirst: false, area, load));
    }

    /// <summary>What gives capacity for more.</summary>
    private static string Before(Bath bath, Holdings holdings) => holdings.SecondAfter(bath) switch
    {
        null => "mix a fresh one",
        var second when holdings.IsAtCeiling(second) => PairCeiling.FreshPair(second),
        _ => "rotate the pair",
    };
}
