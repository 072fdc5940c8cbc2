namespace Ledger.Storage;

/// <summary>What a check of the file found.</summary>
/// <param name="Entries">How many entries there are.</param>
/// <param name="Movements">How many movements there are.</param>
/// <param name="Problems">What is wrong, a sentence each.</param>
public sealed record CheckReport(long Entries, long Movements, IReadOnlyList<string> Problems)
{
    /// <summary>
    /// Those problems that <see cref="LedgerFile.Mend"/> mends: what is wrong there follows from what was recorded.
    /// </summary>
    public IReadOnlyList<string> Mendable { get; init; } = [];

    /// <summary>
    /// What is told in other words than this version tells it, a sentence each; mending writes it in these.
    /// </summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>What is not wrong, but may be other than it looks, a sentence each.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>Whether nothing is wrong.</summary>
    public bool Ok => Problems.Count == 0;

    /// <summary>What was looked at, in words: "1 entry", then "3 movements".</summary>
    /// <param name="between">What stands between the two.</param>
    public string Counted(string between) =>
        $"{Core.Measures.Counted.Of(Entries, "entry")}{between}{Core.Measures.Counted.Of(Movements, "movement")}";
}

/// <summary>What came of mending.</summary>
/// <param name="Copy">The copy of the file as it was before; null when there was nothing to mend.</param>
/// <param name="Mended">What was mended, a sentence each.</param>
/// <param name="After">What a check found afterwards.</param>
public sealed record MendReport(string? Copy, IReadOnlyList<string> Mended, CheckReport After);
