using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>What something came through, and what else came through that; or what shares a fault of it, worst
/// first.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="what">What is traced, by its name.</param>
internal sealed class TraceModel(ILedger ledger, string what) : TableModel(ledger)
{
    private IReadOnlyList<TraceRow> _rows = [];
    private Settings _settings = Settings.Default;
    private string? _name;
    private bool _isRisk;

    public override string Name => $"Trace: {what}";

    public override string Title => _isRisk ? $"At risk: {_name ?? what}" : $"Trace: {_name ?? what}";

    public override string Headline => _rows.Count == 0 ? "" : _isRisk
        ? $"{Counted.Of(_rows.Count(row => row.Sheet is not null), "sheet")}, worst first"
        : $"{_rows.Count(row => row.Way == TraceRow.Back)} back, {_rows.Count(row => row.Way != TraceRow.Back)} "
            + "forward";

    public override IReadOnlyList<string> Purpose =>
    [
        "Back: what it came through, each bath as it was at that moment. Forward: what else came through that. Of a "
        + "sheet those that lay in the trays "
        + "with it stand apart from those that only went through the same bath since.",
        "V shows what shares a fault of it instead, worst first, with the reason and what can be done; W writes "
        + "either on paper, as a list to work off.",
        "Enter goes on from the selected row. What is found on a sheet is noted there: Note on the sheet (F2).",
    ];

    public override WorkedExample Example { get; } = new("v", "V shows what is at risk, worst first.", "At risk");

    public override string Empty => $"There is nothing called {what} that anything came through.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Way", 20, Least: 8), new("What", 14), new("Date", 10), new("Of it", 40, Least: 16),
            new("Where", 18, Least: 8),
    ];

    public override int Count => _rows.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.Of(KeyTable.View, "shows what is at risk, worst first; or the trace again", _ => Turn()),
        ScreenAction.Of(KeyTable.Paper, "writes it for paper; of what is at risk, a check list", _ =>
            new PaperStep(paper => _isRisk ? paper.CheckList(what) : paper.Trace(what))),
        .. SheetLife.Of(Ledger, row => _rows[row].Name),
        .. Suspicions.Of(Ledger, row => _rows[row].Name),
    ];

    public override string? OpenLabel => "Trace on";

    public override Step? Open(int row) => row < 0 ? null : Traced(row) is { } name ? new TracedStep(name)
        : new MessageStep("That leads no further.");

    public override string? Traced(int row) => _rows[row].Name is { Length: > 0 } name
        && Ledger.Named(name, Today).Count > 0 ? name : null;

    public override void Refresh()
    {
        var holdings = Ledger.HoldingsOn(Today);
        (_settings, _name) = (holdings.Settings, what);
        var start = Ledger.Named(what, Today);
        _rows = start.Count == 0 ? []
            : _isRisk ? [.. TraceRow.Of(new RiskReading(what, start, Ledger, holdings, null))]
            : Rows(new(what, start, Ledger, bath => Ledger.Bath(bath, Today), Today));
    }

    public override string IdOf(int row) => $"{row} {_rows[row].Way} {_rows[row].Name}";

    public override string Cell(int row, int column) => column switch
    {
        0 => _rows[row].Way,
        1 => _rows[row].Name,
        2 => _rows[row].On is { } on ? Dates.Text(on) : "",
        3 => _rows[row].Text,
        _ => _rows[row].Where,
    };

    public override IReadOnlyList<Block> Details(int row)
    {
        if (row < 0)
            return [];
        var shown = _rows[row];
        return
        [
            Block.Facts(shown.Name, shown.Facts),
            .. shown.Sheet is { } sheet && Ledger.Story(sheet.Id.ToString(), Today) is { } story
                ? HolderBlocks.Story(story, _settings) : [],
        ];
    }

    private IReadOnlyList<TraceRow> Rows(TraceReading trace)
    {
        _name = trace.Card?.Name ?? what;
        return [.. TraceRow.Of(trace, _settings.Style)];
    }

    private RedrawStep Turn()
    {
        _isRisk = !_isRisk;
        Refresh();
        return new RedrawStep();
    }
}
