using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>All that was said, from the journal of an export.</summary>
/// <param name="lines">The lines of the journal.</param>
/// <param name="remarks">What the user should know of where they stood.</param>
internal sealed class JournalBatch(IEnumerable<string> lines, IReadOnlyList<string> remarks) : IBatch
{
    public Imported Post(LedgerFile ledger, bool isDry, bool isAmending, IProgress<double> progress,
        CancellationToken cancel)
    {
        var outcome = ledger.Join(lines.Where(line => line.Length > 0), isDry);
        return outcome.Refusal is { } refusal
            ? new(false, "nothing was written", [refusal], remarks) { IsDryRun = isDry }
            : new(true, Told(outcome.Added, outcome.Known, isDry), [], remarks)
            {
                Recorded = outcome.Added, AlreadyThere = outcome.Known, IsDryRun = isDry,
            };
    }

    /// <summary>What was added, in a sentence.</summary>
    public static string Told(int added, int known, bool isDry) =>
        $"{Counted.Of(added, "entry")} {(isDry ? "would be added" : "added")}, {known} known already";
}
