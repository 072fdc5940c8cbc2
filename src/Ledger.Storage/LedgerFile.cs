using Ledger.Core.Journal.Rules;
using Ledger.Storage.Files;
using Ledger.Storage.Reading;
using Ledger.Storage.Upkeep;
using Ledger.Storage.Deriving;
using Ledger.Storage.Writing;
using Standing = Ledger.Storage.Deriving.Standing;

namespace Ledger.Storage;

/// <summary>A ledger in one SQLite file.</summary>
public sealed partial class LedgerFile : ILedger, IProcessHistory, IReading, IDisposable
{
    private readonly SqliteConnection _connection;
    private readonly ZonedClock _clock;
    private readonly SharedHoldings _holdings;
    private Snapshot? _held;

    private LedgerFile(string path, SqliteConnection connection, string? migratedFrom, ZonedClock clock)
    {
        Path = path;
        MigratedFrom = migratedFrom;
        _connection = connection;
        _clock = clock;
        _holdings = new(this, (snapshot, day) => day < Today ? Definitions.On(snapshot, day) : null);
    }

    /// <summary>The file.</summary>
    public string Path { get; }

    /// <summary>The copy that was made before the file was brought up to date; null when it was not.</summary>
    public string? MigratedFrom { get; }

    /// <inheritdoc/>
    public LocalDate Today => _clock.GetCurrentDate();

    /// <inheritdoc/>
    public long Version => Read(snapshot => snapshot.Version);

    /// <summary>
    /// What tells the ledger from all others: the moment at which its first entry was recorded, in digits. Copies of it
    /// have the same.
    /// </summary>
    public string Identity => Read(snapshot => new JournalReader(snapshot).Identity());

    /// <summary>The tables that an export holds.</summary>
    public IReadOnlyList<string> Tables => Read(snapshot => new Tables(snapshot).Names);

    /// <summary>
    /// The views that are there to be read by people; their columns and rows are asked for as those of tables are.
    /// </summary>
    public static IReadOnlyList<string> ReadableViews => Upkeep.Tables.Readable;

    /// <summary>
    /// What the ledger says of such a view, and of each of its columns in their order: the view itself has an empty
    /// column.
    /// </summary>
    /// <param name="view">One of <see cref="ReadableViews"/>.</param>
    public static IEnumerable<(string Column, string Unit, string Meaning)> Explained(string view) =>
        Schema.ReadMeOfViews.Where(row => row.Table == view).Select(row => (row.Column, row.Unit, row.Meaning));

    /// <summary>
    /// Opens the file, making it when there is none; an older one is brought up to date after a copy was made.
    /// </summary>
    /// <exception cref="LedgerFileException">The file cannot be used.</exception>
    public static LedgerFile Open(string path, ZonedClock clock)
    {
        var full = System.IO.Path.GetFullPath(path);
        var (connection, backup) = FileOpener.Open(full, clock.GetCurrentInstant());
        return new(full, connection, backup, clock);
    }

    /// <summary>
    /// Opens a ledger as it is, to look something up: nothing is made and nothing brought up to date.
    /// </summary>
    /// <returns>The ledger; null where there is none, or it is not of this version.</returns>
    /// <exception cref="LedgerFileException">The file cannot be used.</exception>
    public static LedgerFile? OpenAsItIs(string path, ZonedClock clock) =>
        FileOpener.AsItIs(path) is { } connection ? new(path, connection, null, clock) : null;

    /// <summary>
    /// What this ledger knew at the end of a day, with that day as its today: what was recorded later is not in it. A
    /// ledger in memory that can only be read.
    /// </summary>
    /// <exception cref="LedgerFileException">An earlier version recorded later than that day and kept no words of
    /// it.</exception>
    public LedgerFile KnownOn(LocalDate day)
    {
        var end = day.PlusDays(1).AtStartOfDayInZone(_clock.Zone).ToInstant();
        var memory = FileOpener.Connect(":memory:");
        try
        {
            Read(snapshot =>
            {
                snapshot.Connection.BackupDatabase(memory);
                return true;
            });
            new KnownThen(memory, day).Forget(end);
            memory.Run("PRAGMA query_only = ON");
            return new(Path, memory, null,
                new(new StoppedClock(end - Duration.FromTicks(1)), _clock.Zone, _clock.Calendar));
        }
        catch
        {
            memory.Dispose();
            throw;
        }
    }

