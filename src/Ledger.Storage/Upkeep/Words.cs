using Ledger.Core.Journal.Rules;
using Ledger.Storage.Deriving;
using Ledger.Storage.Reading;

namespace Ledger.Storage.Upkeep;

/// <summary>
/// The lines in which the journal shows undos and amendments, as this version tells them: those of all other entries
/// are written when they are derived.
/// </summary>
internal static class Words
{
    /// <summary>Writes them where they are others.</summary>
    public static void Write(SqliteConnection connection, Snapshot inside)
    {
        var (past, log) = (new JournalReader(inside), new SaidLog(connection));
        foreach (var said in log.All().Where(said => said.About is not null && log.Find(said.About) is not null))
            if (past.Find(said.Key) is { } entry && past.Find(said.About!) is { } target
                && PostingRules.SummaryOf(Deriving.Standing.ActOf(said), target.Number, target.Kind) is var summary
                && summary != entry.Summary)
                connection.Execute("UPDATE entry SET summary = @summary WHERE id = @Number",
                    new { summary, entry.Number });
    }
}
