using Ledger.Core.Measures;

namespace Ledger.Core.Sessions;

/// <summary>
/// The developer that a batch needs: the larger of what the dilution gives and the least that its area of film asks
/// for.
/// </summary>
/// <param name="ByDilution">The concentrate that the dilution puts into the tray.</param>
/// <param name="ByArea">The least concentrate for the area: the item's minimum per 80 sq in × area, rounded up.</param>
/// <param name="WorkingVolume">The working solution in the tray.</param>
public sealed record DeveloperNeed(Volume ByDilution, Volume ByArea, Volume WorkingVolume)
{
    /// <summary>What must be measured out.</summary>
    public Volume Concentrate => ByDilution > ByArea ? ByDilution : ByArea;

    /// <summary>Whether the dilution alone gives the film enough.</summary>
    public bool IsEnough => ByDilution >= ByArea;

    /// <summary>Reads the need of a batch.</summary>
    /// <param name="dilution">The dilution of the developer.</param>
    /// <param name="working">The working solution in the tray.</param>
    /// <param name="minimumPer80">The least concentrate per 80 sq in, if the user has set one.</param>
    /// <param name="area">The film in the batch.</param>
    public static DeveloperNeed Of(Dilution dilution, Volume working, Volume? minimumPer80, Area area) => new(
        dilution.SourceIn(working),
        Volume.FromMicrolitres(Share.UpTo((minimumPer80 ?? default).Microlitres, area.Hundredths,
            Area.Unit80.Hundredths)),
        working);

    /// <summary>
    /// The working volume at which the dilution would give enough: the first cure of a thin dilution.
    /// </summary>
    public Volume CureVolume(Dilution dilution) => dilution.TotalFrom(ByArea);
}
