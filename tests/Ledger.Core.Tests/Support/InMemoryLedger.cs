using Ledger.Core.Journal.Rules;

namespace Ledger.Core.Tests.Support;

/// <summary>
/// A ledger in lists: the rules decide, the holdings follow. It stands in for the file in the tests of the rules.
/// </summary>
internal sealed class InMemoryLedger(LocalDate today) : IPast
{
    private readonly List<Written> _written = [];

    public InMemoryLedger()
        : this(Some.Today)
    {
    }

    public Holdings Holdings { get; private set; } = new(today);

    public long Last => _written.Count;

    public IReadOnlyList<Posting> All => [.. _written.Select(written => written.Posting)];

    /// <summary>The postings that were not reversed and are no undos.</summary>
    public IEnumerable<Posting> Standing =>
        _written.Where(written => written.Stands).Select(written => written.Posting);

    public Decision Preview(Entry entry) => PostingRules.Decide(entry, Holdings, this, today);

    public Posting Post(Entry entry) => Preview(entry) switch
    {
        Accepted accepted => Write(accepted.Posting),
        Refused refused => throw new InvalidOperationException($"refused: {refused.Refusal.Sentence}"),
        _ => throw new InvalidOperationException("the rules decided nothing"),
    };

    public Core.Costing.LotPrice? LastPrice(string item, LocalDate by) =>
        Standing.SelectMany(posting => posting.Facts).OfType<LotReceived>()
            .Select(received => received.Lot)
            .Where(lot => lot.Item.Equals(item, StringComparison.OrdinalIgnoreCase) && lot.ReceivedOn <= by
                && lot.Cost > Money.Zero)
            .Select(lot => new Core.Costing.LotPrice(lot.Item, lot.ReceivedOn, lot.Id, lot.Quantity, lot.Cost, null))
            .LastOrDefault();

    public Posting Post(string entry) => Post(EntryWords.Read(entry));

    public Refusal Refuse(string entry) => Assert.IsType<Refused>(Preview(EntryWords.Read(entry))).Refusal;

    /// <summary>What every real place holds of every lot, added up from the movements alone.</summary>
    public Dictionary<(PlaceId Place, LotId Lot), (long Quantity, Money Value)> Balances()
    {
        var balances = new Dictionary<(PlaceId, LotId), (long Quantity, Money Value)>();
        foreach (var movement in All.SelectMany(posting => posting.Movements))
        {
            Change(movement.From, movement.Lot, -movement.Quantity, Money.Zero - movement.Value);
            Change(movement.To, movement.Lot, movement.Quantity, movement.Value);
        }

        return balances.Where(balance => balance.Value != (0, Money.Zero)).ToDictionary();

        void Change(PlaceId place, LotId lot, long quantity, Money value)
        {
            if (!place.IsOnHand)
                return;
            var before = balances.GetValueOrDefault((place, lot));
            balances[(place, lot)] = (before.Quantity + quantity, before.Value + value);
        }
    }

    /// <summary>The same from the holdings.</summary>
    public Dictionary<(PlaceId Place, LotId Lot), (long Quantity, Money Value)> Held()
    {
        var held = Holdings.Containers.ToDictionary(
            container => (container.Place, container.Lot.Id), container => (container.Held.Base, container.Value));
        foreach (var bath in Holdings.Baths)
            foreach (var lot in bath.Contents.GroupBy(content => content.Lot))
                held.Add(
                    (bath.Place, lot.Key),
                    (lot.Sum(content => content.Quantity.Base), new(lot.Sum(content => content.Value.Millionths))));
        return held;
    }

    public JournalEntry? Find(long number)
    {
        if (number < 1 || number > _written.Count)
            return null;
        var (posting, reversedBy) = (_written[(int)number - 1].Posting, _written[(int)number - 1].UndoneBy);
        return new(
            number, posting.Entry.Key, posting.Entry.Kind, posting.Entry.Date, default, posting.Summary,
            posting.Entry.Note, (posting.Entry as Undo)?.Number, reversedBy);
    }

