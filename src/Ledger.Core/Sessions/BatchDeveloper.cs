using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Sessions;

/// <summary>What is measured into the developer tray for one batch.</summary>
/// <param name="Item">The developer.</param>
/// <param name="Dilution">How it is diluted; null where the process says an amount.</param>
/// <param name="Need">The exact figures.</param>
/// <param name="Measured">What the user's graduate can measure of it; never less than the film asks for.</param>
/// <param name="OtherParts">Parts B, C… of a developer in several parts, as the graduate can measure them.</param>
/// <param name="SheetsForDilution">The most sheets for which the dilution alone would be enough.</param>
public sealed record BatchDeveloper(
    Item Item, Dilution? Dilution, DeveloperNeed Need, Volume Measured, IReadOnlyList<OtherPart> OtherParts,
    int SheetsForDilution)
{
    /// <summary>What fills the tray up to the working volume.</summary>
    public Volume Water => Volume.FromMicrolitres(Math.Max(
        0, Need.WorkingVolume.Microlitres - Measured.Microlitres - OtherParts.Sum(part => part.Measured.Microlitres)));

    /// <summary>Reads what a batch takes; null when the step says neither a volume nor an amount of liquid.</summary>
    /// <param name="step">The developing step.</param>
    /// <param name="developer">Its item.</param>
    /// <param name="film">The film.</param>
    /// <param name="sheets">How many sheets of it.</param>
    /// <param name="graduate">The finest step of the user's graduate; null to measure exactly.</param>
    public static BatchDeveloper? Of(ProcessStep step, Item developer, Item film, int sheets, Volume? graduate)
    {
        if (Needed(step, developer, film, sheets) is not { } need)
            return null;
        var dilution = step.Amount is null ? step.Dilution ?? developer.Dilution : null;
        var measured = Measure(need.Concentrate, need.ByArea, graduate);
        return new(
            developer, dilution, need, measured,
            [.. OtherPart.Beside(developer, step.Dilution ?? developer.Dilution, measured)
                .Select(part => part with { Measured = Measure(part.Exact, default, graduate) })],
            Enough(need, developer, film));
    }

    /// <summary>
    /// How the concentrate that the film asks for can be reached, in a sentence; null when the dilution gives enough.
    /// </summary>
    public string? Cure(MeasureStyle style)
    {
        if (Need.IsEnough)
            return null;
        var volume = Dilution is null ? "" : $"make {Need.CureVolume(Dilution).ToText(style)} of {Dilution}, or ";
        var fewer = SheetsForDilution > 0 ? $"develop {SheetsForDilution} at a time, or " : "";
        return $"{volume}{fewer}measure {Measured.ToText(style)} into {Need.WorkingVolume.ToText(style)}, which is "
            + "stronger than the dilution";
    }

    private static DeveloperNeed? Needed(ProcessStep step, Item developer, Item film, int sheets)
    {
        var (least, area) = (developer.MinimumPer80SquareInches, film.AreaOf(sheets));
        var working = step.WorkingVolumeFor(film.Format);
        if (step.Amount is { Unit: Unit.Millilitre } amount)
        {
            var each = Volume.FromMicrolitres(step.Per switch
            {
                StepPer.Sheet => amount.Base * sheets,
                StepPer.Litre => ProcessStep.PerLitre(amount.Base, working),
                _ => amount.Base,
            });
            return DeveloperNeed.Of(Dilution.Undiluted, each, least, area) with { WorkingVolume = working ?? each };
        }

        return step.Amount is null && (step.Dilution ?? developer.Dilution) is { } dilution && working is { } volume
            ? DeveloperNeed.Of(dilution, volume, least, area)
            : null;
    }

    private static int Enough(DeveloperNeed need, Item developer, Item film) =>
        developer.MinimumPer80SquareInches is { Microlitres: > 0 } least
            ? (int)Math.Min(1000, Share.Of(need.ByDilution.Microlitres, Area.Unit80.Hundredths, least.Microlitres)
                / film.AreaOf(1).Hundredths)
            : 1000;

    /// <summary>To the nearest mark of the graduate, but up where the nearest would be too little.</summary>
    private static Volume Measure(Volume exact, Volume least, Volume? graduate)
    {
        if (graduate is not { } step)
            return exact;
        var nearest = exact.RoundedTo(step);
        return nearest >= least && nearest > default(Volume) ? nearest
            : Volume.FromMicrolitres(Share.UpTo(exact.Microlitres, 1, step.Microlitres) * step.Microlitres);
    }
}