    /// <inheritdoc/>
    public T Read<T>(Func<T> reading) => Hold(_ => Trouble.GuardFigures(Path, reading));

    /// <inheritdoc/>
    public Holdings HoldingsOn(LocalDate asOf) => Read(snapshot => _holdings.Lend(asOf, snapshot));

    /// <inheritdoc/>
    public Decision Preview(Entry entry)
    {
        return !ChangesThePast(entry)
            ? Hold(snapshot => PostingRules.Decide(entry, Now(snapshot), new JournalReader(snapshot), Today))
            : Write(transaction =>
            {
                var outcome = Recorder(transaction.Inside).Post(entry);
                _holdings.Forget();
                return outcome switch
                {
                    Posted posted => new Accepted(posted.Posting),
                    NotPosted refused => new Refused(refused.Refusal),
                    AlreadyPosted already => (Decision)new Refused(new(
                        RefusalKind.AlreadyThere,
                        $"entry {already.Number} stands in the journal under this reference already")),
                    var other => throw new InvalidOperationException($"the ledger answered with {other}"),
                };
            });
    }

    /// <inheritdoc/>
    public bool ChangesThePast(Entry entry) =>
        !IsReadOnly && Hold(snapshot => Recorder(snapshot).ChangesThePast(entry));

    /// <inheritdoc/>
    public PostOutcome Post(Entry entry) => Write(transaction =>
    {
        var outcome = Recorder(transaction.Inside).Post(entry);
        if (outcome is Posted)
            transaction.Commit();
        else
            _holdings.Forget();
        return outcome;
    });

    /// <summary>
    /// Posts many entries, all or none: nothing is written when one is refused, in a dry run, or when it is cancelled.
    /// </summary>
    /// <exception cref="OperationCanceledException">It was cancelled; nothing was written.</exception>
    public ImportOutcome Import(IEnumerable<Entry> entries, bool dryRun, IProgress<int>? progress,
        CancellationToken cancel)
    {
        Entry[] all = [.. entries];
        var (posted, there, refused, remarks) = (0, new List<(int Index, long Number)>(), new List<RefusedEntry>(),
            new List<EntryRemark>());
        Write(transaction =>
        {
            var outcomes = Recorder(transaction.Inside).PostAll(all, done =>
            {
                cancel.ThrowIfCancellationRequested();
                progress?.Report(done);
            });
            for (var i = 0; i < outcomes.Count; i++)
                switch (outcomes[i])
                {
                    case Posted done:
                        posted++;
                        remarks.AddRange(done.Posting.Remarks.Select(remark => new EntryRemark(i, remark)));
                        break;
                    case AlreadyPosted already: there.Add((i, already.Number)); break;
                    case NotPosted not: refused.Add(new(i, not.Refusal)); break;
                }

            if (refused.Count == 0 && !dryRun)
                transaction.Commit();
            else
                _holdings.Forget();
            return posted;
        });
        return new(posted, there.Count, refused, remarks, Read(snapshot => Otherwise(there, all, snapshot)));
    }

    /// <summary>
    /// What is told otherwise of entries that stand there. One that is told as it was once said is not: it was put
    /// right since.
    /// </summary>
    private List<ChangedEntry> Otherwise(IEnumerable<(int Index, long Number)> there, Entry[] told, Snapshot snapshot)
    {
        var changed = new List<ChangedEntry>();
        var (past, log) = (new JournalReader(snapshot), new SaidLog(snapshot.Connection));
        var (standing,
            terms) = (new Standing(log), new Lazy<ReadingTerms>(() => ReadingTerms.Of(Now(snapshot), Today)));
        foreach (var (index, number) in there)
        {
            if (number == 0 || past.Find(number) is not { } entry || log.Find(entry.Key) is not { } said
                || !standing.Holds(said.Key))
                continue;
            var kind = EntryKinds.Of(told[index]);
            if (kind.Name != said.Kind)
                continue;
            var again = EntryWriting.Write(kind, told[index], terms.Value);
            var now = EntryWriting.Write(kind, standing.EntryOf(said, terms.Value), terms.Value);
            var denied = told[index].Denies;
            var changes = Amending.Otherwise(kind, now, again, denied);
            if (changes.Count > 0
                && Amending.Otherwise(kind, EntryWriting.Write(kind, standing.FirstOf(said, terms.Value), terms.Value),
                    again, denied).Count > 0)
                changed.Add(new(index, number, entry.Key, changes,
                    [.. changes.Select(change => Amending.Value(kind, now, change))]));
        }

        return changed;
    }

