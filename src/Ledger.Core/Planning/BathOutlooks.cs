using Ledger.Core.Baths;
using Ledger.Core.Costing;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;
using NodaTime;

namespace Ledger.Core.Planning;

/// <summary>Looks at the baths that a session would go through: do they fit, and if not, is it time to rotate or to mix a fresh one?</summary>
internal sealed class BathOutlooks(Holdings holdings, LocalDate day)
{
    /// <summary>
    /// Every bath that is used again, the fixer first: the one that counts the work, then the second bath of its pair.
    /// </summary>
    /// <param name="process">The process.</param>
    /// <param name="named">The baths the user named, if any.</param>
    /// <param name="area">The area that will pass through.</param>
    /// <param name="weighted">The same, weighted, which a fixer counts.</param>
    public IEnumerable<BathOutlook> Of(Process process, string? named, Area area, Area weighted)
    {
        foreach (var wanted in new SessionBaths(holdings, day).Of(process, named))
        {
            if (wanted.Bath is not { } bath)
            {
                yield return wanted.IsOpen ? Open(wanted) : Missing(process, wanted.Item);
                continue;
            }

            yield return First(bath, bath.LoadOf(area, weighted));
            if (holdings.SecondAfter(bath) is { } second)
                yield return Second(second);
        }
    }

    private static BathOutlook Open(SessionBath wanted) => new(
        wanted.Item, null, IsFirst: true, Area.Zero, Area.Zero, Fits: false, Money.Zero, $"several baths of {wanted.Item} can be used",
        $"name {wanted.Choices}")
    {
        Choices = wanted.Choices,
    };

    private BathOutlook Missing(Process process, string item)
    {
        var step = process.Reused.First(known => item.Equals(known.Item, StringComparison.OrdinalIgnoreCase));
        var dilution = step.Dilution ?? holdings.Item(item)?.Dilution;
        var volume = step.WorkingVolume is { } working ? working.ToText(holdings.Settings.Style) : "the working volume";
        return new(
            item, null, IsFirst: true, Area.Zero, Area.Zero, Fits: false, Money.Zero, $"no bath of {item} is in use",
            $"mix {volume} of {item}{(dilution is null ? "" : $" {dilution}")}")
        {
            ToMix = step.WorkingVolume is { } toMix ? ToMix(item, dilution, toMix) : [],
        };
    }

    private BathOutlook First(Bath bath, Area load)
    {
        var reading = new BathReading(bath, day);
        var after = bath.WorkedWeighted + load;
        var share = new BathShare(bath.Code, bath.Value, bath.TotalCapacity ?? Area.Zero);
        var word = Trouble(reading, after);
        if (word.Length == 0 && reading.IsUnknown)
        {
            var (unknown, step) = BathReading.Unknown(bath);
            return new(bath.Item, bath, IsFirst: true, bath.WorkedWeighted, after, Fits: null, Money.Zero, unknown, step);
        }

        return new(
            bath.Item, bath, IsFirst: true, bath.WorkedWeighted, after, word.Length == 0,
            share.UsedUpBy(after) - share.UsedUpBy(bath.WorkedWeighted), word, word.Length == 0 ? "" : Proposal(bath))
        {
            ToMix = word.Length == 0 ? [] : ToMix(bath, IsAtCeiling(bath) ? 2 : 1),
        };
    }

    private IReadOnlyList<(string Item, Quantity Amount)> ToMix(Bath bath, int baths) =>
        [.. ToMix(bath.Item, bath.Dilution, bath.WorkingVolume).Select(mix => (mix.Item, mix.Amount with { Base = mix.Amount.Base * baths }))];

    /// <summary>What goes into a bath of a liquid, its other parts among it; none for a powder, which must be weighed out.</summary>
    private IReadOnlyList<(string Item, Quantity Amount)> ToMix(string code, Dilution? dilution, Volume volume)
    {
        if (dilution is null || holdings.Item(code) is not { Unit: Unit.Millilitre } item)
            return [];
        var first = dilution.SourceIn(volume);
        return
        [
            (item.Code, Quantity.Of(first)),
            .. OtherPart.Beside(item, dilution, first).Where(part => part.Item is not null).Select(part => (part.Item!, Quantity.Of(part.Measured))),
        ];
    }

    private bool IsAtCeiling(Bath bath) => holdings.SecondAfter(bath) is { } second && holdings.IsAtCeiling(second);

    private string Trouble(BathReading reading, Area after)
    {
        var (bath, style) = (reading.Bath, holdings.Settings.Style);
        if (reading.EndedBy is { } end)
            return end == BathEnd.Age && reading.GoodUntil is { } good
                ? $"{bath.Code} was good until {Dates.Text(good.Date)} ({reading.AgeDays} days old)"
                : $"{bath.Code} is {end.State()}";
        return bath.TotalCapacity is { } capacity && after > capacity
            ? $"{bath.Code} would be at {after.ToText(style)} of {capacity.ToText(style)} ({bath.Capacity!.Basis})"
            : "";
    }

    private string Proposal(Bath bath)
    {
        var concentrate = Quantity.Of(bath.Dilution.SourceIn(bath.WorkingVolume)).ToText(holdings.Settings.Style);
        var mix = holdings.Item(bath.Item)?.Unit == Unit.Millilitre
            ? $"mix {bath.WorkingVolume.ToText(holdings.Settings.Style)} of {bath.Item} {bath.Dilution} ({concentrate})"
            : $"mix {bath.WorkingVolume.ToText(holdings.Settings.Style)} of {bath.Item}";
        if (holdings.SecondAfter(bath) is not { } second)
            return $"discard {bath.Code} and {mix}";
        var ceiling = holdings.Settings.RotationCeiling;
        return IsAtCeiling(bath)
            ? $"the pair was rotated {second.Rotations} of {ceiling} times; discard both baths and mix a fresh pair: {mix}, twice"
            : $"rotate the pair: discard {bath.Code}, move {second.Code} up, and {mix} as the new second bath";
    }

    /// <summary>The second bath takes the film too, but its capacity is counted only once it stands first; its age counts at once.</summary>
    private BathOutlook Second(Bath bath)
    {
        var reading = new BathReading(bath, day);
        var word = reading.EndedBy is null ? "" : Trouble(reading, bath.WorkedWeighted);
        return new(
            bath.Item, bath, IsFirst: false, bath.WorkedWeighted, bath.WorkedWeighted, word.Length == 0, Money.Zero, word,
            word.Length == 0 ? "" : $"mix {bath.WorkingVolume.ToText(holdings.Settings.Style)} of {bath.Item} {bath.Dilution} in its place")
        {
            ToMix = word.Length == 0 ? [] : ToMix(bath, 1),
        };
    }
}
