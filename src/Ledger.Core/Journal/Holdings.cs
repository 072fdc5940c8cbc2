using Ledger.Core.Baths;
using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>
/// What the ledger holds on one day: the items, the containers that are not empty, the baths in use, the processes. Its
/// size follows the shelf, not the history and not the catalogue: an item of which nothing is there, and a holder in
/// which nothing is, are looked up when they are asked for. It is read from the file, then kept up to date by applying
/// each posting.
/// </summary>
public sealed class Holdings
{
    private readonly Dictionary<string, Item> _items = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, Process> _processes = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<PlaceId, Container> _containers = [];
    private readonly Dictionary<string, List<PlaceId>> _containersByItem = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, PlaceId> _containersByCode = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<PlaceId, Bath> _baths = [];
    private readonly Dictionary<string, PlaceId> _bathsByCode = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, OpenPlan> _plans = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, long> _lastContainerNumber = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<(ItemId Item, string Formula), KeepingLimits> _formulas = [];
    private readonly Dictionary<string, WasteJug> _jugs = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<PlaceId, Suspicion> _suspectPlaces = [];
    private readonly Dictionary<LotId, Suspicion> _suspectLots = [];
    private readonly Dictionary<(NoticeKind Notice, string About), Snooze> _snoozes = [];
    private readonly HashSet<string> _inUse = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<ItemKind> _kindsKnown = [];
    private Settings _settings = Settings.Default;
    private IItemCatalogue? _others;
    private IReadOnlyList<Item>? _sortedItems;
    private IReadOnlyList<Item>? _sortedInUse;
    private IReadOnlyList<ItemName>? _names;

    /// <summary>Empty holdings.</summary>
    /// <param name="asOf">The day they stand for.</param>
    /// <param name="items">Where the items are that are not put in; null where there are no others.</param>
    /// <param name="holders">Where the holders are that are not put in; null where there are no others.</param>
    public Holdings(LocalDate asOf, IItemCatalogue? items = null, IHolderCatalogue? holders = null)
    {
        AsOf = asOf;
        (_others, LastItem) = (items, items?.LastItem ?? 0);
        Formats = items?.Formats ?? new();
        Film = new(holders);
    }

    /// <summary>The day they stand for.</summary>
    public LocalDate AsOf { get; }

    /// <summary>The ledger's settings.</summary>
    public Settings Settings
    {
        get => _settings;
        set
        {
            _settings = value;
            foreach (var container in _containers.Values.ToList())
                _containers[container.Place] = Kept(container);
        }
    }

    /// <summary>The formats and the areas that they count with.</summary>
    public FormatTable Formats { get; }

    /// <summary>What is on order, and what is known of coming prices.</summary>
    public OrderBook Orders { get; } = new();

    /// <summary>The holders, the boxes of exposed sheets, and the sheets in them.</summary>
    public FilmRegister Film { get; }

    /// <summary>The highest number of a place so far.</summary>
    public long LastPlace { get; set; } = Places.FirstFree - 1;

    /// <summary>The highest number of a lot so far.</summary>
    public long LastLot { get; set; }

    /// <summary>The highest number of an item so far.</summary>
    public long LastItem { get; private set; }

    /// <summary>All items by name: every one is looked up for that.</summary>
    public IEnumerable<Item> Items
    {
        get
        {
            foreach (var other in _others?.Items(null) ?? [])
                _ = Known(other);
            _others = null;
            return _sortedItems ??= Sorted(_items.Values);
        }
    }

    /// <summary>The items of a kind by name.</summary>
    public IEnumerable<Item> ItemsOf(ItemKind kind)
    {
        if (_others is not null && _kindsKnown.Add(kind))
            foreach (var other in _others.Items(kind))
                _ = Known(other);
        return Sorted(_items.Values.Where(item => item.Kind == kind));
    }