    /// <inheritdoc/>
    public IReadOnlyList<JournalEntry> Journal(LocalDate asOf, long? before, int atMost) =>
        Read(snapshot => new JournalReader(snapshot).Page(asOf, before, atMost));

    /// <inheritdoc/>
    public IReadOnlyList<JournalEntry> JournalOf(LocalDate day) =>
        Read(snapshot => new JournalReader(snapshot).OfDay(day));

    /// <inheritdoc/>
    public Entry? Said(long number, string? key = null) => Read(snapshot =>
    {
        var past = new JournalReader(snapshot);
        var log = new SaidLog(snapshot.Connection);
        return (key is null ? past.Find(number) : past.Find(key)) is { } entry && log.Find(entry.Key) is { } said
            ? Numbered(new Standing(log).EntryOf(said, Core.Journal.Kinds.ReadingTerms.Of(Now(snapshot), Today)), past)
            : null;
    });

    /// <summary>What an entry comes before is shown by its number, as people name entries.</summary>
    private static Entry Numbered(Entry entry, JournalReader past) =>
        past.NumberOf(entry.Before) is { } before ? entry with { Before = Scaled.ToText(before, 0) } : entry;

    /// <inheritdoc/>
    public JournalEntry? EntryOf(Subject subject) => Read(snapshot => new SubjectReader(snapshot).EntryOf(subject));

    /// <inheritdoc/>
    public IReadOnlyList<JournalEntry> EntriesAbout(Subject subject, long? before, int atMost) =>
        Read(snapshot => new SubjectReader(snapshot).EntriesAbout(subject, before, atMost));

    /// <inheritdoc/>
    public IReadOnlyList<SessionRecord> Sessions(LocalDate asOf, SessionRecord? before, int atMost) =>
        Read(snapshot => new SessionReader(snapshot).Page(asOf, before, atMost));

    /// <inheritdoc/>
    public SessionRecord? Session(string name, LocalDate asOf) =>
        Read(snapshot => new SessionReader(snapshot).Find(name.Trim(), asOf));

    /// <inheritdoc/>
    public IReadOnlyList<SheetFate> SheetsOf(string session, LocalDate asOf) =>
        Read(snapshot => new StoryReader(snapshot).SheetsOf(session.Trim(), asOf));

    /// <inheritdoc/>
    public IReadOnlyList<PrintRecord> Prints(LocalDate asOf, PrintRecord? before, int atMost) =>
        Read(snapshot => new PrintReader(snapshot).Page(asOf, before, atMost));

    /// <inheritdoc/>
    public IReadOnlyList<ItemMove> MovesOf(string item, LocalDate asOf, int atMost) =>
        Read(snapshot => new MoveReader(snapshot).MovesOf(item, asOf, atMost));

    /// <inheritdoc/>
    public IReadOnlyList<StockLeft> LeftOf(string item, string? container, LocalDate since, LocalDate asOf) =>
        Read(snapshot => new MoveReader(snapshot).LeftOf(item, container, since, asOf));

    /// <inheritdoc/>
    public Bath? Bath(string code, LocalDate asOf) =>
        Read(snapshot => new BathTableReader(snapshot).Named(code, asOf, Now(snapshot)));

    /// <inheritdoc/>
    public IReadOnlyList<BathWorkRecord> WorkOf(string bath, LocalDate asOf, int atMost) =>
        Read(snapshot => new BathTableReader(snapshot).WorkOf(bath, asOf, atMost));

    /// <inheritdoc/>
    public IReadOnlyList<WasteJug> JugsOn(LocalDate asOf) => Read(snapshot => new JugReader(snapshot).All(asOf));

    /// <inheritdoc/>
    public Process? ProcessVersion(string name, int version) =>
        Read(snapshot => new CatalogueReader(snapshot).ProcessVersion(name, version, Now(snapshot)));

