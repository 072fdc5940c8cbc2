using Ledger.Core.Baths;

namespace Ledger.Core.Journal;

/// <summary>A pair of baths is rotated so often, and then mixed anew.</summary>
public static class PairCeiling
{
    /// <summary>Whether the pair was rotated as often as the setting rotation-ceiling allows.</summary>
    public static bool IsAtCeiling(this Holdings holdings, Bath second) => second.Rotations >= holdings.Settings.RotationCeiling;

    /// <summary>What is done then.</summary>
    public static string MixAnew(Bath second) => $"pour out {second.PairedWith} and {second.Code} and mix both anew";
}
