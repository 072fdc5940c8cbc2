using Ledger.Core.Baths;
using Ledger.Core.Costing;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Planning;

/// <summary>
/// Looks at the baths that a session would go through: do they fit, and if not, is it time to rotate or to mix a fresh
/// one?
/// </summary>
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
            else if (Steps(process, wanted.Item) > 1)
                yield return NoSecond(bath);
        }
    }

    private static int Steps(Process process, string item) =>
        process.Reused.Count(step => item.Equals(step.Item, StringComparison.OrdinalIgnoreCase));

    /// <summary>The process goes through two baths of the item, and only one stands there.</summary>
    private BathOutlook NoSecond(Bath first) => new(
        first.Item, null, IsFirst: false, Area.Zero, Area.Zero, Fits: false, Money.Zero,
        $"no second bath of {first.Item} is in "
            + "use", $"mix {Fresh(first, first.WorkingVolume)} as the second after {first.Code}")
    {
        Cure = BathCure.Mix, ToMix = ToMix(first, 1),
    };

    private static BathOutlook Open(SessionBath wanted) => new(
        wanted.Item, null, IsFirst: true, Area.Zero, Area.Zero, Fits: false, Money.Zero,
        $"several baths of {wanted.Item} can be used", $"name {wanted.Choices}")
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
            Cure = BathCure.Mix,
            ToMix = step.WorkingVolume is { } toMix ? Times(ToMix(item, dilution, toMix), Steps(process, item)) : [],
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
            return new(bath.Item, bath, IsFirst: true, bath.WorkedWeighted, after, Fits: null,
                Money.Zero, unknown, step);
        }

        var cure = word.Length == 0 ? BathCure.None : Cure(bath, load);
        return new(
            bath.Item, bath, IsFirst: true, bath.WorkedWeighted, after, word.Length == 0,
            share.UsedUpBy(after) - share.UsedUpBy(bath.WorkedWeighted), word, Proposal(bath, load, cure))
        {
            Cure = cure,
            ToMix = cure switch
            {
                BathCure.MixPair => ToMix(bath, 2),
                BathCure.Mix or BathCure.Rotate => ToMix(bath, 1),
                _ => [],
            },
        };
    }

    /// <summary>What would help: a fresh bath of the same size only where it takes the whole session.</summary>
    private BathCure Cure(Bath bath, Area load) => bath.TotalCapacity is { } bathful && load > bathful ? BathCure.Split
        : holdings.SecondAfter(bath) is not { } second ? BathCure.Mix
        : holdings.IsAtCeiling(second) || new BathReading(second, day).IsUnusable ? BathCure.MixPair
        : BathCure.Rotate;

    private IReadOnlyList<(string Item, Quantity Amount)> ToMix(Bath bath, int baths) =>
        Times(ToMix(bath.Item, bath.Dilution, bath.WorkingVolume), baths);

    private static IReadOnlyList<(string Item, Quantity Amount)> Times(
        IEnumerable<(string Item, Quantity Amount)> mixes, int baths) =>
        [.. mixes.Select(mix => (mix.Item, mix.Amount with { Base = mix.Amount.Base * baths }))];

    /// <summary>
    /// What goes into a bath of a liquid, its other parts among it; none for a powder, which must be weighed out.
    /// </summary>
    private IReadOnlyList<(string Item, Quantity Amount)> ToMix(string code, Dilution? dilution, Volume volume)
    {
        if (dilution is null || holdings.Item(code) is not { Unit: Unit.Millilitre } item)
            return [];
        var first = dilution.SourceIn(volume);
        return
        [
            (item.Code, Quantity.Of(first)),
            .. OtherPart.Beside(item, dilution, first).Where(part => part.Item is not null)
                .Select(part => (part.Item!, Quantity.Of(part.Measured))),
        ];
    }

    private string Trouble(BathReading reading, Area after)
    {
        var (bath, style) = (reading.Bath, holdings.Settings.Style);
        if (reading.EndedBy is { } end)
            return end == BathEnd.Age && reading.GoodUntil is { } good
                ? $"{bath.Code} was good until {Dates.Text(good.Date)} ({Counted.Of(reading.AgeDays, "day")} old)"
                : $"{bath.Code} is {end.State()}";
        return bath.TotalCapacity is { } capacity && after > capacity
            ? $"{bath.Code} would be at {after.ToText(style)} of {capacity.ToText(style)} ({bath.Capacity!.Basis})"
            : "";
    }

    private string Proposal(Bath bath, Area load, BathCure cure)
    {
        var (style, second) = (holdings.Settings.Style, holdings.SecondAfter(bath));
        var fresh = Fresh(bath, bath.WorkingVolume);
        return cure switch
        {
            BathCure.None => "",
            BathCure.Mix => $"discard {bath.Code} and mix {fresh}",
            BathCure.Rotate =>
                $"rotate the pair: discard {bath.Code}, move {second!.Code} up, and mix {fresh} as the new second bath",
            BathCure.MixPair => (holdings.IsAtCeiling(second!)
                ? $"the pair was rotated {second!.Rotations} of {Counted.Of(holdings.Settings.RotationCeiling, "time")}"
                : $"{second!.Code} cannot be used either")
                + $"; discard both baths and mix a fresh pair: mix {fresh}, twice",
            _ => $"a fresh {(second is null ? "bath" : "pair")} of that size takes "
                + $"{bath.TotalCapacity!.Value.ToText(style)}: split the session into "
                + $"{Share.UpTo(load.Hundredths, 1, bath.TotalCapacity.Value.Hundredths)}, or mix "
                + $"{(second is null ? "a larger bath" : "a larger pair")}, {Fresh(bath, Larger(bath, load))}"
                + $"{(second is null ? "" : " each")}"
                + Other(bath, load),
        };
    }

    /// <summary>The volume of a bath that takes the whole session, up to the next 100 ml.</summary>
    private static Volume Larger(Bath bath, Area load) => Volume.FromMillilitres(
        Share.UpTo(load.Hundredths, 10, bath.Capacity!.PerLitre.Hundredths) * 100m);

    private string Fresh(Bath bath, Volume volume)
    {
        var style = holdings.Settings.Style;
        return holdings.Item(bath.Item)?.Unit == Unit.Millilitre
            ? $"{volume.ToText(style)} of {bath.Item} {bath.Dilution} ("
                + $"{Quantity.Of(bath.Dilution.SourceIn(volume)).ToText(style)})"
            : $"{volume.ToText(style)} of {bath.Item}";
    }

    /// <summary>Another bath in use that takes part of the session.</summary>
    private string Other(Bath bath, Area load) => holdings.WorkingBaths
        .Where(other => other.Material == bath.Material && other.Place != bath.Place && !holdings.IsSecond(other)
            && other.MixedOn <= day
            && other.Item.Equals(bath.Item, StringComparison.OrdinalIgnoreCase))
        .Select(other => new BathReading(other, day))
        .Where(reading => !reading.IsUnusable && reading.Remaining > Area.Zero)
        .Select(
            reading =>
                $"; or develop what {reading.Bath.Code} still takes, "
                    + $"{reading.Remaining!.Value.ToText(holdings.Settings.Style)}, "
                    + "in a session of its own")
        .FirstOrDefault() ?? "";

    /// <summary>
    /// The second bath takes the film too, but its capacity is counted only once it stands first; its age counts at
    /// once.
    /// </summary>
    private BathOutlook Second(Bath bath)
    {
        var reading = new BathReading(bath, day);
        var word = reading.EndedBy is null ? "" : Trouble(reading, bath.WorkedWeighted);
        return new(
            bath.Item, bath, IsFirst: false, bath.WorkedWeighted, bath.WorkedWeighted, word.Length == 0,
            Money.Zero, word,
            word.Length == 0 ? "" : $"discard {bath.Code} and mix {Fresh(bath, bath.WorkingVolume)} in its place")
        {
            Cure = word.Length == 0 ? BathCure.None : BathCure.Mix, ToMix = word.Length == 0 ? [] : ToMix(bath, 1),
        };
    }
}
