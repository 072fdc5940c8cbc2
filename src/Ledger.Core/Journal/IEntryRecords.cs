namespace Ledger.Core.Journal;

/// <summary>The entries behind the things that are shown.</summary>
public interface IEntryRecords
{
    /// <summary>
    /// The entry that a thing is there by: its last definition that holds, the delivery or mixing that brought it, the
    /// session itself; of a sheet its exposure, or else its loading. Null where there is none, or where an earlier
    /// version did not keep which it was.
    /// </summary>
    JournalEntry? EntryOf(Subject subject) => null;

    /// <summary>
    /// The entries that say something of a thing, the last recorded first; <paramref name="before"/> continues a page.
    /// </summary>
    /// <param name="subject">The thing.</param>
    /// <param name="before">The number of an entry; only those before it are given. Null for the last ones.</param>
    /// <param name="atMost">How many at most.</param>
    IReadOnlyList<JournalEntry> EntriesAbout(Subject subject, long? before, int atMost) => [];
}