    /// <summary>
    /// The items of which something can be said beside their definition, by name: what was ever there or ordered, is
    /// part of a process, or has a minimum. Nothing can be said of any other; some of those may be among them.
    /// </summary>
    public IEnumerable<Item> ItemsInUse => _sortedInUse ??= Sorted(_inUse.Select(Item).OfType<Item>());

    /// <summary>The names of all items, in the order of <see cref="Items"/>; none is looked up for that.</summary>
    public IReadOnlyList<ItemName> ItemNames => _names ??=
    [
        .. _items.Values.Select(ItemName.Of)
            .UnionBy(_others?.Names() ?? [], item => item.Code, StringComparer.OrdinalIgnoreCase)
            .OrderBy(item => item.Kind).ThenBy(item => item.Code, StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>The codes of all items, in the same order.</summary>
    public IEnumerable<string> ItemCodes => ItemNames.Select(item => item.Code);

    /// <summary>All processes by name.</summary>
    public IEnumerable<Process> Processes =>
        _processes.Values.OrderBy(process => process.Name, StringComparer.OrdinalIgnoreCase);

    /// <summary>All containers that are not empty, in the order of their arrival.</summary>
    public IEnumerable<Container> Containers => _containers.Values.OrderBy(container => container.Place.Value);

    /// <summary>All baths in use, in the order of mixing.</summary>
    public IEnumerable<Bath> Baths => _baths.Values.OrderBy(bath => bath.Place.Value).Select(WithSettings);

    /// <summary>The waste jugs that were not handed over, in the order of their start.</summary>
    public IEnumerable<WasteJug> Jugs => _jugs.Values.OrderBy(jug => jug.Place.Value);

    /// <summary>The waste jug of that code that was not handed over, or null.</summary>
    public WasteJug? Jug(string code) => _jugs.GetValueOrDefault(code.Trim());

    /// <summary>The plans that are open, the next one first.</summary>
    public IEnumerable<OpenPlan> Plans =>
        _plans.Values.OrderBy(plan => plan.On).ThenBy(plan => plan.Name, StringComparer.OrdinalIgnoreCase);

    /// <summary>The open plan of that name, or null.</summary>
    public OpenPlan? Plan(string name) => _plans.GetValueOrDefault(name.Trim());

    /// <summary>What is quiet on the day; null where a notice is shown.</summary>
    public Snooze? SnoozeOf(NoticeKind notice, string about) =>
        _snoozes.TryGetValue((notice, about.ToUpperInvariant()), out var snooze) && snooze.Until > AsOf ? snooze : null;

    /// <summary>Whether anything was ever snoozed.</summary>
    public bool HasSnoozes => _snoozes.Count > 0;

    /// <summary>Puts in that a notice is quiet, in place of what was said of it before.</summary>
    public void Put(Snooze snooze) => _snoozes[(snooze.Notice, snooze.About.ToUpperInvariant())] = snooze;

    /// <summary>The formats that there is film in, or paper, the smallest first.</summary>
    public IReadOnlyList<Format> FormatsOf(BathMaterial material) =>
    [
        .. ItemsOf(ItemKind.Film).Where(item => item.IsPaper == (material == BathMaterial.Paper))
            .Select(item => item.Format)
            .OfType<Format>().DistinctBy(format => format.Code).OrderBy(format => format.Area),
    ];

    /// <summary>The item of that code, or null.</summary>
    public Item? Item(string code) => _items.GetValueOrDefault(code.Trim()) ?? Known(_others?.Item(code.Trim()));

    /// <summary>Whether something of that name is defined: what a definition of it says changes it.</summary>
    /// <param name="kind">The kind of entry that defines it.</param>
    /// <param name="name">Its name.</param>
    public bool Defines(string kind, string name) => name.Trim() is { Length: > 0 } known && kind switch
    {
        "item" => Item(known) is not null,
        "process" => Process(known) is not null,
        "holder" => Film.Holder(known) is not null,
        "format" => Formats.TryFind(known, out _),
        "setting" => true,
        _ => false,
    };

    /// <summary>The process of that name, or null.</summary>
    public Process? Process(string name) => _processes.GetValueOrDefault(name.Trim());

    /// <summary>The bath in use of that name, or null.</summary>
    public Bath? Bath(string code) => _bathsByCode.TryGetValue(code.Trim(), out var place)
        ? WithSettings(_baths[place])
        : null;

    /// <summary>The container of that code that is not empty, or null.</summary>
    public Container? Container(string code) =>
        _containersByCode.TryGetValue(code.Trim(), out var place) ? _containers[place] : null;

    /// <summary>The container that is not empty at that place, or null.</summary>
    public Container? Container(PlaceId place) => _containers.GetValueOrDefault(place);

    /// <summary>The bath in use at that place, or null.</summary>
    public Bath? Bath(PlaceId place) => _baths.TryGetValue(place, out var bath) ? WithSettings(bath) : null;

    /// <summary>Why a sheet is under suspicion: its delivery is, or the box that it came out of; null for
    /// nothing.</summary>
    public Suspicion? SuspicionOf(Sheet sheet) => _suspectPlaces.GetValueOrDefault(
        sheet.Box) ?? _suspectLots.GetValueOrDefault(sheet.Lot.Id);

    /// <summary>The sheets in holders and boxes of exposed sheets whose film is under suspicion.</summary>
    public IEnumerable<Sheet> SuspectSheets => Film.Sheets.Where(sheet => SuspicionOf(sheet) is not null);

    /// <summary>The containers of an item that are not empty, in the order in which they are reached for.</summary>
    public IEnumerable<Container> ContainersOf(string item) => Draw.Reach(
        _containersByItem.GetValueOrDefault(item, []).Select(place => _containers[place]));

    /// <summary>How much of an item is in its containers.</summary>
    public Quantity OnHand(Item item) => item.Of(
        _containersByItem.GetValueOrDefault(item.Code, []).Sum(place => _containers[place].Held.Base));

    /// <summary>The running number that an item's last container had.</summary>
    public long LastContainerNumber(string item)
    {
        _ = Item(item);
        return _lastContainerNumber.GetValueOrDefault(item);
    }

    /// <summary>The bath in use that is second after this one, or null.</summary>
    public Bath? SecondAfter(Bath first) =>
        _baths.Values.FirstOrDefault(bath => first.Code.Equals(bath.PairedWith,
            StringComparison.OrdinalIgnoreCase)) is { } second
            ? second with { Limits = LimitsOf(second, isFirst: false) } : null;

    /// <summary>Whether a bath is second in a pair now: the one before it is still in use.</summary>
    public bool IsSecond(Bath bath) => bath.PairedWith is { } first && _bathsByCode.ContainsKey(first.Trim());

    /// <summary>The baths that count their work now: alone or first of a pair.</summary>
    public IEnumerable<Bath> WorkingBaths => Baths.Where(bath => !IsSecond(bath));

    /// <summary>Raises suspicion of a lot, or lifts it with null: of all that is left of it and of what comes of it
    /// later.</summary>
    public void Suspect(LotId lot, Suspicion? suspicion)
    {
        Set(_suspectLots, lot, suspicion);
        foreach (var container in _containers.Values.Where(container => container.Lot.Id == lot).ToList())
            _containers[container.Place] = Kept(container);
    }

    /// <summary>Raises suspicion of a box, a bottle or a bath, or lifts it with null.</summary>
    public void Suspect(PlaceId place, Suspicion? suspicion)
    {
        Set(_suspectPlaces, place, suspicion);
        if (_containers.TryGetValue(place, out var container))
            _containers[place] = Kept(container);
        else if (_baths.TryGetValue(place, out var bath))
            _baths[place] = bath with { Suspicion = suspicion };
    }

    /// <summary>Why a place is under suspicion; null for nothing.</summary>
    public Suspicion? SuspicionOf(PlaceId place) => _suspectPlaces.GetValueOrDefault(place);

    /// <summary>Why a lot is under suspicion; null for nothing.</summary>
    public Suspicion? SuspicionOf(LotId lot) => _suspectLots.GetValueOrDefault(lot);

    /// <summary>Puts a format in; what is of it counts with its area from then on.</summary>
    public void Put(Format format)
    {
        Formats.Put(format);
        foreach (var item in _items.Values.Where(item => item.Format == format).ToList())
            Define(item with { Format = format });
    }

    /// <summary>Puts an item in, or in place of the one that had its code.</summary>
    public void Put(Item item)
    {
        _ = Item(item.Code);
        Define(item);
        Use(item.Code);
        _names = null;
    }

    /// <summary>Puts an item in as it stands in the catalogue: something can be said of it.</summary>
    public void Put(CataloguedItem item)
    {
        _ = Known(item);
        Use(item.Item.Code);
    }

    /// <summary>An item that was looked up, unless it is known already: what is known is the newer.</summary>
    private Item? Known(CataloguedItem? found)
    {
        if (found is null)
            return null;
        if (_items.TryGetValue(found.Item.Code, out var known))
            return known;
        Define(found.Item);
        SetLastContainerNumber(found.Item.Code, found.LastContainer);
        foreach (var (formula, limits) in found.EarlierFormulas)
            SetFormula(found.Item.Id, formula, limits);
        return found.Item;
    }

    private void Use(string item)
    {
        if (_inUse.Add(item))
            _sortedInUse = null;
    }

    private static IReadOnlyList<Item> Sorted(IEnumerable<Item> items) =>
        [.. items.OrderBy(item => item.Kind).ThenBy(item => item.Code, StringComparer.OrdinalIgnoreCase)];

    private void Define(Item item)
    {
        _items[item.Code] = item;
        (_sortedItems, _sortedInUse) = (null, null);
        LastItem = Math.Max(LastItem, item.Id.Value);
        SetFormula(item.Id, item.Formula, item.Keeping);
        if (!_containersByItem.TryGetValue(item.Code, out var places))
            return;
        foreach (var place in places)
            _containers[place] = Kept(_containers[place]);
    }

    /// <summary>Remembers how long a formula version of an item keeps.</summary>
    public void SetFormula(ItemId item, string formula, KeepingLimits limits) => _formulas[(item, formula)] = limits;

    /// <summary>Puts a waste jug in, or in place of what was known of it.</summary>
    public void Put(WasteJug jug)
    {
        _jugs[jug.Code] = jug;
        LastPlace = Math.Max(LastPlace, jug.Place.Value);
    }

    /// <summary>A bath with what the settings and its item say of its limits now.</summary>
    public Bath WithSettings(Bath bath)
    {
        var item = Item(bath.Item);
        return bath with
        {
            Limits = LimitsOf(bath, isFirst: SecondAfterExists(bath)),
            OtherCapacities = item?.OtherCapacities ?? [],
            ReplenisherPer80SquareInches = bath.Role == ItemRole.Developer ? item?.ReplenisherPer80SquareInches : null,
            ReplenisherCeilingPercent = item?.ReplenisherCeilingPercent ?? ReplenishmentReading.CommonCeilingPercent,
            Indicator = item?.Indicator,
        };
    }

    /// <summary>Puts a process in, or in place of the one that had its name.</summary>
    public void Put(Process process)
    {
        _processes[process.Name] = process;
        foreach (var step in process.Steps)
            if (step.Item is { } item)
                Use(item);
    }

    /// <summary>Puts a plan in, or in place of the open one that had its name.</summary>
    public void Put(OpenPlan plan) => _plans[plan.Name] = plan;

    /// <summary>Puts a bath in, or in place of what was known of it.</summary>
    public void Put(Bath bath)
    {
        _baths[bath.Place] = bath;
        _bathsByCode[bath.Code] = bath.Place;
        LastPlace = Math.Max(LastPlace, bath.Place.Value);
    }

    /// <summary>Puts a container in, or in place of what was known of it; an empty one is taken out.</summary>
    public void Put(Container container)
    {
        var ofItem = _containersByItem.TryGetValue(container.Lot.Item, out var known)
            ? known
            : _containersByItem[container.Lot.Item] = [];
        if (container.Held.IsZero)
        {
            _containers.Remove(container.Place);
            _containersByCode.Remove(container.Code);
            ofItem.Remove(container.Place);
            return;
        }

        var kept = Kept(container);
        if (!_containers.ContainsKey(container.Place))
            ofItem.Add(container.Place);
        _containers[container.Place] = kept;
        Use(container.Lot.Item);
        _containersByCode[container.Code] = container.Place;
        LastPlace = Math.Max(LastPlace, container.Place.Value);
        LastLot = Math.Max(LastLot, container.Lot.Id.Value);
    }

    /// <summary>Remembers the running number of an item's last container.</summary>
    public void SetLastContainerNumber(string item, long number) =>
        _lastContainerNumber[item] = Math.Max(number, _lastContainerNumber.GetValueOrDefault(item));

    /// <summary>
    /// Brings the holdings up to date with a posting. An undo is not applied this way: it brings back what is no longer
    /// held here, so the holdings are read again after it.
    /// </summary>
    public void Apply(Posting posting)
    {
        foreach (var fact in posting.Facts)
        {
            Apply(fact, posting.Entry.Date);
            Orders.Apply(fact);
        }

        foreach (var movement in posting.Movements)
        {
            Change(movement.From, movement.Lot, -movement.Quantity, Money.Zero - movement.Value);
            Change(movement.To, movement.Lot, movement.Quantity, movement.Value);
        }

        foreach (var place in posting.Movements.SelectMany(movement => new[] { movement.From, movement.To }).Distinct())
            NoteHalfEmpty(place, posting.Entry.Date);
        foreach (var over in posting.Facts.OfType<JugHandedOver>())
            _jugs.Remove(over.Code);
        foreach (var ended in posting.Facts.OfType<BathEnded>())
        {
            _baths.Remove(ended.Place);
            _bathsByCode.Remove(ended.Code);
        }
    }

    private void Apply(PostedFact fact, LocalDate date)
    {
        switch (fact)
        {
            case ItemDefined defined:
                Put(defined.Item);
                break;
            case FormatDefined defined:
                Put(defined.Format);
                break;
            case ProcessDefined defined:
                Put(defined.Process);
                break;
            case SettingChanged changed:
                Settings = changed.Settings;
                break;
            case ContainerArrived arrived:
                PutEmpty(new(arrived.Place, arrived.Code, arrived.Lot, arrived.Size, arrived.Size with { Base = 0 },
                    Money.Zero, null));
                SetLastContainerNumber(arrived.Lot.Item, arrived.Number);
                break;
            case ContainerOpened opened when _containers.TryGetValue(opened.Place, out var container):
                _containers[opened.Place] = container with
                {
                    OpenedOn = container.OpenedOn is { } before && before < date ? before : date,
                };
                break;
            case OrderPlaced placed:
                foreach (var line in placed.Order.Lines)
                    Use(line.Item);
                break;
            case NoticeSnoozed snoozed:
                Put(snoozed.Snooze);
                break;
            case PlanMade made:
                Put(made.Plan);
                break;
            case PlanEnded ended:
                _plans.Remove(ended.Plan);
                break;
            case BathMixed mixed:
                Put(mixed.Bath);
                break;
            case FilmFact film:
                FilmChange.Apply(film, date, this);
                break;
            case BathWorked { IsFirst: true } worked when _baths.TryGetValue(worked.Place, out var bath):
                _baths[worked.Place] = bath with
                {
                    Worked = bath.Worked + worked.Area,
                    WorkedWeighted = bath.WorkedWeighted + worked.Weighted,
                    FilledOn = bath.FilledOn
                        ?? (bath.WorkedWeighted + worked.Weighted >= bath.TotalCapacity ? date : null),
                };
                break;
            case BathFact learned when _baths.TryGetValue(learned.Place, out var bath):
                _baths[learned.Place] = BathLog.With(bath, learned, date);
                break;
            case JugStarted started:
                Put(started.Jug);
                break;
            case LotSuspected suspected:
                Suspect(suspected.Lot, suspected.IsRaised ? new(date, suspected.Reason) : null);
                break;
            case PlaceSuspected suspected:
                Suspect(suspected.Place, suspected.IsRaised ? new(date, suspected.Reason) : null);
                break;
            case JugFilled filled when _jugs.Values.FirstOrDefault(jug => jug.Place == filled.Jug) is { } jug:
                Put(jug with { Fills = [.. jug.Fills, new(date, filled.Volume, filled.What, filled.Material)] });
                break;
        }
    }

    /// <summary>
    /// A container's life below half begins on the day it falls there, and ends when a count finds it fuller.
    /// </summary>
    private void NoteHalfEmpty(PlaceId place, LocalDate date)
    {
        if (_containers.TryGetValue(place, out var container))
            _containers[place] = container with { HalfEmptyOn = container.IsBelowHalf
                ? container.HalfEmptyOn ?? date
                : null };
    }

    private static void Set<T>(Dictionary<T, Suspicion> known, T of, Suspicion? suspicion)
        where T : notnull
    {
        if (suspicion is null)
            known.Remove(of);
        else
            known[of] = suspicion;
    }

    /// <summary>A container with the limits of its formula version, the time that it has spent in the cold, and what is
    /// suspected of it.</summary>
    private Container Kept(Container container) => Item(container.Lot.Item) is { } item
        ? container with
        {
            OwnSuspicion = SuspicionOf(container.Place),
            Lot = container.Lot with { Suspicion = SuspicionOf(container.Lot.Id) },
            FormulaLimits = container.Lot.Formula == item.Formula
                ? null
                : _formulas.GetValueOrDefault((item.Id, container.Lot.Formula)),
            Cold = new(
                [.. container.Places.Select(place => new ColdStay(place.Since,
                    _settings.ColdDaysAYear(item, place.Name)))], AsOf),
        }
        : container;

    private bool SecondAfterExists(Bath bath) =>
        _baths.Values.Any(other => bath.Code.Equals(other.PairedWith, StringComparison.OrdinalIgnoreCase));

    private BathLimits LimitsOf(Bath bath, bool isFirst) => new(
        _settings.ExhaustedMultipleThousandths,
        _settings.FixingMultipleThousandths,
        bath.Material == BathMaterial.Film ? _settings.SilverLimitFilm
            : isFirst ? _settings.SilverLimitPaperFirst ?? _settings.SilverLimitPaper
            : _settings.SilverLimitPaper);

    private void PutEmpty(Container container)
    {
        Put(container with { Held = container.Size });
        _containers[container.Place] = container;
    }

    /// <summary>What a bath holds with more of a lot: one amount of each lot, as it is read from the file.</summary>
    private List<BathContent> Poured(Bath bath, LotId lot, long quantity, Money value)
    {
        var known = bath.Contents.FirstOrDefault(content => content.Lot == lot);
        var whole = known is null ? new BathContent(lot, new(quantity, Item(bath.Item)!.Unit), value)
            : known with { Quantity = known.Quantity with { Base = known.Quantity.Base + quantity },
                Value = known.Value + value };
        return [.. bath.Contents.Where(content => content.Lot != lot).Append(whole)
            .OrderBy(content => content.Lot.Value)];
    }

    private void Change(PlaceId place, LotId lot, long quantity, Money value)
    {
        if (_containers.TryGetValue(place, out var container))
            Put(container with { Held = container.Held with { Base = container.Held.Base + quantity },
                Value = container.Value + value });
        else if (_baths.TryGetValue(place, out var bath) && quantity > 0)
            _baths[place] = bath with
            {
                Value = bath.Value + value,
                Contents = Poured(bath, lot, quantity, value),
            };
    }
}