    public JournalEntry? Find(string key) => Find(_written.FindIndex(written => written.Posting.Entry.Key == key) + 1);

    public IReadOnlyList<Movement> MovementsOf(long number) => _written[(int)number - 1].Posting.Movements;

    public bool HasSession(string session) => Facts<SessionHeld>().Any(held => Same(held.Session, session));

    public bool HasBath(string bath) => Facts<BathMixed>().Any(mixed => Same(mixed.Bath.Code, bath));

    public long? FirstUseOfBathMixedBy(long number)
    {
        var places = _written[(int)number - 1].Posting.Facts.OfType<BathMixed>().Select(mixed => mixed.Bath.Place)
            .ToHashSet();
        var use = _written.FindIndex(
            written => written.Stands
                && written.Posting.Facts.OfType<BathWorked>().Any(worked => places.Contains(worked.Place)));
        return use < 0 ? null : use + 1;
    }

    public int? FreshClearing(string film, PlaceId bath) =>
        Facts<ClearingTested>().LastOrDefault(test => test.IsFresh && Same(test.Film, film))?.Tenths;

    public bool HasOrder(string order) => Facts<OrderPlaced>().Any(placed => Same(placed.Order.Code, order));

    public long? FirstUseOfOrderPlacedBy(long number)
    {
        var orders = _written[(int)number - 1].Posting.Facts.OfType<OrderPlaced>().Select(placed => placed.Order.Code)
            .ToHashSet();
        var use = _written.FindIndex(written => written.Stands && written.Posting.Facts.Any(fact => fact switch
        {
            OrderDelivered delivered => orders.Contains(delivered.Order),
            OrderLineChanged changed => orders.Contains(changed.Order),
            _ => false,
        }));
        return use < 0 ? null : use + 1;
    }

    private static bool Same(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);

    private IEnumerable<TFact> Facts<TFact>() => Standing.SelectMany(posting => posting.Facts).OfType<TFact>();

    private Posting Write(Posting posting)
    {
        _written.Add(new(posting));
        if (posting.Entry is Undo undo)
        {
            _written[(int)undo.Number - 1].UndoneBy = Last;
            ReadAnew();
        }
        else
            Holdings.Apply(posting);
        return posting;
    }

    /// <summary>
    /// An undo brings back what is no longer held, so the holdings are made again: what stands is told, then the places
    /// hold what all movements leave there, as the file tells it. Moved one by one, a box could stand empty in between
    /// and be forgotten, where what was taken back had filled it.
    /// </summary>
    private void ReadAnew()
    {
        var before = Holdings;
        Holdings = new(today) { LastPlace = before.LastPlace, LastLot = before.LastLot };
        foreach (var posting in Standing)
            Holdings.Apply(posting with { Movements = [] });
        var held = Balances();
        foreach (var container in Holdings.Containers.ToList())
        {
            var (quantity, value) = held.GetValueOrDefault((container.Place, container.Lot.Id));
            Holdings.Put(container with { Held = container.Held with { Base = quantity }, Value = value });
        }

        foreach (var bath in Holdings.Baths.ToList())
            Holdings.Put(Filled(bath, held));
        foreach (var item in before.Items)
            Holdings.SetLastContainerNumber(item.Code, before.LastContainerNumber(item.Code));
    }

    private Bath Filled(Bath bath, Dictionary<(PlaceId Place, LotId Lot), (long Quantity, Money Value)> held)
    {
        var contents = held.Where(balance => balance.Key.Place == bath.Place).OrderBy(balance => balance.Key.Lot.Value)
            .Select(balance => new BathContent(
                balance.Key.Lot, new(balance.Value.Quantity, Holdings.Item(bath.Item)!.Unit), balance.Value.Value))
            .ToList();
        return bath with
        {
            Contents = contents,
            Value = contents.Aggregate(Money.Zero, (sum, content) => sum + content.Value),
        };
    }

    private sealed class Written(Posting posting)
    {
        public Posting Posting => posting;

        public long? UndoneBy { get; set; }

        public bool Stands => UndoneBy is null && posting.Entry is not Undo;
    }
}
