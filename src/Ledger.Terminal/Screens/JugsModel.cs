using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Screens;

/// <summary>The waste jugs: what is in each, since when, and where it went.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class JugsModel(ILedger ledger) : TableModel(ledger)
{
    private const string Disposal =
        "The maker's safety data sheet and local rules say where it may go; used fixer holds silver.";

    private Holdings _holdings = new(ledger.Today);
    private IReadOnlyList<WasteJug> _jugs = [];

    public override string Name => "Waste jugs";

    public override IReadOnlyList<string> Purpose =>
    [
        "Used solutions wait here until they are handed over. A bath that is discarded goes into a jug for its kind of "
            + "waste.",
        $"The ledger keeps count only. {Disposal}",
    ];

    public override WorkedExample Example { get; } = new(
        "a", "A on J2 opens the form that records what went into it, such as 500 ml of first rinse.", "Fill a jug");

    public override string Empty => "There is no waste jug. Press N to start one.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Jug", 8), new("Filled", 18), new("Holds", 12, IsFigure: true), new("Started", 10), new("Handed over", 11),
        new("Contents", 24, Least: 8),
    ];

    public override int Count => _jugs.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.Of(KeyTable.New, "starts a jug", _ => new FormStep(NextJug())),
        ScreenAction.OnRow(
            KeyTable.Add, "records used solution that goes into the selected jug",
            row => new KindForm(Ledger, "jug-filling", ("jug", IdOf(row)))),
        ScreenAction.RareOnRow("Hand over", "hands the selected jug over",
            row => new KindForm(Ledger, "jug-handover", ("jug", IdOf(row)))),
        ScreenAction.Labels("its label", IdOf, row => (paper, place) => paper.BottleLabel(IdOf(row), place)),
        Entries.PutRight("amends what was recorded when the selected jug was started"),
        Entries.TakeBack("takes the jug back, where nothing went into it"),
        Entries.Entries,
    ];

    private EntryKeys Entries => new(Ledger, row => new(SubjectKind.Place, IdOf(row)));

    public override void Refresh()
    {
        _holdings = Ledger.HoldingsOn(Today);
        _jugs = [.. Ledger.JugsOn(Today).OrderBy(jug => jug.HandedOverOn is not null)];
    }

    public override string IdOf(int row) => _jugs[row].Code;

    public override string Cell(int row, int column)
    {
        var jug = _jugs[row];
        return column switch
        {
            0 => jug.Code,
            1 => Gauge.OfPart(jug.Held.Microlitres, jug.Size.Microlitres),
            2 => jug.Held.ToText(_holdings.Settings.Style),
            3 => Dates.Text(jug.StartedOn),
            4 => jug.HandedOverOn is { } day ? Dates.Text(day) : "",
            _ => jug.Contents,
        };
    }

    public override IReadOnlyList<Block> Details(int row)
    {
        if (row < 0)
            return [];
        var (jug, style) = (_jugs[row], _holdings.Settings.Style);
        return
        [
            Block.Facts($"Jug {jug.Code}", [
                ("Contents", jug.Contents),
                ("Waste", jug.Waste.Name()),
                ("Hazard", jug.Waste.Hazard()),
                ("Holds", $"{jug.Held.ToText(style)} of {jug.Size.ToText(style)}"),
                ("Started", Dates.Text(jug.StartedOn)),
                ("Handed over", jug.HandedOverOn is { } day ? $"{Dates.Text(day)}: {jug.HandedTo}" : null),
            ]),
            Block.Of("What went in", jug.Fills.Count == 0
                ? ["Nothing yet."]
                : jug.Fills.Select(fill => $"{Dates.Text(fill.Date)}  {fill.Volume.ToText(style)}  {fill.What}")),
            Block.Of("", Disposal),
        ];
    }

    private KindForm NextJug() => new(
        Ledger, "jug-start", ("jug", Ledger.JugsOn(Ledger.Today) is [.., var last] ? NextName.After(last.Code) : null));
}
