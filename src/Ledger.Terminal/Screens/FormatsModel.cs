using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>The formats of film and paper, with the area that one of each counts with.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class FormatsModel(ILedger ledger) : TableModel(ledger)
{
    private FormatTable _table = new();
    private IReadOnlyList<Format> _formats = [];

    public override string Name => "Formats";

    public override IReadOnlyList<string> Purpose =>
    [
        "The formats of film and paper with the area that one sheet or roll counts with: through the fixer, in the "
            + "costs, in a plan.",
        "A roll of 120 or 135-36 counts as 80 sq in by convention; Enter gives a format another area. Any other size "
            + "is written as it is: 7x17in, 100x125mm.",
    ];

    public override WorkedExample Example { get; } = new("\n",
        "Enter on the first format opens the form that gives it another area.", "Area of one");

    public override string Empty => "There is no format.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Format", 20, Least: 10), new("In", 6), new("Sq in", 12, IsFigure: true), new("cm²", 12, IsFigure: true),
        new("In 8x10", 8, IsFigure: true), new("Area", 14, Least: 9),
    ];

    public override int Count => _formats.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.Of(KeyTable.New, "writes down a format of your own",
            _ => new FormStep(new KindForm(Ledger, "format"))),
        ScreenAction.Of(KeyTable.Undo,
            "takes a format of your own out, or puts the usual area back, where nothing uses it", row =>
            row >= 0 && !_table.IsOwn(_formats[row])
                ? new MessageStep($"{_formats[row].Code} is a usual format; only one of your own is taken out.")
                : Entries.TakeBack("").Press(row)),
        Entries.Entries,
    ];

    public override string? OpenLabel => "Edit";

    public override void Refresh()
    {
        _table = Ledger.HoldingsOn(Today).Formats;
        _formats = _table.All;
    }

    public override string IdOf(int row) => _formats[row].Code;

    public override string Cell(int row, int column)
    {
        var format = _formats[row];
        return column switch
        {
            0 => format.Code,
            1 => format.Unit.Plural(),
            2 => Scaled.ToText(format.Area.SquareInches, 4),
            3 => Scaled.ToText(format.Area.SquareCentimetres, 4),
            4 => Scaled.ToText(format.Area.SquareInches / Area.Unit80.SquareInches, 4),
            _ => _table.IsOwn(format) ? "your own" : format.Unit == Unit.Roll ? "by convention" : "of its size",
        };
    }

    private EntryKeys Entries => new(Ledger, row => new(SubjectKind.Format, IdOf(row)));

    public override Step? Open(int row) =>
        row < 0 ? null : new FormStep(new KindForm(Ledger, "format", ("format", _formats[row].Code)));

    public override IReadOnlyList<Block> Details(int row) => row < 0 ? [] :
    [
        Block.Of(_formats[row].Code,
            $"80 sq in are {Scaled.ToText(Area.Unit80.SquareInches / _formats[row].Area.SquareInches, 4)} "
                + $"{_formats[row].Unit.Plural()} of {_formats[row].Code}."),
    ];
}
