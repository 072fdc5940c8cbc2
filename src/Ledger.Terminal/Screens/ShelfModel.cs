using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Themes;

namespace Ledger.Terminal.Screens;

/// <summary>All items with what is there of them.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class ShelfModel(ILedger ledger) : TableModel(ledger)
{
    /// <summary>As many moves as a year of daily work makes.</summary>

    private const string None = "none";

    private Holdings _holdings = new(ledger.Today);
    private IReadOnlyList<SessionSize>? _sizes;
    private readonly Dictionary<string, ShelfReading> _readings = [];
    private IReadOnlyList<ItemName> _items = [];
    private IReadOnlyList<ShelfReading> _inUse = [];
    private IReadOnlyDictionary<string, Quantity> _planned = new Dictionary<string, Quantity>();

    public override string Name => "Shelf";

    /// <summary>What is short, what is too old, and what it all cost.</summary>
    public override string Headline => string.Join(", ", new[]
    {
        Some(_inUse.Count(reading => reading.IsBelowMinimum), "below minimum"),
        Some(_inUse.Count(reading => !reading.Expired.IsZero), "expired"),
        _items.Count == 0 ? ""
            : $"{_inUse.Aggregate(Money.Zero, (sum, reading) => sum + reading.Value).Text(_holdings.Settings)} in all",
    }.Where(part => part.Length > 0));

    private static string Some(int count, string what) => count == 0 ? "" : $"{count} {what}";

    public override IReadOnlyList<string> Purpose =>
    [
        "Every film, chemical and supply with what is there of it, box by box and bottle by bottle.",
        "The date is the earliest on which something of it expires: "
        + "by its expiry date, its life since opening or its life below half full, whichever comes first.",
        "Enter shows the boxes and bottles of an item one by one.",
    ];

    public override WorkedExample Example { get; } = new(
        "\n", "Enter on fen80 shows its two boxes, each with the day until which it is good.", "fen80/6");

    public override string Empty => TodayModel.NoItems;

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Item", 16), new("On hand", 12, IsFigure: true), new("Good until", 10), new("State", 17),
        new("Enough for", 22, Least: 10), new("Value", 10, IsFigure: true),
        new("Name", 30, Least: 8),
    ];

    public override int Count => _items.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.OnRow(KeyTable.Receive, "records a delivery of the selected item",
            row => new DeliveryForm(Ledger, IdOf(row))),
        ScreenAction.OnRow(KeyTable.Open, "opens the next sealed box or bottle of it",
            row => new KindForm(Ledger, "opening", ("container", IdOf(row)))),
        ScreenAction.OnRow(KeyTable.Count, "records what is really there",
            row => new KindForm(Ledger, "count", ("item", IdOf(row)))),
        ScreenAction.OnRow(KeyTable.Decant, "fills its next bottle into smaller ones",
            row => new KindForm(Ledger, "decanting", ("from", IdOf(row)))),
        ScreenAction.RareOnRow("Mix stock solution", "mixes a stock solution of it", row => StockSolution(IdOf(row))),
        ScreenAction.OnRow(KeyTable.Discard, "discards some of it", row => new DiscardForm(Ledger, IdOf(row))),
        ScreenAction.OnRow(KeyTable.Amend, "changes the settings of the selected item",
            row => new ItemForm(Ledger, IdOf(row))),
        Entries.TakeBack("takes back the last definition of the item: where nothing uses it, the item itself"),
        Entries.Entries,
        ScreenAction.Of(KeyTable.New, "writes down a film, chemical or supply",
            _ => new FormStep(new ItemForm(Ledger, null))),
    ];

    public override void Refresh()
    {
        (_holdings, _sizes) = (Ledger.HoldingsOn(Today), null);
        _readings.Clear();
        _items = _holdings.ItemNames;
        _inUse = [.. _holdings.ItemsInUse.Select(item => ReadingOf(item.Code))];
        _planned = PlannedDemand.Together(_holdings);
    }

    public override string IdOf(int row) => _items[row].Code;

    public override string? IdOf(Saving saving) => (saving.Entry as ItemDefinition)?.Item.Code;

    public override string? Traced(int row) =>
        ReadingOf(IdOf(row)).Containers is [{ Container.Code: var box }, ..] ? box : null;

    public override string Cell(int row, int column)
    {
        if (!_readings.TryGetValue(IdOf(row), out var reading))
            return NeverThere(_items[row], column);
        return column switch
        {
            0 => reading.Item.Code,
            1 => reading.OnHand.ToText(_holdings.Settings.Style),
            2 => Earliest(reading) is { } good ? Dates.Text(good.Date) : "",
            3 => State(reading),
            4 => EnoughFor.Text(EnoughFor.Of(reading.Item, reading.Usable, _holdings, [])),
            5 => Core.Costing.UnpricedStock.Mark(reading.Value, reading.Unpriced.IsZero, _holdings.Settings.Style),
            _ => reading.Item.Name,
        };
    }

    /// <summary>
    /// What is told of an item of which nothing was ever there, without looking it up: words are looked for in
    /// thousands.
    /// </summary>
    private string NeverThere(ItemName item, int column) => column switch
    {
        0 => item.Code,
        1 => new Quantity(0, item.Unit).ToText(_holdings.Settings.Style),
        3 => None,
        5 => Money.Zero.Text(_holdings.Settings.Style),
        6 => item.Name,
        _ => "",
    };

    public override IReadOnlyList<Block> Details(int row) => row < 0 ? [] :
    [
        ShelfBlocks.Facts(ReadingOf(IdOf(row)),
            _planned.TryGetValue(IdOf(row), out var planned) ? planned : null, _holdings,
            EnoughFor.Text(EnoughFor.Of(ReadingOf(IdOf(row)).Item, ReadingOf(IdOf(row)).Usable,
                _holdings, _sizes ??= SessionSize.Of(Ledger, _holdings)))),
        .. PriceBlocks.Of(Ledger.PricesOf(IdOf(row), Today), _holdings.Settings.Style),
        ShelfBlocks.History(
            Ledger.MovesOf(IdOf(row), Today, ShelfBlocks.HistoryShown),
            Ledger.LeftOf(IdOf(row), null, ShelfBlocks.Since(Today), Today), ReadingOf(IdOf(row)).Item, _holdings),
    ];

    public override string? OpenLabel => "Boxes";

    public override Step? Open(int row) => new TableStep(new ContainersModel(Ledger, IdOf(row)));

    /// <summary>What there is of an item; it is looked up once something of it is shown.</summary>
    private ShelfReading ReadingOf(string item) => _readings.TryGetValue(item, out var known) ? known
        : _readings[item] = new(_holdings.Item(item) ?? throw Gone(item), _holdings.ContainersOf(item), Today);

    private EntryKeys Entries => new(Ledger, row => new(SubjectKind.Item, IdOf(row)));

    private static GoodUntil? Earliest(ShelfReading reading) =>
        reading.Containers.Select(container => container.GoodUntil).OfType<GoodUntil>().MinBy(good => good.Date);

    private string State(ShelfReading reading)
    {
        if (reading.IsBelowMinimum)
            return (reading.Usable.IsZero ? Style.NowMark : Style.SoonMark) + "below minimum";
        if (!reading.Expired.IsZero)
            return Style.SoonMark + "expired";
        if (!reading.Suspect.IsZero)
            return Style.SoonMark + "under suspicion";
        if (reading.OnHand.IsZero)
            return None;
        return Earliest(reading) is { } good && good.DaysLeft(Today) <= _holdings.Settings.WarnDays
            ? Style.SoonMark + "expires soon"
            : "usable";
    }

    /// <summary>The stock solution itself is mixed, or the one that is mixed from the item.</summary>
    private KindForm StockSolution(string item)
    {
        var items = Ledger.HoldingsOn(Today).ItemsOf(ItemKind.Chemical);
        return items.FirstOrDefault(one => one.Code == item) is { StockOf: not null }
            ? new(Ledger, "stock-solution", ("item", item))
            : new(Ledger, "stock-solution", ("item", items.FirstOrDefault(one => one.StockOf == item)?.Code),
                ("from", item));
    }
}
