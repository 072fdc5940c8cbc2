using Ledger.Core.Baths;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>A posting while the rules put it together. Several draws on one container see each other.</summary>
internal sealed class Draft(Entry entry, Holdings holdings, IPast past, GivenNames given, bool isReplay)
{
    private readonly List<Movement> _movements = [];
    private readonly List<PostedFact> _facts = [];
    private readonly List<string> _remarks = [];
    private readonly List<Effect> _shown = [];
    private readonly Dictionary<PlaceId, Container> _touched = [];
    private readonly List<string> _doubts = [];
    private readonly Dictionary<string, (int Count, long Last)> _containers = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<GivenName> _names = [];
    private FilmDraft? _film;
    private long _newPlaces;
    private long _newLots;

    public Entry Entry { get; private set; } = entry;

    public LocalDate Date => Entry.Date;

    public Holdings Holdings => holdings;

    public IPast Past => past;

    public FilmDraft Film => _film ??= new(this);

    public MeasureStyle Style => holdings.Settings.Style;

    public string Summary { get; set; } = "";

    /// <summary>Containers that are reached for before the others of their item, in this order.</summary>
    public IReadOnlyList<string> DrawFirst { get; set; } = [];

    public Item Item(string code) =>
        holdings.Item(code) ?? throw RefusedException.Unknown($"item \"{code}\"", holdings.ItemCodes);

    public Bath Bath(string code)
    {
        var bath = holdings.Bath(code) ?? throw RefusedException.Unknown($"bath \"{code}\" in use",
            holdings.Baths.Select(bath => bath.Code));
        Require.That(bath.MixedOn <= Date,
            $"bath {bath.Code} was mixed on {Dates.Text(bath.MixedOn)}, after {Dates.Text(Date)}; date the entry then "
                + "or later");
        return bath;
    }

    public Container Container(string code)
    {
        var container = holdings.Container(code) ?? throw new RefusedException(
            RefusalKind.Unknown, $"there is no container \"{code}\" that holds anything; `show shelf` lists them");
        Require.That(
            container.Lot.ReceivedOn <= Date,
            $"{container.Code} came on {Dates.Text(container.Lot.ReceivedOn)}, after {Dates.Text(Date)}; date the "
                + "entry then or later");
        return Now(container);
    }

    /// <summary>The container at a place, as it stands after the draws so far.</summary>
    public Container Container(PlaceId place) => _touched.GetValueOrDefault(place) ?? holdings.Container(place)!;

    public WasteJug Jug(string code)
    {
        var jug = holdings.Jug(code) ?? throw RefusedException.Unknown($"jug \"{code}\"",
            holdings.Jugs.Select(jug => jug.Code));
        Require.That(jug.StartedOn <= Date,
            $"jug {jug.Code} was started on {Dates.Text(jug.StartedOn)}, after {Dates.Text(Date)}; date the entry then "
                + "or later");
        return jug;
    }

    public PlaceId NewPlace() => new(holdings.LastPlace + ++_newPlaces);

    public LotId NewLot() => new(holdings.LastLot + ++_newLots);

    /// <summary>What it would establish, as far as it is put together.</summary>
    public IReadOnlyList<PostedFact> Facts => _facts;

    public void Add(PostedFact fact) => _facts.Add(fact);

    public void Add(Movement movement) => _movements.Add(movement);

    /// <summary>Says what changes where neither a container nor a bath's work does.</summary>
    public void Show(string what, string before, string after) => _shown.Add(new(what, before, after));

    public void Remark(string remark) => _remarks.Add(remark);

    /// <summary>The number of an item's next container.</summary>
    public long NextContainerNumber(string item)
    {
        var (count, last) = _containers.GetValueOrDefault(item, (0, holdings.LastContainerNumber(item)));
        var number = Name($"container {item} {count + 1}", GivenName.Containers(item), last + 1);
        _containers[item] = (count + 1, Math.Max(last, number));
        return number;
    }

    /// <summary>
    /// The name that was given for something when the entry was decided before; otherwise the next one.
    /// </summary>
    public long Name(string slot, string series, long next)
    {
        var number = given.Find(slot) ?? next;
        _names.Add(new(slot, series, number));
        return number;
    }

    /// <summary>Puts down something unlikely, which <see cref="Settle"/> asks about.</summary>
    public void Doubt(string sentence) => _doubts.Add(sentence);

    /// <summary>
    /// Refuses what is doubtful, unless the user says that it is so anyway; then it is only remarked, as it is of an
    /// entry that is only decided once more.
    /// </summary>
    /// <param name="today">The day of recording.</param>
    public void Settle(LocalDate today)
    {
        if (isReplay)
            return;
        List<string> doubts = [.. _doubts.Concat(Slips.In(this, today)).Distinct()];
        if (doubts.Count > 0 && !Entry.Anyway)
            throw new RefusedException(RefusalKind.Doubtful,
                $"{string.Join("; ", doubts)}; if it is so, record it with --anyway");
        _remarks.AddRange(doubts);
    }

