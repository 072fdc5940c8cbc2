using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Screens;

/// <summary>Rejects over time: by cause, holder side, film, process and month.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class FaultsModel(ILedger ledger) : TableModel(ledger)
{
    private FaultsOverTime _faults = new([], new(1900, 1, 1), ledger.Today);
    private IReadOnlyList<FaultRow> _rows = [];
    private FaultGrouping _grouping;

    public override string Name => "Faults";

    public override string Title => $"Faults by {FaultsOverTime.Groupings[(int)_grouping]}";

    public override string Headline => _faults.Sheets == 0 ? ""
        : $"{_faults.Rejects} of {_faults.Sheets} sheets are rejects";

    public override IReadOnlyList<string> Purpose =>
    [
        "What became rejects, of the sheets that were to become negatives: by cause, holder side, emulsion number, "
        + "process and month; G turns to the next.",
        "Whether one is worse than the others is told by Fisher's exact test: how often chance alone would do it. "
        + "Few sheets say little, and are marked.",
    ];

    public override WorkedExample Example { get; } = new("g", "G divides the rejects by holder side.",
        "Faults by side");

    public override string Empty => _faults.Sheets == 0 ? "No sheet was developed." : "There is no reject.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("What", 20, Least: 10), new("Rejects", 7, IsFigure: true), new("Of", 6, IsFigure: true),
            new("Share", 7, IsFigure: true),
        new("Worse than the others", 50, Least: 16),
    ];

    public override int Count => _rows.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
        [ScreenAction.Of(KeyTable.Group, "divides them by cause, side, emulsion number, process or month, in turn",
            _ => Turn())];

    public override void Refresh()
    {
        _faults = new(Ledger.Cards(new SheetSearch(), Today), new(1900, 1, 1), Today);
        _rows = _faults.By(_grouping);
    }

    public override string IdOf(int row) => _rows[row].Name;

    public override string? Traced(int row) => _grouping switch
    {
        FaultGrouping.Side => IdOf(row),
        FaultGrouping.Number => IdOf(row).Split(' ')[^1],
        _ => null,
    };

    public override string Cell(int row, int column)
    {
        var fault = _rows[row];
        return column switch
        {
            0 => fault.Name,
            1 => Scaled.ToText(fault.Rejects, 0),
            2 => Scaled.ToText(fault.Sheets, 0),
            3 => Share(fault),
            _ => fault.Verdict(_rows.Count),
        };
    }

    public override IReadOnlyList<Block> Details(int row)
    {
        if (row < 0)
            return [];
        var fault = _rows[row];
        Bar[] all = [.. _rows.Select(one => new Bar(one.Name, one.Percent ?? 0, Share(one)))];
        return
        [
            Block.Facts(fault.Name, [
                ("Rejects", $"{fault.Rejects} of {Counted.Of(fault.Sheets, "sheet")}, {Share(fault)}"),
                    ("Causes", fault.CausesText),
                ("Verdict", fault.Verdict(_rows.Count)),
            ]),
            new("Share of rejects", width => BarChart.Of(all, width)),
        ];
    }

    private static string Share(FaultRow fault) => fault.Percent is { } percent ? $"{Scaled.ToText(percent, 1)} %"
        : "-";

    private RedrawStep Turn()
    {
        _grouping = (FaultGrouping)(((int)_grouping + 1) % FaultsOverTime.Groupings.Count);
        Refresh();
        return new RedrawStep();
    }
}
