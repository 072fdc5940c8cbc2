using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>What to order, when and how much, the most pressing first.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class ReorderModel(ILedger ledger) : TableModel(ledger)
{
    private Holdings _holdings = new(ledger.Today);
    private IReadOnlyList<ReorderReading> _readings = [];

    /// <summary>What was never there, used or ordered comes last; it is read where it is selected.</summary>
    private IReadOnlyList<ItemName> _others = [];

    public override string Name => "Reorder";

    public override IReadOnlyList<string> Purpose =>
    [
        "What to order, when and how many packs, and why: your own use, the time a delivery takes, and how safe you "
            + "want to be.",
        "The chart shows the stock so far (#) and as expected (o), the level at which to order (a dashed line), and "
            + "deliveries (^).",
        "What is on order is not stock until a delivery names its order.",
    ];

    public override WorkedExample Example { get; } = new("n",
        "N on syrup opens the form that orders it: 1 pack.", "syrup");

    public override string Empty => TodayModel.NoItems;

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Item", 16), new("Usable", 11, IsFigure: true), new("Order", 13), new("On order", 10, IsFigure: true),
        new("Order at", 11, IsFigure: true), new("Runs out", 10),
    ];

    public override int Count => _readings.Count + _others.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.OnRow(KeyTable.New, "places an order for the selected item",
            row => new OrderForm(Ledger, _readings, IdOf(row))),
        ScreenAction.OnRow(KeyTable.Receive, "records a delivery of the selected item",
            row => new DeliveryForm(Ledger, IdOf(row))),
        ScreenAction.OnRow(KeyTable.Amend, "changes an order: its day, packs, price", row =>
            OfOrder("order-change", IdOf(row))),
        ScreenAction.RareOnRow("Cancel order", "cancels what was not delivered",
            row => OfOrder("order-cancellation", IdOf(row))),
        ScreenAction.RareOnRow("Order terms",
            "sets how it is ordered: a yearly window, how long an order lasts, what it costs", row =>
            new KindForm(Ledger, "order-terms", ("item", IdOf(row)))),
        ScreenAction.RareOnRow("Price rise", "records an announced price rise",
            row => new KindForm(Ledger, "price-rise", ("item", IdOf(row)))),
        new EntryKeys(Ledger, row => new(SubjectKind.Item, IdOf(row))).Entries,
    ];

    public override void Refresh()
    {
        _holdings = Ledger.HoldingsOn(Today);
        _readings =
        [
            .. ReorderReading.InUse(Ledger, _holdings)
                .OrderBy(reading => reading.Suggestion?.OrderBy ?? LocalDate.MaxIsoValue)
                .ThenBy(reading => reading.Item.Code, StringComparer.OrdinalIgnoreCase),
        ];
        var inUse = _holdings.ItemsInUse.Concat(_readings.Select(reading => reading.Item)).Select(item => item.Code)
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        _others =
        [
            .. _holdings.ItemNames.Where(item => !item.IsMixed && !inUse.Contains(item.Code))
                .OrderBy(item => item.Code, StringComparer.OrdinalIgnoreCase),
        ];
    }

    public override string IdOf(int row) =>
        row < _readings.Count ? _readings[row].Item.Code : _others[row - _readings.Count].Code;

    public override string Cell(int row, int column)
    {
        if (row >= _readings.Count)
            return NeverThere(_others[row - _readings.Count], column);
        var (reading, style) = (_readings[row], _holdings.Settings.Style);
        return column switch
        {
            0 => reading.Item.Code,
            1 => reading.Usable.ToText(style),
            2 => reading.Suggestion is not { } order ? "" : order.IsNow ? "!! now" : Dates.Text(order.OrderBy),
            3 => reading.OnOrder.IsZero ? "" : reading.OnOrder.ToText(style),
            4 => reading.ReorderPoint.IsZero ? "" : reading.ReorderPoint.ToText(style),
            _ => reading.RunsOutOn is { } day ? Dates.Text(day) : "",
        };
    }

    private string NeverThere(ItemName item, int column) => column switch
    {
        0 => item.Code,
        1 => new Quantity(0, item.Unit).ToText(_holdings.Settings.Style),
        _ => "",
    };

    public override IReadOnlyList<Block> Details(int row) => row < 0 || ReadingAt(row) is not { } reading ? [] :
    [
        ReorderBlocks.Facts(reading, _holdings),
        ReorderBlocks.Chart(reading, Ledger.MovesOf(IdOf(row), Today, ReorderBlocks.MovesRead)),
        .. ReorderBlocks.Orders(reading),
    ];

    private ReorderReading? ReadingAt(int row) =>
        row < _readings.Count ? _readings[row] : ReorderReading.Of(Ledger, _holdings, IdOf(row));

    public override string? OpenLabel => "Boxes";

    public override Step? Open(int row) => new TableStep(new ContainersModel(Ledger, IdOf(row)));

    /// <summary>What becomes of the earliest order that waits for the item.</summary>
    private KindForm OfOrder(string kind, string item) => new(
        Ledger, kind,
        ("order", Ledger.HoldingsOn(Today).Orders.LinesOf(item).Select(found => found.Order.Code).FirstOrDefault()),
        ("item", item));
}
