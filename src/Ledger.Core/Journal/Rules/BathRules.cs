using Ledger.Core.Baths;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>A bath is mixed: the concentrate leaves its bottle, the bath begins to age.</summary>
internal static class BathRules
{
    public static void Post(BathMixing mixing, Draft draft)
    {
        var code = Require.Name(mixing.Bath, "a bath");
        if (draft.Holdings.Bath(code) is not null || draft.Past.HasBath(code))
            throw new RefusedException(RefusalKind.AlreadyThere,
                $"there was a bath {code} already; give this one a name of its own");
        var item = draft.Item(mixing.Item);
        Require.That(item.Kind == ItemKind.Chemical,
            $"{item.Code} is not a chemical, so a bath cannot be mixed from it; name a chemical");
        Require.That(mixing.WorkingVolume > default(Volume),
            "the working volume must be more than nothing; say it, such as 1500ml");
        var dilution = mixing.Dilution ?? item.Dilution
            ?? throw new RefusedException(RefusalKind.NotAccepted,
                $"{item.Code} has no usual dilution; say it, such as 1+4");
        var amount = Amount(mixing, item, dilution);
        var first = mixing.PairedWith is { } before ? Pair(before, mixing, draft) : null;

        var bath = new Bath
        {
            Place = draft.NewPlace(),
            Code = code,
            Item = item.Code,
            Role = item.Role,
            Material = mixing.Material,
            WorkingVolume = mixing.WorkingVolume,
            Dilution = dilution,
            MixedOn = mixing.Date,
            Capacity = mixing.Capacity ?? item.Capacity,
            Keeping = item.Keeping,
            PairedWith = first?.Code,
            Rotations = first is { PairedWith: not null } ? first.Rotations + 1 : 0,
        };
        Require.That(bath.Capacity is null or { PerLitre.Hundredths: > 0 },
            $"the capacity of {code} must be more than nothing; leave it out where it is not known");
        Require.That(
            bath.Capacity is null || !string.IsNullOrWhiteSpace(bath.Capacity.Basis),
            $"the capacity of {code} needs its basis: maker's, handbook, strict or own");
        var ceiling = draft.Holdings.Settings.RotationCeiling;
        if (bath.Rotations > ceiling)
            draft.Remark(
                $"this is rotation {bath.Rotations} of the pair; the ceiling is {ceiling}: mix a fresh pair next time");
        draft.Add(new BathMixed(bath));
        if (mixing.StandsIn != Keeping.WorkingContainer.FullBottle)
            draft.Add(new BathStands(bath.Place, mixing.StandsIn));
        draft.Take(item, amount, mixing.Container, bath.Place, mixing.BooksDifference);
        foreach (var part in item.Unit == Unit.Millilitre
            ? OtherPart.Beside(item, dilution, Volume.FromMicrolitres(amount.Base))
            : [])
            if (part.Item is { } other)
                draft.Take(draft.Item(other), Quantity.Of(part.Measured), null, bath.Place, mixing.BooksDifference);
        if (OtherPart.Unknown(item, dilution) is { } unknown)
            draft.Remark(unknown);
        var style = draft.Style;
        draft.Summary =
            $"mixed bath {code}: {amount.ToText(style)} of {item.Code} for {bath.WorkingVolume.ToText(style)}, "
                + $"{dilution}"
                + (first is null ? "" : $", second after {first.Code}");
    }

    /// <summary>
    /// What is drawn: as measured, or as the dilution asks. A powder has no dilution by volume and must be measured.
    /// </summary>
    private static Quantity Amount(BathMixing mixing, Item item, Dilution dilution)
    {
        if (mixing.Amount is { } measured)
            return measured;
        Require.That(item.Unit == Unit.Millilitre,
            $"{item.Code} is kept in {item.Unit.Plural()}; say how much of it was used");
        return Quantity.Of(dilution.SourceIn(mixing.WorkingVolume));
    }

    private static Bath Pair(string code, BathMixing mixing, Draft draft)
    {
        var first = draft.Bath(code);
        Require.That(
            draft.Holdings.SecondAfter(first) is null,
            $"bath {first.Code} has a second bath already: {draft.Holdings.SecondAfter(first)?.Code}; rotate the pair, "
                + "or name another bath");
        if (first.Material != mixing.Material)
            throw new RefusedException(
                RefusalKind.WrongMaterial,
                $"bath {first.Code} is for {first.Material.Name()}; film and paper never share a pair; "
                + "name a bath for the same material");
        return first;
    }
}