    /// <summary>An undo stands on the day of what it takes back, and knows its number.</summary>
    /// <summary>
    /// Says what was chosen for the entry because only one thing fitted: it stays so, whatever is recorded before the
    /// entry later.
    /// </summary>
    public void Complete(Entry chosen) => Entry = chosen;

    public void TakeBack(JournalEntry original) =>
        Entry = (Undo)Entry with { Date = original.Date, Number = original.Number, Reference = original.Key };

    /// <summary>The item's containers on the entry's date, as they stand after the draws so far.</summary>
    public IEnumerable<Container> ContainersOf(Item item) =>
        holdings.ContainersOf(item.Code).Where(container => container.Lot.ReceivedOn <= Date).Select(Now);

    /// <summary>
    /// Takes so much of an item, from the named container or from those that are used first. What is under suspicion is
    /// only discarded; a test may take from a container that it names.
    /// </summary>
    public IReadOnlyList<Draw> Take(
        Item item, Quantity wanted, string? container, PlaceId to, bool booksDifference, bool isForTest = false)
    {
        Require.Unit(item, wanted);
        Require.Positive(wanted, $"the quantity of {item.Code}");
        var isForUse = to != Places.Discarded && to != Places.LostOrGained;
        var sources = container is null ? InReach(item) : [Named(item, container)];
        if (Entry is not (Discard or StockCount))
            sources = container is not null ? [ForUse(sources[0], isForTest || Entry is ClearingTest)]
                : [.. sources.Where(IsMeant)];
        var drawable = isForUse && item.DeadVolume is not null && !booksDifference
            ? [.. sources.Select(source => source with { Held = source.Drawable(item.DeadVolume) })]
            : sources;
        var draws = Stock.Draw.AsGiven(drawable, wanted, out var missing).ToList();
        if (missing.IsZero && !ReferenceEquals(drawable, sources))
            draws = [.. draws.Select(draw => OfWhole(draw, sources))];
        if (!missing.IsZero)
        {
            if (!booksDifference || item.Unit is not (Unit.Millilitre or Unit.Gram) || sources.Count == 0)
                throw new RefusedException(RefusalKind.MoreThanHeld,
                    Shortage(item, wanted, wanted - missing, sources, to == Places.Discarded));
            var last = sources.LastOrDefault(source => !source.Held.IsZero) ?? sources[^1];
            Find(last, missing);
            Remark(
                $"{last.Code} held {missing.ToText(Style)} more than the book says; the difference is booked as found "
                    + "by a count");
            draws = [.. Stock.Draw.AsGiven(sources.Select(Now), wanted, out _)];
        }

        foreach (var draw in draws)
            Move(draw, to);
        return draws;
    }

    /// <summary>
    /// The item's containers in the order in which they are reached for: those named for this entry first.
    /// </summary>
    private List<Container> InReach(Item item) =>
    [
        .. Stock.Draw.Reach(ContainersOf(item)).OrderBy(container =>
        {
            for (var i = 0; i < DrawFirst.Count; i++)
                if (DrawFirst[i].Trim().Equals(container.Code, StringComparison.OrdinalIgnoreCase))
                    return i;
            return DrawFirst.Count;
        }),
    ];

    /// <summary>Whether a container may be used on the entry's date: nothing is suspected of it.</summary>
    public bool IsClear(Container container) => container.Suspicion is not { } suspicion || suspicion.Since > Date;

    /// <summary>What is under suspicion is passed over, unless it was named to be drawn from first: then that is
    /// refused.</summary>
    private bool IsMeant(Container container)
    {
        if (DrawFirst.Any(name => name.Trim().Equals(container.Code, StringComparison.OrdinalIgnoreCase)))
            SuspicionRules.RequireClear(container, this);
        return IsClear(container);
    }

    private Container ForUse(Container container, bool isForTest)
    {
        if (!isForTest)
            SuspicionRules.RequireClear(container, this);
        else if (!IsClear(container))
            Remark($"{container.Code} is {container.Suspicion!.Text}; a test may take from it");
        return container;
    }

    /// <summary>Books what was found in a container beyond the book, at what its lot cost.</summary>
    public void Find(Container container, Quantity more)
    {
        var value = new Money(Share.Nearest(container.Lot.Cost.Millionths, more.Base, container.Lot.Quantity.Base));
        Add(new Movement(container.Lot.Id, Places.LostOrGained, container.Place, more.Base, value));
        Touch(container with { Held = container.Held + more, Value = container.Value + value });
    }

    /// <summary>Moves a draw out of its container, which is open from then on.</summary>
    public void Move(Draw draw, PlaceId to)
    {
        var container = Now(draw.From);
        Add(new Movement(container.Lot.Id, container.Place, to, draw.Quantity.Base, draw.Cost));
        var isWhole = draw.Quantity == container.Size;
        if (to != Places.Discarded && to != Places.LostOrGained)
            DoubtTheCold(container);
        var isOpen = container.OpenedOn is { } opened && opened <= Date;
        if (!isOpen && !(isWhole && to == Places.Discarded))
        {
            Add(new ContainerOpened(container.Place));
            container = container with { OpenedOn = Date };
        }

        if (container.GoodUntil(Item(container.Lot.Item).Keeping) is { } good && good.IsPast(Date)
            && to != Places.Discarded)
            Remark(
                $"{container.Code} was good until {Dates.Text(good.Date)} ("
                    + $"{Keeping.KeepingRuleNames.Name(good.Rule)})");
        Touch(container.Less(draw.Quantity, draw.Cost));
    }