    /// <inheritdoc/>
    public CostFacts Costs(LocalDate from, LocalDate to, LocalDate? fatesOn = null,
        Func<SessionUse, SessionUse>? recosted = null) =>
        Read(snapshot => new CostReader(snapshot).Read(from, to, fatesOn, recosted));

    /// <inheritdoc/>
    public IReadOnlyList<LotPrice> Prices(LocalDate asOf) =>
        Read(snapshot => new PriceReader(snapshot).Prices(null, asOf));

    /// <inheritdoc/>
    public IReadOnlyList<LotPrice> PricesOf(string item, LocalDate asOf) =>
        Read(snapshot => new PriceReader(snapshot).Prices(item, asOf));

    /// <inheritdoc/>
    public IReadOnlyList<StockMove> StockMoves(LocalDate asOf) =>
        Read(snapshot => new PriceReader(snapshot).StockMoves(asOf));

    /// <inheritdoc/>
    public SheetStory? Story(string sheet, LocalDate asOf) =>
        Read(snapshot => new StoryReader(snapshot).Read(sheet, asOf, _holdings.Lend(asOf, snapshot)));

    /// <inheritdoc/>
    public Core.Film.FormerNegative? Former(string negative) =>
        Read(snapshot => new StoryReader(snapshot).Former(negative, Now(snapshot).Settings.Film.Negatives));

    /// <inheritdoc/>
    public IReadOnlyList<PlaceHeld> PlacesOf(string item, LocalDate asOf) =>
        Read(snapshot => new PlaceReader(snapshot).PlacesOf(item, asOf));

    /// <inheritdoc/>
    public IReadOnlyList<Untouched> UntouchedSince(LocalDate day, LocalDate asOf) =>
        Read(snapshot => new PlaceReader(snapshot).UntouchedSince(day, _holdings.Lend(asOf, snapshot)));

    /// <summary>Proves the file, all of it as it is in one moment.</summary>
    public CheckReport Check(IProgress<double>? progress, CancellationToken cancel) =>
        Read(snapshot => new Checker(snapshot).Run(Today, progress, cancel));

    /// <summary>
    /// Derives again what is wrong in the file and follows from what was recorded: balances, totals, guards. A copy of
    /// the file as it was is made first. What was recorded is never changed; where that is wrong, the report after
    /// mending says so.
    /// </summary>
    /// <exception cref="LedgerFileException">The copy could not be made, or the file cannot be written.</exception>
    public MendReport Mend(IProgress<double>? progress, CancellationToken cancel)
    {
        var before = Check(null, cancel);
        if (before.Mendable.Count + before.Words.Count == 0)
            return new(null, [], before);
        var copy = Guard(() => Backup.Keep(_connection, Path, _clock.GetCurrentInstant(), "backup").Path);
        Write(transaction =>
        {
            if (Mender.TryMend(_connection, Today))
                transaction.Commit();
            return true;
        });
        _holdings.Forget();
        var after = Check(progress, cancel);
        return new(copy, [.. before.Mendable.Concat(before.Words).Except(after.Mendable).Except(after.Words)], after);
    }

    /// <summary>
    /// What was said, a document a line, in the order of recording, after what an earlier version posted: the whole
    /// truth of the ledger.
    /// </summary>
    public IReadOnlyList<string> SaidLines() => Read(snapshot =>
    {
        var log = new SaidLog(snapshot.Connection);
        var said = log.All().Select(said => SaidLine.Write(said, log.NamesOf(said.Key)));
        return (HorizonBlock.Of(snapshot.Connection) is { } block ? said.Prepend(block.Line()) : said).ToList();
    });

    /// <summary>
    /// Adds what another ledger knows, and derives everything: all or nothing. Into an empty ledger this makes the same
    /// ledger once more.
    /// </summary>
    /// <param name="lines">What was said there, as <see cref="SaidLines"/> writes it.</param>
    /// <param name="dryRun">Whether only to say what would come of it.</param>
    public JoinOutcome Join(IEnumerable<string> lines, bool dryRun) => Write(transaction =>
    {
        var all = lines.ToList();
        var block = all is [var first, ..] && HorizonBlock.IsOne(first) ? HorizonBlock.Read(first) : null;
        var outcome = new Joining(_connection, transaction.Inside,
            Today).Add([.. all.Skip(block is null ? 0 : 1).Select(SaidLine.Read)], block);
        _holdings.Forget();
        if (outcome.Refusal is null && !dryRun)
            transaction.Commit();
        return outcome;
    });

