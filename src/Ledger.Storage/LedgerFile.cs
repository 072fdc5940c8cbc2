using Ledger.Core.Baths;
using Ledger.Core.Costing;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;
using Ledger.Storage.Files;
using Ledger.Storage.Reading;
using Ledger.Storage.Upkeep;
using Ledger.Storage.Writing;
using Microsoft.Data.Sqlite;
using NodaTime;

namespace Ledger.Storage;

/// <summary>A ledger in one SQLite file.</summary>
public sealed partial class LedgerFile : ILedger, IProcessHistory, IDisposable
{
    private const int Constraint = 19;

    private readonly SqliteConnection _connection;
    private readonly ZonedClock _clock;
    private Holdings? _current;
    private long _currentVersion;

    private LedgerFile(string path, SqliteConnection connection, string? migratedFrom, ZonedClock clock)
    {
        Path = path;
        MigratedFrom = migratedFrom;
        _connection = connection;
        _clock = clock;
    }

    /// <summary>The file.</summary>
    public string Path { get; }

    /// <summary>The copy that was made before the file was brought up to date; null when it was not.</summary>
    public string? MigratedFrom { get; }

    /// <inheritdoc/>
    public LocalDate Today => _clock.GetCurrentDate();

    /// <inheritdoc/>
    public long Version => Guard(() =>
    {
        using var command = _connection.CreateCommand();
        command.CommandText = "PRAGMA data_version";
        return (long)command.ExecuteScalar()!;
    });

    /// <summary>The tables that an export holds.</summary>
    public IReadOnlyList<string> Tables => Guard(() => new Tables(_connection).Names);

    /// <summary>Opens the file, making it when there is none; an older one is brought up to date after a copy was made.</summary>
    /// <exception cref="LedgerFileException">The file cannot be used.</exception>
    public static LedgerFile Open(string path, ZonedClock clock)
    {
        var full = System.IO.Path.GetFullPath(path);
        var (connection, backup) = FileOpener.Open(full, clock.GetCurrentInstant());
        return new(full, connection, backup, clock);
    }

    /// <inheritdoc/>
    public Holdings HoldingsOn(LocalDate asOf) => Guard(() => new HoldingsReader(_connection).Read(asOf));

    /// <inheritdoc/>
    public Decision Preview(Entry entry) => Guard(() => PostingRules.Decide(entry, Current(), Past, Today));

    /// <inheritdoc/>
    public PostOutcome Post(Entry entry) => Guard(() =>
    {
        using var transaction = new WriteTransaction(_connection);
        var outcome = PostInside(entry);
        if (outcome is Posted)
            transaction.Commit();
        return outcome;
    });

    /// <summary>Posts many entries, all or none: nothing is written when one is refused, in a dry run, or when it is cancelled.</summary>
    /// <exception cref="OperationCanceledException">It was cancelled; nothing was written.</exception>
    public ImportOutcome Import(IEnumerable<Entry> entries, bool dryRun, IProgress<int>? progress, CancellationToken cancel) => Guard(() =>
    {
        using var transaction = new WriteTransaction(_connection);
        var (posted, there, refused, index) = (0, 0, new List<RefusedEntry>(), 0);
        foreach (var entry in entries)
        {
            cancel.ThrowIfCancellationRequested();
            switch (PostInside(entry))
            {
                case Posted: posted++; break;
                case AlreadyPosted: there++; break;
                case NotPosted not: refused.Add(new(index, not.Refusal)); break;
            }

            index++;
            progress?.Report(index);
        }

        if (refused.Count == 0 && !dryRun)
            transaction.Commit();
        else
            _current = null;
        return new ImportOutcome(posted, there, refused);
    });

    /// <inheritdoc/>
    public IReadOnlyList<JournalEntry> Journal(LocalDate asOf, long? before, int atMost) =>
        Guard(() => new JournalReader(_connection).Page(asOf, before, atMost));

    /// <inheritdoc/>
    public IReadOnlyList<SessionRecord> Sessions(LocalDate asOf, SessionRecord? before, int atMost) =>
        Guard(() => new SessionReader(_connection).Page(asOf, before, atMost));

    /// <inheritdoc/>
    public SessionRecord? Session(string name, LocalDate asOf) => Guard(() => new SessionReader(_connection).Find(name.Trim(), asOf));

    /// <inheritdoc/>
    public IReadOnlyList<SheetFate> SheetsOf(string session, LocalDate asOf) =>
        Guard(() => new StoryReader(_connection).SheetsOf(session.Trim(), asOf));

    /// <inheritdoc/>
    public IReadOnlyList<PrintRecord> Prints(LocalDate asOf, PrintRecord? before, int atMost) =>
        Guard(() => new PrintReader(_connection).Page(asOf, before, atMost));

    /// <inheritdoc/>
    public IReadOnlyList<ItemMove> MovesOf(string item, LocalDate asOf, int atMost) =>
        Guard(() => new MoveReader(_connection).MovesOf(item, asOf, atMost));

    /// <inheritdoc/>
    public Bath? Bath(string code, LocalDate asOf) => Guard(() => new BathReader(_connection).Named(code, asOf, Current()));

    /// <inheritdoc/>
    public IReadOnlyList<BathWorkRecord> WorkOf(string bath, LocalDate asOf, int atMost) =>
        Guard(() => new BathReader(_connection).WorkOf(bath, asOf, atMost));

