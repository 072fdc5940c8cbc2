namespace Ledger.Faults.Running;

/// <summary>How a run of a program ended.</summary>
/// <param name="Status">Its exit status; 137 when it was killed, -1 when it did not end by itself.</param>
/// <param name="Output">What it wrote to its output.</param>
/// <param name="Errors">What it wrote as messages.</param>
/// <param name="Lasted">How long it took.</param>
/// <param name="Calls">The calls that were counted, or the one that a fault struck.</param>
public sealed record Ran(int Status, string Output, string Errors, TimeSpan Lasted, IReadOnlyList<string> Calls)
{
    /// <summary>Whether it was killed.</summary>
    public bool WasKilled => Status == 137;

    /// <summary>Whether it did not end by itself.</summary>
    public bool Hung => Status == -1;

    /// <summary>Whether it ended as a program must not end: by a fault of its own.</summary>
    public bool IsUnexplained =>
        !WasKilled && (Status is not (0 or 2 or 3 or 4) || Errors.Contains("   at ", StringComparison.Ordinal));
}
