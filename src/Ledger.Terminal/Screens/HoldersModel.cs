using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Screens;

/// <summary>All holders and the boxes of exposed sheets: what is where, and for how long.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class HoldersModel(ILedger ledger) : TableModel(ledger)
{
    private Holdings _holdings = new(ledger.Today);
    private IReadOnlyList<HolderName> _holders = [];
    private IReadOnlyList<ExposedBox> _boxes = [];

    public override string Name => "Holders";

    public override IReadOnlyList<string> Purpose =>
    [
        "The film holders with their sides, and below them the boxes of exposed sheets by film and group.",
        "A sheet is loaded into a side, exposed in it, and unloaded into the box of its group; a session takes it from "
            + "there or straight from the side.",
        $"The picture shows all holders at once: {HolderGrid.Legend}.",
        $"Slides: {_holdings.Settings.Film.SlideConvention}.",
    ];

    public override WorkedExample Example { get; } = new(
        "\n", "Enter on E01 shows the two exposed sheets in it, with their subject.", "kiln from the north side");

    public override string Empty => "No holder is registered. Press N to register one.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Holder", 14), new("Format", 8), new("Sides", 60, Least: 20), new("Cleaned", 10),
    ];

    public override int Count => _holders.Count + _boxes.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.Of(KeyTable.Load, "loads sheets into sides",
            row => new FormStep(HolderForms.Load(Ledger, HolderAt(row)))),
        ScreenAction.Of(KeyTable.Expose, "notes an exposure",
            row => new FormStep(HolderForms.Expose(Ledger, HolderAt(row)))),
        ScreenAction.Of(KeyTable.Move, "unloads: takes sheets out into a box; amends a wrong label", row =>
            new FormStep(HolderForms.Unload(Ledger, row < 0 ? null : IdOf(row)))),
        ScreenAction.Rare("Clean", "notes a cleaning",
            row => new FormStep(new KindForm(Ledger, "cleaning", ("holders", HolderAt(row))))),
        ScreenAction.Rare("Service", "takes a side out of service, or puts it back", row =>
            new FormStep(new KindForm(Ledger, "service", ("sides", FirstSide(row))))),
        ScreenAction.Of(KeyTable.New, "registers a holder", _ => new FormStep(new KindForm(Ledger, "holder"))),
        ScreenAction.Of(KeyTable.Keeper, "names a negative a keeper",
            _ => new FormStep(new KindForm(Ledger, "keeper"))),
        ScreenAction.Of(KeyTable.Count, "records how many sheets are really there",
            row => new FormStep(new KindForm(Ledger, "count", ("item", Place(row))))),
        ScreenAction.Of(KeyTable.Discard, "discards sheets", row => new FormStep(new DiscardForm(Ledger, Place(row)))),
        ScreenAction.Of(KeyTable.Paper, "writes the label of the selected box of exposed sheets",
            row => row >= _holders.Count
                ? new LabelStep(IdOf(row), (paper, place) => paper.BoxLabel(IdOf(row), place))
                : new MessageStep(
                    "Select a box of exposed sheets, below the holders: its label is written for paper.")),
        Entries.PutRight("amends what is known of the holder"),
        Entries.TakeBack("takes the registering of the holder back, where nothing was done with it"),
        Entries.Entries,
    ];

    public override string? OpenLabel => "Sheets";

    public override Step? Open(int row) => new TableStep(new SheetsModel(Ledger, IdOf(row)));

    public override void Refresh()
    {
        _holdings = Ledger.HoldingsOn(Today);
        _holders = _holdings.Film.Names;
        _boxes = [.. _holdings.Film.ExposedBoxes];
    }

    public override string IdOf(int row) =>
        row < _holders.Count ? _holders[row].Code : _boxes[row - _holders.Count].Code;

    /// <summary>All are looked up at once where all are asked for.</summary>
    public override void Reach(int row)
    {
        if (row == int.MaxValue)
            _ = _holdings.Film.Holders;
    }

    public override string? Traced(int row) => IdOf(row);

    public override string Cell(int row, int column)
    {
        if (row >= _holders.Count)
            return BoxCell(_boxes[row - _holders.Count], column);
        var holder = HolderIn(row);
        return column switch
        {
            0 => holder.Code,
            1 => holder.Format.Code,
            2 => string.Join("  ", holder.Sides.Select(side =>
                HolderBlocks.Short(_holdings.Film.Read(side, Today), _holdings.Settings.Film))),
            _ => holder.CleanedOn is { } cleaned ? Dates.Text(cleaned) : "",
        };
    }

    public override IReadOnlyList<Block> Details(int row) =>
    [
        new("All holders", width =>
        [
            .. HolderGrid.Of(_holdings.Film, _holdings.Settings.Film, Today, HolderAt(row), width),
            .. Paragraph.Of(HolderGrid.Legend, width),
        ]),
        .. row < 0 ? [] : row < _holders.Count ? [HolderBlocks.Facts(HolderIn(row), _holdings)]
            : new[] { HolderBlocks.Facts(_boxes[row - _holders.Count], _holdings) },
    ];

    private EntryKeys Entries =>
        new(Ledger, row => new(HolderAt(row) is null ? SubjectKind.Place : SubjectKind.Holder, IdOf(row)));

    private string? HolderAt(int row) => row >= 0 && row < _holders.Count ? _holders[row].Code : null;

    private Holder HolderIn(int row) => _holdings.Film.Holder(_holders[row].Code) ?? throw Gone(_holders[row].Code);

    private string Place(int row) => row < 0 ? "" : IdOf(row);

    private string? FirstSide(int row) => HolderAt(row) is null ? null
        : (HolderIn(row).Sides.FirstOrDefault(side => side.OutOfService is not null) ?? HolderIn(row).Sides[0]).Code;

    private string BoxCell(ExposedBox box, int column) => column switch
    {
        0 => box.Code,
        1 => _holdings.Item(box.Item)?.Format?.Code ?? "",
        2 => Counted.Of(_holdings.Film.At(box.Place).Count(), "exposed sheet"),
        _ => "",
    };
}
