using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>
/// The exposed sheets that wait for their development, to be picked for a session: one by one, by film and group, or up
/// to a day.
/// </summary>
/// <param name="ledger">The ledger.</param>
internal sealed class ExposedSheetsModel(ILedger ledger) : TableModel(ledger)
{
    private readonly HashSet<SheetId> _picked = [];
    private Holdings _holdings = new(ledger.Today);
    private List<Sheet> _sheets = [];

    public override string Name => "Exposed sheets";

    public override IReadOnlyList<string> Purpose =>
    [
        "The exposed sheets that wait for their development, in holders and in boxes of exposed sheets. Pick those of "
            + "the next session, then P plans it.",
        "Enter picks a sheet or leaves it. + picks all of its film and group, * all of them or none; Up to day "
        + "(F2 finds it) picks all that were exposed up to its day.",
    ];

    public override WorkedExample Example { get; } = new(
        "*", "* picks all seven sheets that wait; P then plans their session.", "7 sheets are picked");

    public override string Empty =>
        "No exposed sheet waits for its development. 7 leads to the holders, where E notes an exposure.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
        [new("", 3), new("Sheet", 6), new("Film", 10), new("Group", 5), new("Exposed", 10),
            new("Side", 8), new("Subject", 40, Least: 8)];

    public override int Count => _sheets.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.Of(KeyTable.More, "picks all sheets of the film and group of the selected one",
            row => Pick(row, (sheet, other) =>
                sheet.Item == other.Item && sheet.Exposure!.Group.Equals(other.Exposure!.Group,
                    StringComparison.OrdinalIgnoreCase))),
        ScreenAction.Rare("Up to day", "picks all sheets that were exposed up to the day of the selected one",
            row => Pick(row, (sheet, other) =>
                sheet.Exposure!.Date <= other.Exposure!.Date)),
        ScreenAction.Of(KeyTable.All, "picks all sheets; once all are picked, none", row => All(row)),
        ScreenAction.Of(KeyTable.Plan, "plans a session of the sheets that are picked", _ => Plan()),
    ];

    public override string? OpenLabel => "Pick";

    public override Step? Open(int row)
    {
        if (row < 0)
            return null;
        if (!_picked.Remove(_sheets[row].Id))
            _picked.Add(_sheets[row].Id);
        return new RedrawStep();
    }

    public override void Refresh()
    {
        _holdings = Ledger.HoldingsOn(Today);
        _sheets = [.. KnownSheets.Exposed(_holdings)];
        _picked.IntersectWith(_sheets.Select(sheet => sheet.Id));
    }

    public override string IdOf(int row) => _sheets[row].Id.ToString();

    public override string? Traced(int row) => IdOf(row);

    public override string Cell(int row, int column)
    {
        var sheet = _sheets[row];
        return column switch
        {
            0 => _picked.Contains(sheet.Id) ? "[x]" : "[ ]",
            1 => sheet.Id.ToString(),
            2 => sheet.Item,
            3 => sheet.Exposure!.Group,
            4 => Dates.Text(sheet.Exposure!.Date),
            5 => sheet.SideCode,
            _ => sheet.Exposure!.Subject,
        };
    }

    public override IReadOnlyList<Block> Details(int row)
    {
        var lines = KnownSheets.Request(Picked);
        return
        [
            Block.Of(
                lines.Count == 0 ? "None is picked yet"
                    : $"{Counted.Of(_picked.Count, "sheet")} {(_picked.Count == 1 ? "is" : "are")} picked",
                lines.Select(line => $"  {line.Count} {line.Film} {line.Group}: {line.From}")),
            .. row < 0 ? [] : new[] { Where(_sheets[row]) },
        ];
    }

    private IEnumerable<Sheet> Picked => _sheets.Where(sheet => _picked.Contains(sheet.Id));

    private Block Where(Sheet sheet) => Block.Facts($"Sheet {sheet.Id}", [
        ("Where", _holdings.Film.ExposedBox(sheet.At) is { } box
            ? $"in the box {box.Code}, from {sheet.SideCode}"
            : $"in {sheet.SideCode}"),
        ("Film", $"{sheet.Item}, loaded {Dates.Text(sheet.LoadedOn)}"),
        ("Exposed", $"{Dates.Text(sheet.Exposure!.Date)}, {sheet.Exposure.Group}"),
        ("Subject", sheet.Exposure.Subject),
    ]);

    private RedrawStep? Pick(int row, Func<Sheet, Sheet, bool> belongs)
    {
        if (row < 0)
            return null;
        _picked.UnionWith(_sheets.Where(sheet => belongs(sheet, _sheets[row])).Select(sheet => sheet.Id));
        return new();
    }

    private RedrawStep? All(int row)
    {
        if (_picked.Count < _sheets.Count)
            return Pick(row, (_, _) => true);
        _picked.Clear();
        return new();
    }

    private Step Plan() => _picked.Count == 0
        ? new MessageStep("No sheet is picked yet: Enter picks the selected one, * all of them.")
        : new FormStep(new PlanForm(Ledger, KnownSheets.Request(Picked)));
}
