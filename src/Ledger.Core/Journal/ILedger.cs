using Ledger.Core.Costing;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>
/// A ledger as screens and commands use it: one way to write, one way to read. Any of them throws a
/// <see cref="LedgerUnavailableException"/> when the ledger cannot be used.
/// </summary>
public interface ILedger : IFilmRecords, ICostRecords, Tracing.ITraceRecords, IDrafts, IEntryRecords
{
    /// <summary>The day of recording.</summary>
    LocalDate Today { get; }

    /// <summary>A number that changes when another process has written to the ledger.</summary>
    long Version { get; }

    /// <summary>
    /// Runs a reading that consists of several questions, and answers all of them from one state of the ledger,
    /// whatever others write meanwhile. Each command and each refresh of a screen is one reading. An entry posted
    /// inside it is seen by what is asked after it.
    /// </summary>
    T Read<T>(Func<T> reading) => reading();

    /// <summary>
    /// Does something that asks several questions, and answers all of them from one state of the ledger.
    /// </summary>
    void Read(Action reading) => Read(() =>
    {
        reading();
        return true;
    });

    /// <summary>What the ledger holds at the end of a day; asked again in the same reading, it is the same.</summary>
    Holdings HoldingsOn(LocalDate asOf);

    /// <summary>What posting an entry would do, without doing it.</summary>
    Decision Preview(Entry entry);

    /// <summary>
    /// Whether other entries follow from an entry, so that what posting it would do is found by working out all that
    /// happened since.
    /// </summary>
    bool ChangesThePast(Entry entry);

    /// <summary>Posts an entry in one transaction.</summary>
    PostOutcome Post(Entry entry);

    /// <summary>
    /// An entry as it holds now, with what it was amended to; null where its words were not kept, or there is none of
    /// that number or reference.
    /// </summary>
    Entry? Said(long number, string? key = null) => null;

    /// <summary>Entries up to a day, the last recorded first; <paramref name="before"/> continues a page.</summary>
    IReadOnlyList<JournalEntry> Journal(LocalDate asOf, long? before, int atMost);

    /// <summary>
    /// The entries of a day in the order in which they count. What was taken back does not, and undos and amendments
    /// have no place of their own.
    /// </summary>
    IReadOnlyList<JournalEntry> JournalOf(LocalDate day);

    /// <summary>
    /// Sessions up to a day that were not taken back, the last one first; <paramref name="before"/> continues a page.
    /// </summary>
    IReadOnlyList<SessionRecord> Sessions(LocalDate asOf, SessionRecord? before, int atMost);

    /// <summary>The session of that name, if it was held by a day and not taken back; or null.</summary>
    SessionRecord? Session(string name, LocalDate asOf);

    /// <summary>
    /// Print sessions up to a day that were not taken back, the last one first; <paramref name="before"/> continues a
    /// page.
    /// </summary>
    IReadOnlyList<PrintRecord> Prints(LocalDate asOf, PrintRecord? before, int atMost) => [];

    /// <summary>What an item's containers took in and gave, the last first.</summary>
    IReadOnlyList<ItemMove> MovesOf(string item, LocalDate asOf, int atMost);

    /// <summary>The bath of that name, in use or discarded; null when there never was one.</summary>
    Baths.Bath? Bath(string code, LocalDate asOf);

    /// <summary>The work a bath has taken, the last first.</summary>
    IReadOnlyList<BathWorkRecord> WorkOf(string bath, LocalDate asOf, int atMost);

    /// <summary>
    /// Every waste jug started by the end of a day, those that were handed over too, in the order in which they were
    /// started.
    /// </summary>
    IReadOnlyList<Baths.WasteJug> JugsOn(LocalDate asOf) => [];

    /// <summary>What the journal knows of the costs of a period, both days included.</summary>
    /// <param name="from">The first day.</param>
    /// <param name="to">The last day.</param>
    /// <param name="fatesOn">The day whose fates count: a negative may be found spoiled years later. Null for the last
    /// day.</param>
    /// <param name="recosted">What a session used by another cost formula; null for what was posted.</param>
    CostFacts Costs(LocalDate from, LocalDate to, LocalDate? fatesOn = null,
        Func<SessionUse, SessionUse>? recosted = null);
}

/// <summary>What became of an entry.</summary>
public abstract record PostOutcome;

/// <summary>It was written.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Posting">What it wrote.</param>
public sealed record Posted(long Number, Posting Posting) : PostOutcome;

/// <summary>An entry with its key stood there already; nothing was written.</summary>
/// <param name="Number">That entry's number.</param>
public sealed record AlreadyPosted(long Number) : PostOutcome;

/// <summary>It was refused; nothing was written.</summary>
/// <param name="Refusal">Why.</param>
public sealed record NotPosted(Refusal Refusal) : PostOutcome;

/// <summary>A session as the journal remembers it.</summary>
/// <param name="Number">The entry's number.</param>
/// <param name="Session">Its name.</param>
/// <param name="Date">Its day.</param>
/// <param name="Process">The process.</param>
/// <param name="Bath">The bath, if any.</param>
/// <param name="Developer">The concentrate used.</param>
/// <param name="Note">The user's note.</param>
/// <param name="Lines">The sheets.</param>
public sealed record SessionRecord(
    long Number, string Session, LocalDate Date, string Process, string? Bath, Volume Developer, string Note,
    IReadOnlyList<SessionSheets> Lines)
{
    /// <summary>The version of the process that it was run with.</summary>
    public int ProcessVersion { get; init; } = 1;

    /// <summary>All sheets and rolls that were developed; dummies are not.</summary>
    public long Sheets => Lines.Where(line => line.Fate != Sessions.Fate.Dummy).Sum(line => line.Sheets);

    /// <summary>All area, that of dummies too.</summary>
    public Area Area => Lines.Aggregate(Area.Zero, (sum, line) => sum + line.Area);
}

/// <summary>Sheets of one lot and fate in a session.</summary>
/// <param name="Item">The film.</param>
/// <param name="Sheets">How many.</param>
/// <param name="Area">Their area.</param>
/// <param name="Cost">What the film cost.</param>
/// <param name="Group">The development group.</param>
/// <param name="Fate">What became of them.</param>
/// <param name="Note">The user's note.</param>
public sealed record SessionSheets(
    string Item, long Sheets, Area Area, Money Cost, string Group, Sessions.Fate Fate, string Note);

/// <summary>So much of an item into or out of one of its containers.</summary>
/// <param name="Number">The entry's number.</param>
/// <param name="Date">Its day.</param>
/// <param name="Summary">What it says.</param>
/// <param name="Container">The container.</param>
/// <param name="Lot">Its lot.</param>
/// <param name="Change">In base units; negative when it went out.</param>
/// <param name="Value">What it cost; negative when it went out.</param>
public sealed record ItemMove(long Number, LocalDate Date, string Summary, string Container,
    LotId Lot, long Change, Money Value);

/// <summary>One session's work on a bath.</summary>
/// <param name="Number">The entry's number.</param>
/// <param name="Date">Its day.</param>
/// <param name="Summary">What it says.</param>
/// <param name="IsFirst">Whether it counts.</param>
/// <param name="Area">The area.</param>
/// <param name="Weighted">The same, weighted by film.</param>
public sealed record BathWorkRecord(long Number, LocalDate Date, string Summary, bool IsFirst,
    Area Area, Area Weighted);
