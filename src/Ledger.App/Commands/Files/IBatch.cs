using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>What is to be recorded, from whatever it was read: all of it, or nothing.</summary>
internal interface IBatch
{
    /// <summary>Posts everything, or nothing when any of it is bad or refused.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="isDry">Whether nothing is written.</param>
    /// <param name="isAmending">Whether what says something else than the entry that it is known as becomes an
    /// amendment of it.</param>
    /// <param name="progress">Told how far it is.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped; nothing was written.</exception>
    Imported Post(LedgerFile ledger, bool isDry, bool isAmending, IProgress<double> progress, CancellationToken cancel);
}

/// <summary>What came of an import.</summary>
/// <param name="IsDone">Whether all of it was accepted.</param>
/// <param name="Result">What was recorded, or that nothing was.</param>
/// <param name="Problems">Every bad row, a sentence each.</param>
/// <param name="Remarks">What the user should know, of the files and of what was recorded.</param>
internal sealed record Imported(bool IsDone, string Result, IReadOnlyList<string> Problems,
    IReadOnlyList<string> Remarks)
{
    /// <summary>How many entries were recorded, or would be.</summary>
    public int Recorded { get; init; }

    /// <summary>How many stood in the journal already, with the same values.</summary>
    public int AlreadyThere { get; init; }

    /// <summary>How many stand in the journal with other values, and were left so.</summary>
    public int Changed { get; init; }

    /// <summary>How many of these were amended.</summary>
    public int Amended { get; init; }

    /// <summary>Whether nothing was written.</summary>
    public bool IsDryRun { get; init; }
}
