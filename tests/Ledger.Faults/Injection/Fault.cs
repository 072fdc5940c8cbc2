namespace Ledger.Faults.Injection;

/// <summary>What goes wrong at a call.</summary>
public enum FaultKind
{
    /// <summary>The program is killed before the call.</summary>
    Kill,

    /// <summary>Half of a write is done, or all of another call, and the program is killed.</summary>
    Torn,

    /// <summary>The call fails with an input/output error.</summary>
    Eio,

    /// <summary>This call and every later one that needs room fails: the disk is full.</summary>
    Full,

    /// <summary>A write takes half of its bytes only, which is allowed.</summary>
    Half,

    /// <summary>The program is killed after so many microseconds, wherever it is.</summary>
    Moment,
}

/// <summary>One thing that goes wrong in one run of the program.</summary>
/// <param name="Kind">What goes wrong.</param>
/// <param name="At">At which of its counted calls, from 1; for a moment, after how many microseconds.</param>
/// <param name="Call">The call as it was seen in a run without fault, to be read by people.</param>
public sealed record Fault(FaultKind Kind, long At, string Call)
{
    /// <summary>Whether the program ends by it.</summary>
    public bool Kills => Kind is FaultKind.Kill or FaultKind.Torn or FaultKind.Moment;

    /// <summary>In words: "eio at 7 (write ledger.db-wal)".</summary>
    public override string ToString() => $"{Word} at {At}{(Call.Length > 0 ? $" ({Call})" : " µs")}";

    /// <summary>As the preloaded library calls it.</summary>
    internal string Word => Kind.ToString().ToLowerInvariant();
}