    /// <summary>
    /// Film that is opened, loaded or drawn straight from the freezer, or too soon after it, sweats and is lost: that
    /// is asked about.
    /// </summary>
    public void DoubtTheCold(Container container)
    {
        var item = Item(container.Lot.Item);
        if (item.Kind != ItemKind.Film)
            return;
        if (Keeping.ColdPlaces.Of(container.Storage) == Keeping.Coldness.Freezer)
            Doubt($"{container.Code} is kept in the {container.Storage}: film that is opened cold sweats and is lost, "
                + "so it warms up closed for "
                + $"{Counted.Of(Holdings.Settings.ThawHours(item, container.Storage, ""), "hour")} first; if it has "
                + "been taken out, record where it is kept now");
        else if (Warming.Of(container, item, Holdings.Settings) is { } warming && warming.IsDoubtfulOn(Date))
            Doubt($"{container.Code} came out of the cold on {Dates.Text(warming.Since)} and stays closed "
                + $"{warming.Text}, or it sweats");
    }

    public Posting ToPosting() => new(Entry, Summary, _movements, _facts, [.. Effects()],
        [.. _remarks.Distinct()]) { Names = _names };

    public void Touch(Container container) => _touched[container.Place] = container;

    /// <summary>A draw's cost is a share of all that the bottle holds, dead volume included.</summary>
    private static Draw OfWhole(Draw draw, List<Container> sources)
    {
        var whole = sources.Find(source => source.Place == draw.From.Place)!;
        return new(whole, draw.Quantity, whole.CostOf(draw.Quantity));
    }

    private Container Now(Container container) => _touched.GetValueOrDefault(container.Place, container);

    private Container Named(Item item, string code)
    {
        var container = Container(code);
        Require.That(
            container.Lot.Item.Equals(item.Code, StringComparison.OrdinalIgnoreCase),
            $"{container.Code} holds {container.Lot.Item}, not {item.Code}");
        return container;
    }

    private string Shortage(Item item, Quantity wanted, Quantity held, List<Container> sources, bool isThrownAway)
    {
        var where = sources.Count == 1 ? sources[0].Code : item.Code;
        var cure = item.Unit is Unit.Millilitre or Unit.Gram && sources.Count > 0
            ? isThrownAway
                ? CountFirst(wanted, sources)
                : "if it was really there, book the difference with --book-difference"
            : "record the delivery or a count first";
        if (!isThrownAway && ContainersOf(item).Where(container => !IsClear(container))
            .Select(container => container.Code).ToList() is { Count: > 0 } suspect)
            cure = $"{string.Join(", ", suspect)} {(suspect.Count == 1 ? "is" : "are")} under suspicion and not used "
                + $"until cleared; {cure}";
        if (item.DeadVolume is { } dead && sources.Exists(source => source.Held != source.Drawable(dead)))
            cure = $"{dead.ToText(Style)} in each bottle cannot be drawn; {cure}";
        return $"{where} holds {held.ToText(Style)} on {Dates.Text(Date)}, and {wanted.ToText(Style)} are wanted: "
            + $"{(wanted - held).ToText(Style)} short; {cure}";
    }

    private static string CountFirst(Quantity wanted, List<Container> sources) => sources.Count == 1
        ? $"if it was really there, count it first: `record count {sources[0].Code} {Scaled.ToText(wanted.Value, 6)}"
            + $"{wanted.Unit.Name()} --reason ...`"
        : "if it was really there, record a count first";

    private IEnumerable<Effect> Effects()
    {
        foreach (var after in _touched.Values)
        {
            var before = holdings.Container(after.Place);
            if (before?.Held != after.Held)
                yield return new(after.Code, before?.Held.ToText(Style) ?? "-", after.Held.ToText(Style));
            else if (before.OpenedOn != after.OpenedOn)
                yield return new(after.Code, "sealed", $"opened {Dates.Text(Date)}");
        }

        foreach (var worked in _facts.OfType<BathWorked>().Where(worked => worked.IsFirst))
        {
            var bath = holdings.Bath(worked.Place)!;
            var capacity = bath.TotalCapacity is { } area ? $" of {area.ToText(Style)}" : "";
            yield return new(
                bath.Code,
                bath.WorkedWeighted.ToText(Style) + capacity,
                (bath.WorkedWeighted + worked.Weighted).ToText(Style) + capacity);
        }

        foreach (var shown in _shown)
            yield return shown;
        foreach (var mixed in _facts.OfType<BathMixed>())
            yield return new(mixed.Bath.Code, "-", $"{mixed.Bath.WorkingVolume.ToText(Style)} {mixed.Bath.Dilution}");
        foreach (var ended in _facts.OfType<BathEnded>())
            yield return new(ended.Code, "in use", "discarded");
        foreach (var effect in _film?.Effects() ?? [])
            yield return effect;
    }
}
