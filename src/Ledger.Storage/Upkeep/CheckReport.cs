namespace Ledger.Storage;

/// <summary>What a check of the file found.</summary>
/// <param name="Entries">How many entries there are.</param>
/// <param name="Movements">How many movements there are.</param>
/// <param name="Problems">What is wrong, a sentence each.</param>
public sealed record CheckReport(long Entries, long Movements, IReadOnlyList<string> Problems)
{
    /// <summary>Whether nothing is wrong.</summary>
    public bool Ok => Problems.Count == 0;
}
