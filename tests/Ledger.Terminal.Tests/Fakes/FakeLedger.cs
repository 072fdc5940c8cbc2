using Ledger.Core.Baths;
using Ledger.Core.Costing;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using NodaTime;

namespace Ledger.Terminal.Tests.Fakes;

/// <summary>A ledger in memory: the real rules on holdings that are replayed from what was posted.</summary>
internal sealed class FakeLedger(LocalDate today) : ILedger, IPast
{
    private readonly List<(JournalEntry Entry, Posting Posting)> _posted = [];

    public LocalDate Today { get; set; } = today;

    public long Version { get; set; }

    /// <summary>When set, every use of the ledger fails with this sentence.</summary>
    public string? Trouble { get; set; }

    public Holdings HoldingsOn(LocalDate asOf)
    {
        Check();
        var holdings = new Holdings(asOf);
        foreach (var (entry, posting) in _posted)
        {
            if (entry.Date <= asOf && entry is { Reverses: null, ReversedBy: null })
                holdings.Apply(posting);
            holdings.LastPlace = Math.Max(holdings.LastPlace, posting.Facts.OfType<ContainerArrived>().Select(fact => fact.Place.Value).DefaultIfEmpty().Max());
            holdings.LastLot = Math.Max(holdings.LastLot, posting.Facts.OfType<LotReceived>().Select(fact => fact.Lot.Id.Value).DefaultIfEmpty().Max());
        }

        return holdings;
    }

    public Decision Preview(Entry entry)
    {
        Check();
        return PostingRules.Decide(entry, HoldingsOn(Today), this, Today);
    }

    public PostOutcome Post(Entry entry)
    {
        Check();
        if (_posted.FirstOrDefault(posted => posted.Entry.Key == entry.Key).Entry is { } there)
            return new AlreadyPosted(there.Number);
        if (Preview(entry) is not Accepted { Posting: var posting })
            return new NotPosted(((Refused)Preview(entry)).Refusal);
        var number = _posted.Count + 1;
        var reverses = (entry as Correction)?.Reverses;
        if (reverses is { } reversed)
            _posted[(int)reversed - 1] = (_posted[(int)reversed - 1].Entry with { ReversedBy = number }, _posted[(int)reversed - 1].Posting);
        _posted.Add((new(number, entry.Key, entry.Kind, posting.Entry.Date, Instant.FromUtc(2026, 3, 15, 9, 0), posting.Summary, entry.Note, reverses, null), posting));
        return new Posted(number, posting);
    }

    public IReadOnlyList<JournalEntry> Journal(LocalDate asOf, long? before, int atMost)
    {
        Check();
        return [.. Entries.Reverse().Where(entry => entry.Date <= asOf && (before is null || entry.Number < before)).Take(atMost)];
    }

    public IReadOnlyList<SessionRecord> Sessions(LocalDate asOf, SessionRecord? before, int atMost)
    {
        Check();
        var sessions = Standing.Where(posted => posted.Posting.Entry is SessionLog && posted.Entry.Date <= asOf).Select(Record)
            .OrderByDescending(session => session.Date).ThenByDescending(session => session.Number).ToList();
        return [.. sessions.Skip(before is null ? 0 : sessions.FindIndex(session => session.Number == before.Number) + 1).Take(atMost)];
    }

    public IReadOnlyList<ItemMove> MovesOf(string item, LocalDate asOf, int atMost)
    {
        var codes = Standing.SelectMany(posted => posted.Posting.Facts.OfType<ContainerArrived>())
            .Where(fact => fact.Lot.Item.Equals(item, StringComparison.OrdinalIgnoreCase)).ToDictionary(fact => fact.Place, fact => fact.Code);
        return [.. Standing.Reverse().SelectMany(posted => posted.Posting.Movements
            .Where(move => codes.ContainsKey(move.From) || codes.ContainsKey(move.To))
            .Select(move => codes.TryGetValue(move.To, out var to)
                ? new ItemMove(posted.Entry.Number, posted.Entry.Date, posted.Entry.Summary, to, move.Lot, move.Quantity, move.Value)
                : new ItemMove(posted.Entry.Number, posted.Entry.Date, posted.Entry.Summary, codes[move.From], move.Lot, -move.Quantity, Money.Zero - move.Value)))
            .Take(atMost)];
    }

