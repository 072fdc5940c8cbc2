using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Film;

/// <summary>A sheet on its way from the box to the session: in a holder, or in the box for exposed sheets.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Lot">The delivery it came with.</param>
/// <param name="Cost">What it cost.</param>
/// <param name="Box">The box it came out of.</param>
/// <param name="BoxCode">What is written on that box.</param>
/// <param name="Side">The holder side it was loaded into.</param>
/// <param name="SideCode">That side's name.</param>
/// <param name="LoadedOn">The day of loading.</param>
/// <param name="At">Where it is now.</param>
/// <param name="Since">The day it came there.</param>
/// <param name="Exposure">Its exposure; null while it has none.</param>
public sealed record Sheet(
    SheetId Id, Lot Lot, Money Cost, PlaceId Box, string BoxCode, PlaceId Side, string SideCode,
    LocalDate LoadedOn, PlaceId At, LocalDate Since, Exposure? Exposure)
{
    /// <summary>The film's code.</summary>
    public string Item => Lot.Item;

    /// <summary>The last day on which something happened to it; nothing can be recorded of it before.</summary>
    public LocalDate LastDay => Exposure is { } exposure && exposure.Date > Since ? exposure.Date : Since;

    /// <summary>
    /// What tells its film from another delivery of the same: the emulsion number, the box it came out of, the user's
    /// exposure index.
    /// </summary>
    public IEnumerable<string> Marks
    {
        get
        {
            if (Lot.Batch.Length > 0)
                yield return Lot.NumberText(ItemKind.Film);
            yield return $"from {BoxCode}";
            if (Lot.IndexText is { } index)
                yield return index;
        }
    }
}
