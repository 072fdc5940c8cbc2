using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Screens;

/// <summary>The costs of a period, divided: the parts add up to all that was used.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="period">The period.</param>
/// <param name="formula">How what was used is costed.</param>
internal sealed class CostPartsModel(ILedger ledger, CostPeriod period, CostFormula formula) : TableModel(ledger)
{
    private static readonly CostGrouping[] Order =
    [
        CostGrouping.Month, CostGrouping.Session, CostGrouping.Year, CostGrouping.Film, CostGrouping.Process,
            CostGrouping.Developer, CostGrouping.Bath,
        CostGrouping.Number,
    ];

    private Settings _settings = Settings.Default;
    private IReadOnlyList<CostSlice> _slices = [];
    private int _grouping;

    public override string Name => "Costs, divided";

    public override string Title => $"Costs of {period.Name} by {CostSlices.Groupings[(int)Order[_grouping]]}"
        + (formula == CostFormula.SpecificLot ? "" : $", costed by {formula.Name()}");

    public override IReadOnlyList<string> Purpose =>
    [
        "What a period cost, by month, session, year, film, process, developer, bath or emulsion number. The parts "
        + "add up to all that was used.",
        "By month and year it says why a negative cost more or less than before.",
        "What was discarded, alone or with baths, stands in its month; by session and film it has a line of its own.",
    ];

    public override WorkedExample Example { get; } = new("g",
        "G divides the costs by session, year or film in turn.", "Costs");

    public override string Empty => $"Nothing was used in {period.Name}.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("What", 12, Least: 8), new("Sheets", 6, IsFigure: true), new("Neg.", 6, IsFigure: true),
            new("Per sheet", 9, IsFigure: true), new("Per neg.", 9, IsFigure: true), new("Used", 10, IsFigure: true),
        new("Film", 9, IsFigure: true), new("Chem.", 9, IsFigure: true), new("Supplies", 9, IsFigure: true),
        new("Waste", 9, IsFigure: true),
    ];

    public override int Count => _slices.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
        [ScreenAction.Of(KeyTable.Group,
            "divides it by month, session, year, film, process, developer, bath or number, in turn", _ => Turn())];

    public override void Refresh()
    {
        _settings = Ledger.HoldingsOn(Today).Settings;
        _slices = CostSlices.Of(new(Ledger.Costs(period.From, period.To, formula, Today)), Order[_grouping]);
    }

    public override string IdOf(int row) => _slices[row].Name;

    public override string? Traced(int row) => Order[_grouping] switch
    {
        CostGrouping.Session or CostGrouping.Bath => IdOf(row),
        CostGrouping.Number => IdOf(row).Split(' ')[^1],
        _ => null,
    };

    public override string Cell(int row, int column)
    {
        var slice = _slices[row];
        return column switch
        {
            0 => slice.Name,
            1 => Scaled.ToText(slice.PerSheet.SheetsUsed, 0),
            2 => Scaled.ToText(slice.PerSheet.Negatives, 0),
            3 => UnpricedStock.Mark(slice.PerSheet.PerSheetUsed, slice.PerSheet.IsComplete, _settings.Style),
            4 => UnpricedStock.Mark(slice.PerSheet.PerNegative, slice.PerSheet.IsComplete, _settings.Style),
            5 => UnpricedStock.Mark(slice.Used, slice.PerSheet.IsComplete, _settings.Style),
            6 => slice.Film.Text(_settings.Style),
            7 => slice.Chemistry.Text(_settings.Style),
            8 => slice.Supplies.Text(_settings.Style),
            _ => slice.Waste.Text(_settings.Style),
        };
    }

    public override IReadOnlyList<Block> Details(int row)
    {
        if (row < 0)
            return [];
        var slice = _slices[row];
        Bar[] shares =
        [
            Share("negatives", slice.Film), Share("chemistry", slice.Chemistry), Share("supplies", slice.Supplies),
            .. slice.Prints == Money.Zero ? Array.Empty<Bar>() : [Share("prints", slice.Prints)],
            Share("waste", slice.Waste),
        ];
        Bar[] all = [.. _slices.Select(part => new Bar(part.Name, part.Used.Amount, part.Used.Text(_settings.Style)))];
        return
        [
            new($"{slice.Name}: {slice.Used.Text(_settings)}", width => BarChart.Of(shares, width)),
            .. Negative(slice, row),
            new("All parts", width => BarChart.Of(all, width)),
        ];

        Bar Share(string label, Money part) =>
            new(label, part.Amount,
                $"{part.Text(_settings.Style)} "
                    + $"{(slice.Percent(part, 1) is { } percent ? Scaled.ToText(percent, 1) : "-")} %");
    }

    /// <summary>
    /// What a negative cost by its parts, and why more or less than before where the parts follow each other in time.
    /// </summary>
    private IEnumerable<Block> Negative(CostSlice slice, int row)
    {
        if (NegativeParts.Of(slice.PerSheet) is not { } parts)
            yield break;
        Bar[] bars = [.. NegativeParts.Names.Zip(parts.All,
            (name, part) => new Bar(name, part.Amount, part.Text(_settings.Style)))];
        var change = Order[_grouping] is CostGrouping.Month or CostGrouping.Year ? CostChange.Of(_slices, row) : null;
        yield return new($"A negative: {parts.Total.Text(_settings)}", width =>
        [
            .. BarChart.Of(bars, width),
            .. Paragraph.Of(
                $"{Counted.Of(slice.PerSheet.SheetsUsed, "sheet")} used for "
                    + $"{Counted.Of(slice.PerSheet.Negatives, "good negative")}.", width),
            .. change is null ? [] : Paragraph.Of(change.Sentence(_settings.Style), width),
        ]);
    }

    private RedrawStep Turn()
    {
        _grouping = (_grouping + 1) % Order.Length;
        Refresh();
        return new RedrawStep();
    }
}