    /// <inheritdoc/>
    public IReadOnlyList<WasteJug> JugsOn(LocalDate asOf) => Guard(() => new JugReader(_connection).All(asOf));

    /// <inheritdoc/>
    public Process? ProcessVersion(string name, int version) =>
        Guard(() => new CatalogueReader(_connection).ProcessVersion(name, version, Current()));

    /// <inheritdoc/>
    public CostFacts Costs(LocalDate from, LocalDate to) => Guard(() => new CostReader(_connection).Read(from, to));

    /// <inheritdoc/>
    public IReadOnlyList<LotPrice> Prices(LocalDate asOf) => Guard(() => new PriceReader(_connection).Prices(null, asOf));

    /// <inheritdoc/>
    public IReadOnlyList<LotPrice> PricesOf(string item, LocalDate asOf) => Guard(() => new PriceReader(_connection).Prices(item, asOf));

    /// <inheritdoc/>
    public IReadOnlyList<StockMove> StockMoves(LocalDate asOf) => Guard(() => new PriceReader(_connection).StockMoves(asOf));

    /// <inheritdoc/>
    public SheetStory? Story(string sheet, LocalDate asOf) =>
        Guard(() => new StoryReader(_connection).Read(sheet, asOf, HoldingsOn(asOf)));

    /// <inheritdoc/>
    public IReadOnlyList<PlaceHeld> PlacesOf(string item, LocalDate asOf) => Guard(() => new PlaceReader(_connection).PlacesOf(item, asOf));

    /// <inheritdoc/>
    public IReadOnlyList<Untouched> UntouchedSince(LocalDate day, LocalDate asOf) =>
        Guard(() => new PlaceReader(_connection).UntouchedSince(day, HoldingsOn(asOf)));

    /// <summary>Proves the file.</summary>
    public CheckReport Check(IProgress<double>? progress, CancellationToken cancel) =>
        Guard(() => new Checker(_connection).Run(Today, progress, cancel));

    /// <summary>Makes a consistent copy while the file is in use.</summary>
    /// <exception cref="LedgerFileException">The target exists or cannot be written.</exception>
    public void BackUp(string target)
    {
        var full = System.IO.Path.GetFullPath(target);
        if (File.Exists(full))
            throw new LedgerFileException($"{full} exists already; name a new file for the backup");
        Trouble.Guard(full, () =>
        {
            try
            {
                Upkeep.Backup.Copy(_connection, full);
                return true;
            }
            catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
            {
                throw new LedgerFileException($"{full} cannot be written: {FileTrouble.Reason(trouble)}", trouble);
            }
        });
    }

    /// <summary>Puts a backup in the ledger's place. The file that stood there is kept beside it.</summary>
    /// <returns>Where the old file is now; empty when there was none.</returns>
    /// <exception cref="LedgerFileException">The backup is no ledger, or the old file is in use.</exception>
    public static string Restore(string backup, string ledger, ZonedClock clock) =>
        Upkeep.Restore.Run(System.IO.Path.GetFullPath(backup), System.IO.Path.GetFullPath(ledger), clock.GetCurrentInstant());

    /// <summary>The columns of a table.</summary>
    public IReadOnlyList<string> Columns(string table) => Guard(() => new Tables(_connection).Columns(table));

    /// <summary>The rows of a table as text; null where nothing stands.</summary>
    public IEnumerable<IReadOnlyList<string?>> Rows(string table) => new Tables(_connection).Rows(table);

    /// <inheritdoc/>
    public void Dispose() => _connection.Dispose();

    /// <summary>For tests of a full disk.</summary>
    internal SqliteConnection Connection => _connection;

    private JournalReader Past => new(_connection);

    private PostOutcome PostInside(Entry entry)
    {
        if (Past.NumberOf(entry.Key) is { } number)
            return new AlreadyPosted(number);
        var holdings = Current();
        return PostingRules.Decide(entry, holdings, Past, Today) switch
        {
            Refused refused => new NotPosted(refused.Refusal),
            Accepted accepted => Write(accepted.Posting, holdings),
            var other => throw new InvalidOperationException($"a decision is neither accepted nor refused: {other}"),
        };
    }

    private PostOutcome Write(Posting posting, Holdings holdings)
    {
        try
        {
            var written = new PostingWriter(_connection).Write(posting, _clock.GetCurrentInstant());
            if (posting.Entry is Correction)
                _current = null;
            else
                holdings.Apply(posting);
            return new Posted(written, posting);
        }
        catch (SqliteException trouble) when (trouble.SqliteErrorCode == Constraint)
        {
            _current = null;
            return new NotPosted(new(RefusalKind.DependedOn, $"the file's own rules refuse it: {trouble.Message}"));
        }
    }

    /// <summary>What the ledger holds now: kept from one entry to the next while nobody else writes to the file.</summary>
    private Holdings Current()
    {
        var version = Version;
        if (_current is null || version != _currentVersion || _current.AsOf != Today)
        {
            _current = new HoldingsReader(_connection).Read(Today);
            _currentVersion = version;
        }

        return _current;
    }

    private T Guard<T>(Func<T> work)
    {
        try
        {
            return Trouble.Guard(Path, work);
        }
        catch
        {
            _current = null;
            throw;
        }
    }
}
