using Ledger.Core.Baths;

namespace Ledger.Core.Journal;

/// <summary>A pair of baths is rotated so often, and then a fresh pair is mixed.</summary>
public static class PairCeiling
{
    /// <summary>Whether the pair was rotated as often as the setting rotation-ceiling allows.</summary>
    public static bool IsAtCeiling(this Holdings holdings, Bath second) =>
        second.Rotations >= holdings.Settings.RotationCeiling;

    /// <summary>What is done then.</summary>
    public static string FreshPair(Bath second) =>
        $"discard {second.PairedWith} and {second.Code} and mix a fresh pair";
}
