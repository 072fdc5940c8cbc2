using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>The boxes and bottles of one item, in the order in which they are reached for.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="item">The item's code.</param>
internal sealed class ContainersModel(ILedger ledger, string item) : TableModel(ledger)
{
    private const int MovesRead = 500;
    private Holdings _holdings = new(ledger.Today);
    private ShelfReading? _reading;

    public override string Name => $"Shelf: {item}";

    public override IReadOnlyList<string> Purpose =>
    [
        "The boxes, bottles and packets of one item that hold anything, in the order in which they are used: "
        + "open before sealed, then first in, first out.",
        "Each has dates of its own; the earliest decides how long it is good.",
    ];

    public override WorkedExample Example { get; } = new(
        "c", "C on fen80/6 opens the form that records how many sheets are really in the box.", "Count");

    public override string Empty => $"Nothing is left of {item}. Press R to record a delivery.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("What", 18), new("Left", 18), new("Holds", 12, IsFigure: true), new("State", 8), new("Good until", 10),
        new("Batch", 12, Least: 6), new("Kept in", 10),
    ];

    public override int Count => _reading?.Containers.Count ?? 0;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.Of(KeyTable.Receive, "records a delivery", _ => new FormStep(new DeliveryForm(Ledger, item))),
        ScreenAction.OnRow(KeyTable.Open, "opens the selected one",
            row => new KindForm(Ledger, "opening", ("container", IdOf(row)))),
        ScreenAction.OnRow(KeyTable.Count, "records what is really in it",
            row => new KindForm(Ledger, "count", ("item", IdOf(row)))),
        ScreenAction.OnRow(KeyTable.Decant, "fills it into smaller bottles",
            row => new KindForm(Ledger, "decanting", ("from", IdOf(row)))),
        ScreenAction.OnRow(KeyTable.Discard, "discards it, or part of it", row => new DiscardForm(Ledger, IdOf(row))),
        ScreenAction.OnRow(KeyTable.Move, "keeps it somewhere else: freezer, fridge, shelf",
            row => new KindForm(Ledger, "storage", ("container", IdOf(row)))),
        .. _reading?.Item.Kind == ItemKind.Film
            ? [ScreenAction.OnRow(KeyTable.Index, "sets the exposure index of its lot", row =>
                new KindForm(Ledger, "exposure-index", ("container", IdOf(row))))]
            : Array.Empty<ScreenAction>(),
        .. Suspicions.Of(Ledger, IdOf),
        Entries.PutRight("amends what it came by: its delivery with the price and the dates, or its filling"),
        Entries.TakeBack("takes back what it came by, where nothing was taken out of it"),
        Entries.Entries,
        ScreenAction.Labels("its label", IdOf, row => (paper, place) => paper.BottleLabel(IdOf(row), place)),
    ];

    private EntryKeys Entries => new(Ledger, row => new(SubjectKind.Place, IdOf(row)));

    public override void Refresh()
    {
        _holdings = Ledger.HoldingsOn(Today);
        _reading = _holdings.Item(item) is { } known ? new(known, _holdings.ContainersOf(known.Code), Today) : null;
    }

    public override string IdOf(int row) => _reading!.Containers[row].Container.Code;

    public override string? Traced(int row) => IdOf(row);

    public override string Cell(int row, int column)
    {
        var reading = _reading!.Containers[row];
        var container = reading.Container;
        return column switch
        {
            0 => container.Code,
            1 => ShelfBlocks.Left(container),
            2 => container.Held.ToText(_holdings.Settings.Style),
            3 => reading.IsSuspect ? "suspect" : reading.IsPast ? "past" : container.IsSealed ? "sealed" : "open",
            4 => reading.GoodUntil is { } good ? Dates.Text(good.Date) : "",
            5 => container.Lot.Batch,
            _ => container.Storage,
        };
    }

    public override IReadOnlyList<Block> Details(int row)
    {
        if (row < 0 || _reading is null)
            return [];
        var moves = Ledger.MovesOf(item, Today, MovesRead).Where(move => move.Container == IdOf(row)).ToList();
        var left = Ledger.LeftOf(item, IdOf(row), ShelfBlocks.Since(Today), Today);
        return [ShelfBlocks.Facts(_reading.Containers[row], _holdings),
            ShelfBlocks.History(moves, left, _reading.Item, _holdings)];
    }
}
