namespace Ledger.Storage;

/// <summary>What a check of the file found.</summary>
/// <param name="Entries">How many entries there are.</param>
/// <param name="Movements">How many movements there are.</param>
/// <param name="Problems">What is wrong, a sentence each.</param>
public sealed record CheckReport(long Entries, long Movements, IReadOnlyList<string> Problems)
{
    /// <summary>Whether nothing is wrong.</summary>
    public bool Ok => Problems.Count == 0;

    /// <summary>What was looked at, in words: "1 entry", then "3 movements".</summary>
    /// <param name="between">What stands between the two.</param>
    public string Counted(string between) =>
        $"{(Entries == 1 ? "1 entry" : $"{Entries} entries")}{between}{(Movements == 1 ? "1 movement" : $"{Movements} movements")}";
}