    public Bath? Bath(string code, LocalDate asOf) => HoldingsOn(asOf).Bath(code)
        ?? Standing.SelectMany(posted => posted.Posting.Facts.OfType<BathMixed>()).FirstOrDefault(fact => fact.Bath.Code == code)?.Bath;

    public IReadOnlyList<BathWorkRecord> WorkOf(string bath, LocalDate asOf, int atMost)
    {
        var place = Bath(bath, asOf)?.Place;
        return [.. Standing.Reverse().SelectMany(posted => posted.Posting.Facts.OfType<BathWorked>().Where(fact => fact.Place == place)
            .Select(fact => new BathWorkRecord(posted.Entry.Number, posted.Entry.Date, posted.Entry.Summary, fact.IsFirst, fact.Area, fact.Weighted))).Take(atMost)];
    }

    /// <summary>The film of the sessions; the chemistry and the stock are left out, which the screens do not need.</summary>
    public CostFacts Costs(LocalDate from, LocalDate to) => new(
        from, to, Money.Zero, Money.Zero, Money.Zero, Money.Zero, [], Money.Zero, [],
        [.. Standing.Where(posted => posted.Posting.Entry is SessionLog && posted.Entry.Date >= from && posted.Entry.Date <= to).Select(posted => new SessionUse(
            ((SessionLog)posted.Posting.Entry).Session, posted.Entry.Date, Money.Zero, Money.Zero, Money.Zero, null, Area.Zero, Area.Zero,
            [.. Record(posted).Lines.Select(line => new FilmUse(line.Item, line.Sheets, line.Area, line.Cost, line.Fate))]))]);

    public JournalEntry? Find(long number) => Entries.FirstOrDefault(entry => entry.Number == number);

    public IReadOnlyList<Movement> MovementsOf(long number) => _posted[(int)number - 1].Posting.Movements;

    public bool HasSession(string session) => Standing.Any(posted => posted.Posting.Entry is SessionLog log && log.Session == session);

    public bool HasBath(string bath) => Standing.Any(posted => posted.Posting.Entry is BathMixing mixing && mixing.Bath == bath);

    public long? FirstUseOfBathMixedBy(long number)
    {
        var place = _posted[(int)number - 1].Posting.Facts.OfType<BathMixed>().FirstOrDefault()?.Bath.Place;
        return Standing.Where(posted => posted.Posting.Facts.OfType<BathWorked>().Any(fact => fact.Place == place)).Select(posted => (long?)posted.Entry.Number).FirstOrDefault();
    }

    private IEnumerable<JournalEntry> Entries => _posted.Select(posted => posted.Entry);

    private IEnumerable<(JournalEntry Entry, Posting Posting)> Standing => _posted.Where(posted => posted.Entry is { Reverses: null, ReversedBy: null });

    private void Check()
    {
        if (Trouble is not null)
            throw new LedgerUnavailableException(Trouble);
    }

    private SessionRecord Record((JournalEntry Entry, Posting Posting) posted)
    {
        var held = posted.Posting.Facts.OfType<SessionHeld>().Single();
        var lots = _posted.SelectMany(one => one.Posting.Facts.OfType<LotReceived>()).ToDictionary(fact => fact.Lot.Id, fact => fact.Lot.Item);
        var baths = _posted.SelectMany(one => one.Posting.Facts.OfType<BathMixed>()).ToDictionary(fact => fact.Bath.Place, fact => fact.Bath.Code);
        return new(
            posted.Entry.Number, held.Session, posted.Entry.Date, held.Process.Name, held.Bath is { } bath ? baths[bath] : null, held.Developer, posted.Entry.Note,
            [.. posted.Posting.Facts.OfType<SheetsDeveloped>().Select(fact =>
                new SessionSheets(lots[fact.Lot], fact.Sheets, fact.Area, fact.Cost, fact.Group, fact.Fate, fact.Note))]);
    }
}
