namespace Ledger.Storage.Deriving;

/// <summary>What came of joining two ledgers.</summary>
/// <param name="Added">How many entries were added.</param>
/// <param name="Known">How many stood in both.</param>
/// <param name="Refusal">Why nothing was joined; null when it was.</param>
public sealed record JoinOutcome(int Added, int Known, string? Refusal);
