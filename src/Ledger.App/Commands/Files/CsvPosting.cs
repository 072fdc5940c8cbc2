using Ledger.Storage;

namespace Ledger.App.Commands.Files;

/// <summary>Posts what was read from CSV: everything, or nothing when a row is bad or refused.</summary>
internal static class CsvPosting
{
    /// <exception cref="OperationCanceledException">It was stopped; nothing was written.</exception>
    public static CsvPosted Post(CsvBatch batch, LedgerFile ledger, bool isDry, IProgress<double> progress, CancellationToken cancel)
    {
        if (batch.Problems.Count > 0)
            return Refused(batch.Problems);
        var outcome = ledger.Import(
            batch.Entries.Select(sourced => sourced.Entry), isDry, new Counting(progress, batch.Entries.Count), cancel);
        return outcome.Refused.Count > 0
            ? Refused([.. outcome.Refused.Select(refused => $"{batch.Entries[refused.Index].Where}: {refused.Refusal.Sentence}")])
            : new(true, [], $"{Count(outcome.Posted)} {(isDry ? "would be recorded" : "recorded")}, {outcome.AlreadyThere} already there");
    }

    private static CsvPosted Refused(IReadOnlyList<string> problems) =>
        new(false, problems, $"nothing was written: {problems.Count} {(problems.Count == 1 ? "row" : "rows")} must be put right first");

    private static string Count(int entries) => entries == 1 ? "1 entry" : $"{entries} entries";
}

/// <summary>What came of it.</summary>
/// <param name="IsDone">Whether all of it was accepted.</param>
/// <param name="Problems">Every bad row, a sentence each.</param>
/// <param name="Result">What was recorded, or that nothing was.</param>
internal sealed record CsvPosted(bool IsDone, IReadOnlyList<string> Problems, string Result);
