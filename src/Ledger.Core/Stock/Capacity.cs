using Ledger.Core.Measures;

namespace Ledger.Core.Stock;

/// <summary>
/// What a litre of a bath can take before it is exhausted: a setting of the user, always shown with where it comes
/// from.
/// </summary>
/// <param name="PerLitre">Area per litre of working solution, of conventional film.</param>
/// <param name="Basis">Where the figure comes from: maker's, handbook, strict, own…</param>
public sealed record Capacity(Area PerLitre, string Basis)
{
    /// <summary>What a bath of this volume can take, rounded down.</summary>
    public Area Of(Volume volume) => Area.FromHundredths(Share.Of(PerLitre.Hundredths, volume.Microlitres, 1_000_000));
}
