namespace Ledger.Faults.Verdicts;

/// <summary>In which way the program failed.</summary>
public enum FlawKind
{
    /// <summary>
    /// Something that was acknowledged, or was there before, is gone; or the file can no longer be used.
    /// </summary>
    Lost,

    /// <summary>
    /// Something was done in part, or an unfinished file was left that the next run does not clear away.
    /// </summary>
    HalfDone,

    /// <summary>Something is not as the user was told, or is damaged without being reported.</summary>
    Unreported,

    /// <summary>The program ended by a fault of its own, or did not end.</summary>
    Unexplained,
}

/// <summary>One failure, with what was done so that it can be done again.</summary>
/// <param name="Kind">In which way the program failed.</param>
/// <param name="Sentence">What was seen.</param>
public sealed record Flaw(FlawKind Kind, string Sentence);
