using Ledger.Core.Journal.Rules;

namespace Ledger.Terminal.Tests.Fakes;

/// <summary>A ledger in memory: the real rules on holdings that are replayed from what was posted.</summary>
public sealed class FakeLedger(LocalDate today) : ILedger, IPast
{
    private static readonly Instant Recorded = Instant.FromUtc(2026, 3, 15, 9, 0);
    private readonly List<Written> _posted = [];

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
            if (entry.Date <= asOf && entry is { Undoes: null, UndoneBy: null })
                holdings.Apply(posting);
            foreach (var arrived in posting.Facts.OfType<ContainerArrived>())
                holdings.LastPlace = Math.Max(holdings.LastPlace, arrived.Place.Value);
            foreach (var received in posting.Facts.OfType<LotReceived>())
                holdings.LastLot = Math.Max(holdings.LastLot, received.Lot.Id.Value);
        }

        return holdings;
    }

    public bool ChangesThePast(Entry entry) => false;

    public Decision Preview(Entry entry)
    {
        Check();
        return PostingRules.Decide(entry, HoldingsOn(Today), this, Today);
    }

    public PostOutcome Post(Entry entry)
    {
        Check();
        if (_posted.Find(posted => posted.Entry.Key == entry.Key)?.Entry is { } there)
            return new AlreadyPosted(there.Number);
        if (Preview(entry) is not Accepted { Posting: var posting })
            return new NotPosted(((Refused)Preview(entry)).Refusal);
        var number = _posted.Count + 1;
        var reverses = (posting.Entry as Undo)?.Number;
        if (reverses is { } reversed)
            _posted[At(reversed)] =
                _posted[At(reversed)] with { Entry = _posted[At(reversed)].Entry with { UndoneBy = number } };
        var written = new JournalEntry(
            number, entry.Key, entry.Kind, posting.Entry.Date, Recorded, posting.Summary, entry.Note, reverses, null);
        _posted.Add(new(written, posting));
        return new Posted(number, posting);
    }

    public IReadOnlyList<JournalEntry> Journal(LocalDate asOf, long? before, int atMost)
    {
        Check();
        return [.. Entries.Reverse().Where(entry => entry.Date <= asOf && (before is null || entry.Number < before))
            .Take(atMost)];
    }

    public IReadOnlyList<JournalEntry> JournalOf(LocalDate day) =>
        [.. Standing.Where(posted => posted.Entry.Date == day).Select(posted => posted.Entry)];

    public IReadOnlyList<SessionRecord> Sessions(LocalDate asOf, SessionRecord? before, int atMost)
    {
        Check();
        var sessions = Standing.Where(posted => posted.Posting.Entry is SessionLog && posted.Entry.Date <= asOf)
            .Select(Record)
            .OrderByDescending(session => session.Date).ThenByDescending(session => session.Number).ToList();
        return [.. sessions.Skip(
            before is null ? 0 : sessions.FindIndex(session => session.Number == before.Number) + 1).Take(atMost)];
    }

    public SessionRecord? Session(string name, LocalDate asOf) =>
        Sessions(asOf, null, int.MaxValue).FirstOrDefault(session => session.Session == name);

    public IReadOnlyList<ItemMove> MovesOf(string item, LocalDate asOf, int atMost)
    {
        var codes = Facts<ContainerArrived>()
            .Where(fact => fact.Lot.Item.Equals(item, StringComparison.OrdinalIgnoreCase))
            .ToDictionary(fact => fact.Place, fact => fact.Code);
        var moves = from posted in Standing.Reverse()
                    from move in posted.Posting.Movements
                    where codes.ContainsKey(move.From) || codes.ContainsKey(move.To)
                    select codes.TryGetValue(move.To, out var to)
                        ? Moved(posted.Entry, to, move)
                        : Moved(posted.Entry, codes[move.From], Out(move));
        return [.. moves.Take(atMost)];
    }

    public Bath? Bath(string code, LocalDate asOf) =>
        HoldingsOn(asOf).Bath(code) ?? Facts<BathMixed>().FirstOrDefault(fact => fact.Bath.Code == code)?.Bath;

    public IReadOnlyList<BathWorkRecord> WorkOf(string bath, LocalDate asOf, int atMost)
    {
        var place = Bath(bath, asOf)?.Place;
        var work = from posted in Standing.Reverse()
                   from fact in posted.Posting.Facts.OfType<BathWorked>()
                   where fact.Place == place
                   let entry = posted.Entry
                   select new BathWorkRecord(entry.Number, entry.Date, entry.Summary, fact.IsFirst,
                       fact.Area, fact.Weighted);
        return [.. work.Take(atMost)];
    }

    /// <summary>
    /// The film of the sessions; the chemistry and the stock are left out, which the screens do not need.
    /// </summary>
    public CostFacts Costs(LocalDate from, LocalDate to, LocalDate? fatesOn = null,
        Func<SessionUse, SessionUse>? recosted = null)
    {
        var sessions = Standing.Where(posted => posted.Posting.Entry is SessionLog && posted.Entry.Date >= from
            && posted.Entry.Date <= to);
        return new(
            from, to, Money.Zero, Money.Zero, Money.Zero, Money.Zero, [], Money.Zero, [],
            SessionCosts.Of(sessions.Select(Record).Select(session => new SessionUse(
                session.Session, session.Date, Money.Zero, Money.Zero, Money.Zero, [],
                [.. session.Lines.Select(line => new FilmUse(line.Item, line.Sheets, line.Area,
                    line.Cost, line.Fate))]))));
    }

    public JournalEntry? Find(long number) => Entries.FirstOrDefault(entry => entry.Number == number);

    public JournalEntry? Find(string key) => Entries.FirstOrDefault(entry => entry.Key == key);

    public IReadOnlyList<Movement> MovementsOf(long number) => _posted[At(number)].Posting.Movements;

    public bool HasSession(string session) => Facts<SessionHeld>().Any(fact => fact.Session == session);

    public bool HasBath(string bath) => Facts<BathMixed>().Any(fact => fact.Bath.Code == bath);

    public long? FirstUseOfBathMixedBy(long number)
    {
        var place = _posted[At(number)].Posting.Facts.OfType<BathMixed>().FirstOrDefault()?.Bath.Place;
        var uses = Standing.Where(posted => posted.Posting.Facts.OfType<BathWorked>().Any(fact => fact.Place == place));
        return uses.Select(posted => (long?)posted.Entry.Number).FirstOrDefault();
    }

    public bool HasOrder(string order) => Facts<OrderPlaced>().Any(fact => fact.Order.Code == order);

    public long? FirstUseOfOrderPlacedBy(long number)
    {
        var order = _posted[At(number)].Posting.Facts.OfType<OrderPlaced>().FirstOrDefault()?.Order.Code;
        var uses =
            Standing.Where(posted => posted.Posting.Facts.OfType<OrderDelivered>().Any(fact => fact.Order == order)
                || posted.Posting.Facts.OfType<OrderLineChanged>().Any(fact => fact.Order == order));
        return order is null ? null : uses.Select(posted => (long?)posted.Entry.Number).FirstOrDefault();
    }

    /// <summary>What is kept of forms.</summary>
    public Dictionary<string, string> Drafts { get; } = [];

    public string? Draft(string form)
    {
        Check();
        return Drafts.GetValueOrDefault(form);
    }

    public void Keep(string form, string? text)
    {
        Check();
        if (text is null)
            Drafts.Remove(form);
        else
            Drafts[form] = text;
    }

    public SheetStory? Story(string sheet, LocalDate asOf) => null;

    public IReadOnlyList<SheetFate> SheetsOf(string session, LocalDate asOf) => [];

    public IReadOnlyList<PlaceHeld> PlacesOf(string item, LocalDate asOf) => [];

    public IReadOnlyList<Untouched> UntouchedSince(LocalDate day, LocalDate asOf) => [];

    private static int At(long number) => (int)number - 1;

    private static ItemMove Moved(JournalEntry entry, string container, Movement move) =>
        new(entry.Number, entry.Date, entry.Summary, container, move.Lot, move.Quantity, move.Value);

    private static Movement Out(Movement move) =>
        move with { Quantity = -move.Quantity, Value = Money.Zero - move.Value };

    private IEnumerable<T> Facts<T>()
        where T : PostedFact => Standing.SelectMany(posted => posted.Posting.Facts.OfType<T>());

    private IEnumerable<JournalEntry> Entries => _posted.Select(posted => posted.Entry);

    private IEnumerable<Written> Standing => _posted.Where(posted => posted.Entry is { Undoes: null, UndoneBy: null });

    private void Check()
    {
        if (Trouble is not null)
            throw new LedgerUnavailableException(Trouble);
    }

    private SessionRecord Record(Written posted)
    {
        var held = posted.Posting.Facts.OfType<SessionHeld>().Single();
        var items = Facts<LotReceived>().ToDictionary(fact => fact.Lot.Id, fact => fact.Lot.Item);
        var bath = held.Bath is { } place
            ? Facts<BathMixed>().Single(fact => fact.Bath.Place == place).Bath.Code
            : null;
        var lines = posted.Posting.Facts.OfType<SheetsDeveloped>()
            .Select(fact => new SessionSheets(items[fact.Lot], fact.Sheets, fact.Area, fact.Cost,
                fact.Group, fact.Fate, fact.Note));
        return new(
            posted.Entry.Number, held.Session, posted.Entry.Date, held.Process.Name, bath,
            held.Developer, posted.Entry.Note, [.. lines]);
    }

    private sealed record Written(JournalEntry Entry, Posting Posting);
}