    /// <summary>Makes a consistent copy while the file is in use.</summary>
    /// <exception cref="LedgerFileException">The target exists or cannot be written.</exception>
    public void BackUp(string target)
    {
        var full = System.IO.Path.GetFullPath(target);
        if (File.Exists(full))
            throw new LedgerFileException($"{full} exists already; name a new file for the backup");
        Backup.Copy(_connection, full, Path);
    }

    /// <summary>
    /// Writes what a backup holds into the ledger, once the backup is proved. A copy of what stood there is kept beside
    /// it.
    /// </summary>
    /// <returns>Where that copy is; empty when nothing stood there.</returns>
    /// <exception cref="LedgerFileException">The backup is not in order, or the ledger cannot be written to; it is as
    /// it was.</exception>
    public static string Restore(string backup, string ledger, ZonedClock clock) =>
        Upkeep.Restore.Run(System.IO.Path.GetFullPath(backup), System.IO.Path.GetFullPath(ledger),
            clock.GetCurrentDate(), clock.GetCurrentInstant());

    /// <summary>The columns of a table.</summary>
    public IReadOnlyList<string> Columns(string table) => Read(snapshot => new Tables(snapshot).Columns(table));

    /// <summary>The rows of a table as text; null where nothing stands.</summary>
    /// <remarks>Inside <see cref="Read{T}(Func{T})"/> they are read as they are asked for, otherwise all at
    /// once.</remarks>
    public IEnumerable<IReadOnlyList<string?>> Rows(string table) => _held is { } held
        ? new Tables(held).Rows(table)
        : Read(snapshot => new Tables(snapshot).Rows(table).ToList());

    /// <inheritdoc/>
    public void Dispose() => _connection.Dispose();

    /// <summary>For tests of a full disk.</summary>
    internal SqliteConnection Connection => _connection;

    private Recording Recorder(Snapshot inside) =>
        new(_connection, inside, _holdings, Today, _clock.GetCurrentInstant());

    private bool IsReadOnly => _connection.Number("PRAGMA query_only") == 1;

    /// <summary>What the ledger holds now, to decide on.</summary>
    private Holdings Now(Snapshot snapshot) => Trouble.GuardValues(Path, () => _holdings.On(Today, snapshot));

    T IReading.In<T>(Func<Snapshot, T> look) => Read(look);

    /// <summary>Reads what the file holds; a value in it that cannot be read is the file's fault.</summary>
    private T Read<T>(Func<Snapshot, T> reading) =>
        Hold(snapshot => Trouble.GuardValues(Path, () => reading(snapshot)));

    /// <summary>Does something with the state that is held, or with one of its own.</summary>
    private T Hold<T>(Func<Snapshot, T> reading) => Guard(() =>
    {
        if (_held is { } held)
            return reading(held);
        using var snapshot = new Snapshot(_connection);
        try
        {
            return reading(_held = snapshot);
        }
        finally
        {
            _held = null;
            _holdings.EndReading(Today);
        }
    });

    /// <summary>
    /// Writes in one transaction. A reading that is under way lets its state go and goes on with the one that was
    /// written.
    /// </summary>
    private T Write<T>(Func<WriteTransaction, T> writing) => Guard(() =>
    {
        var reading = _held;
        reading?.LetGo();
        using var transaction = new WriteTransaction(_connection);
        try
        {
            _held = transaction.Inside;
            return writing(transaction);
        }
        finally
        {
            _held = reading;
        }
    });

    private T Guard<T>(Func<T> work)
    {
        try
        {
            return Trouble.Guard(Path, work);
        }
        catch
        {
            _holdings.Forget();
            throw;
        }
    }

    /// <summary>A clock that stands at one moment.</summary>
    private sealed class StoppedClock(Instant moment) : IClock
    {
        public Instant GetCurrentInstant() => moment;
    }
}
