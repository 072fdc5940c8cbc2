using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>Boxes and bottles that nobody has touched for months.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class ForgottenModel(ILedger ledger) : TableModel(ledger)
{
    private Holdings _holdings = new(ledger.Today);
    private IReadOnlyList<Untouched> _forgotten = [];
    private int? _months;

    public override string Name => "Forgotten";

    public override string Title => $"Not used for {Counted.Of(Months, "month")}";

    public override IReadOnlyList<string> Purpose =>
    [
        "Boxes and bottles that hold something and were not used for months: nothing was delivered, used or opened. "
            + "The longest forgotten come first.",
        "The setting forgotten-months says for how many months; + and - look at more or fewer.",
    ];

    public override WorkedExample Example { get; } = new("-", "Minus looks at what was not used for 11 months.",
        "11 months");

    public override string Empty => $"Nothing lies unused for {Counted.Of(Months, "month")}. Minus looks at fewer.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("What", 18), new("Holds", 12, IsFigure: true), new("Last used", 12), new("Batch", 12, Least: 6),
        new("Kept in", 12, Least: 8),
    ];

    public override int Count => _forgotten.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.Of(KeyTable.More, "looks at what is forgotten for a month longer", _ => Look(Months + 1)),
        ScreenAction.Of(KeyTable.Fewer, "looks at what is forgotten for a month less", _ => Look(Months - 1)),
        ScreenAction.OnRow(KeyTable.Count, "records what is really in it",
            row => new KindForm(Ledger, "count", ("item", IdOf(row)))),
        ScreenAction.OnRow(KeyTable.Move, "keeps it somewhere else",
            row => new KindForm(Ledger, "storage", ("container", IdOf(row)))),
        ScreenAction.OnRow(KeyTable.Discard, "discards it, or part of it", row => new DiscardForm(Ledger, IdOf(row))),
    ];

    public override void Refresh()
    {
        _holdings = Ledger.HoldingsOn(Today);
        _forgotten = Ledger.UntouchedSince(Today.PlusMonths(-Months), Today);
    }

    public override string IdOf(int row) => _forgotten[row].Container.Code;

    public override string? Traced(int row) => IdOf(row);

    public override string Cell(int row, int column)
    {
        var (container, touched) = _forgotten[row];
        return column switch
        {
            0 => container.Code,
            1 => container.Held.ToText(_holdings.Settings.Style),
            2 => Dates.Text(touched),
            3 => container.Lot.Batch,
            _ => container.Storage,
        };
    }

    public override IReadOnlyList<Block> Details(int row)
    {
        if (row < 0)
            return [];
        var (container, touched) = _forgotten[row];
        var days = Period.DaysBetween(touched, Today);
        return
        [
            Block.Of($"Not used for {Counted.Of(days, "day")}",
                $"It was delivered on {Dates.Text(container.Lot.ReceivedOn)}."),
            ShelfBlocks.Facts(new ContainerReading(container,
                container.GoodUntil(_holdings.Item(container.Lot.Item)!.Keeping), Today), _holdings),
        ];
    }

    private int Months => _months ?? _holdings.Settings.Film.ForgottenMonths;

    private RedrawStep Look(int months)
    {
        _months = Math.Clamp(months, 0, 120);
        Refresh();
        return new();
    }
}
