using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Screens;

/// <summary>What a period cost: by film, and where the money is.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class CostsModel(ILedger ledger) : TableModel(ledger)
{
    private const string All = "all film";
    private const string AddsUp = "All of it is accounted for.";
    private const string KnownAddsUp = "All of it that has a price is accounted for.";
    private const string DoesNot = "This does not add up; run `trayledger check`.";
    private Settings _settings = Settings.Default;
    private CostFormula? _chosen;
    private CostReading? _reading;
    private IReadOnlyList<FilmCost> _films = [];
    private IReadOnlyList<CostSlice> _months = [];
    private IReadOnlyList<string> _ahead = [];
    private int _period;

    public override string Name => "Costs";

    public override string Title =>
        Formula == CostFormula.SpecificLot ? $"Costs of {Period.Name}" : $"Costs of {Period.Name} by {Formula.Name()}";

    /// <summary>The period that is shown.</summary>
    public CostPeriod Period => CostPeriod.On(Today)[_period];

    private CostFormula Formula => _chosen ?? _settings.CostFormula;

    public override IReadOnlyList<string> Purpose =>
    [
        "What the work of a period cost, by film: per sheet used, per good negative, per keeper, with its share of "
            + "chemistry and supplies.",
        "Beside it, where the money is: in negatives, chemistry, supplies and waste, on hand (in holders too) and in "
            + "the baths. It always adds up.",
        "Below: a negative month by month, the prices, what another session would cost, your budget, and what buying "
            + "before a rise saves.",
        $"What was used is costed {Formula.Basis()}. The setting cost-formula says which formula comes first.",
    ];

    public override WorkedExample Example { get; } = new("g", "G divides the costs of the last 12 months by month.",
        "by month");

    public override string Empty => $"No film was developed in {Period.Name}. V shows another period.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Film", 14, Least: 9), new("Used", 6, IsFigure: true), new("Neg.", 6, IsFigure: true),
        new("Keep.", 6, IsFigure: true), new("Per sheet", 9, IsFigure: true), new("Per neg.", 9, IsFigure: true),
        new("Per keeper", 10, IsFigure: true), new("Total", 10, IsFigure: true),
    ];

    public override int Count => _films.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
        [
            ScreenAction.Of(KeyTable.View, $"shows another period: {Periods}", _ => Turn()),
            ScreenAction.Of(
                KeyTable.Group, "shows the period by month, session, year or film",
                _ => new TableStep(new CostPartsModel(Ledger, Period, Formula))),
            ScreenAction.Rare(
                "Cost formula",
                "costs what was used by the lot it was taken from, first in first out, or the moving "
                    + "average", _ => Change()),
        ];

    public override void Refresh()
    {
        var holdings = Ledger.HoldingsOn(Today);
        _settings = holdings.Settings;
        _reading = new(Ledger.Costs(Period.From, Period.To, Formula, Today));
        var year = AtLeastAYear();
        _months = CostSlices.Of(year, CostGrouping.Month);
        _ahead = [.. Ahead(holdings, year)];
        var films = _reading.ByFilm.ToList();
        _films = films.Count == 0 ? [] : [_reading.AllFilms with { Item = All }, .. films];
    }

    public override string IdOf(int row) => _films[row].Item;

    public override string Cell(int row, int column)
    {
        var film = _films[row];
        return column switch
        {
            0 => film.Item,
            1 => Text(film.SheetsUsed),
            2 => Text(film.Negatives),
            3 => Text(film.Keepers),
            4 => UnpricedStock.Mark(film.PerSheetUsed, film.IsComplete, _settings.Style),
            5 => UnpricedStock.Mark(film.PerNegative, film.IsComplete, _settings.Style),
            6 => UnpricedStock.Mark(film.PerKeeper, film.IsComplete, _settings.Style),
            _ => UnpricedStock.Mark(film.Total, film.IsComplete, _settings.Style),
        };
    }

    public override IReadOnlyList<Block> Details(int row) =>
        row < 0 ? [Money, .. Coming] : [Film(_films[row]), Money, .. Months, .. Coming,
            .. PriceBlocks.Of(Ledger.PricesOf(IdOf(row), Today), _settings.Style)];

    private string Periods => string.Join(", ", CostPeriod.On(Today).Select(period => period.Name));

    private RedrawStep Turn()
    {
        _period = (_period + 1) % CostPeriod.On(Today).Count;
        Refresh();
        return new RedrawStep();
    }

    private RedrawStep Change()
    {
        _chosen = (CostFormula)(((int)Formula + 1) % CostFormulas.Names.Count);
        Refresh();
        return new RedrawStep();
    }

    /// <summary>
    /// A month is held against the months before it, and a rate of use is of a year, whatever the period.
    /// </summary>
    private CostReading AtLeastAYear()
    {
        var aYearBefore = Period.To.PlusYears(-1).PlusDays(1);
        return Period.From <= aYearBefore ? _reading! : new(Ledger.Costs(aYearBefore, Period.To, Formula, Today));
    }

    private IEnumerable<Block> Coming => _ahead.Count == 0 ? [] : [Block.Of("What is coming", _ahead)];

    private IEnumerable<string> Ahead(Holdings holdings, CostReading reading)
    {
        if (NextSession.Of(Ledger, holdings) is { } next)
            yield return next.Sentence(_settings.Style);
        if (_settings.MonthlyBudget is { } monthly && BudgetReading.Of(reading, monthly) is { } budget)
            yield return budget.Sentence(_settings.Style);
        foreach (var rise in TodayReading.PriceRises(Ledger, holdings))
            yield return rise.Sentence;
    }

    private Block Film(FilmCost film)
    {
        Bar[] parts = [Bar("film", film.Film), Bar("chemistry", film.Chemistry), Bar("supplies", film.Supplies)];
        return new($"{film.Item}: {film.Total.Text(_settings)}", width =>
        [
            .. BarChart.Of(parts, width),
            "",
            .. Paragraph.Of(
                $"{Counted.Of(film.SheetsUsed, "sheet")} used, {Counted.Of(film.Negatives, "good negative")}, "
                + $"{Counted.Of(film.Keepers, "keeper")}; {film.SheetsUsed - film.Negatives} without a "
                + "negative.", width),
        ]);
    }

    private Block Money
    {
        get
        {
            if (_reading is not { } reading)
                return Block.Of("", "");
            Bar[] parts =
            [
                Bar("negatives", reading.Film), Bar("chemistry", reading.Chemistry), Bar("supplies", reading.Supplies),
                .. reading.Prints == Core.Measures.Money.Zero ? Array.Empty<Bar>() : [Bar("prints", reading.Prints)],
                Bar("waste", reading.Waste), Bar("on hand", reading.OnHand), Bar("in the baths", reading.StillInBaths),
            ];
            return new($"Where the {reading.Spent.Text(_settings)} are", width =>
            [
                .. BarChart.Of(parts, width),
                .. Paragraph.Of(!reading.Reconciles ? DoesNot : reading.IsComplete ? AddsUp : KnownAddsUp, width),
                .. reading.Facts.Unpriced.SelectMany(stock => Paragraph.Of(stock.Sentence(_settings.Style), width)),
                .. Paragraph.Of(
                    $"{Dates.Text(Period.From)} to {Dates.Text(Period.To)}: bought "
                        + $"{reading.Facts.Bought.Text(_settings)}, there before "
                        + $"{reading.Opening.Text(_settings)}.", width),
                .. Paragraph.Of(
                    $"{reading.Opening.Text(_settings.Style)} + {reading.Facts.Bought.Text(_settings.Style)} = "
                    + $"{(reading.Used - reading.Waste).Text(_settings.Style)} used "
                    + $"+ {reading.Waste.Text(_settings.Style)} waste + {reading.Closing.Text(_settings.Style)} on "
                    + "hand.", width),
                .. reading.Waste == Core.Measures.Money.Zero
                    ? []
                    : Paragraph.Of($"The waste: {reading.WasteText(_settings.Style)}.", width),
            ]);
        }
    }

    /// <summary>What a negative cost in each month that had one, with how many there were.</summary>
    private IEnumerable<Block> Months
    {
        get
        {
            Bar[] bars =
            [
                .. _months.Where(month => month.PerSheet.PerNegative is not null).Select(month => new Bar(
                    month.Name, month.PerSheet.PerNegative!.Value.Amount,
                    $"{month.PerSheet.PerNegative.Value.Text(_settings.Style)} ({month.PerSheet.Negatives})")),
            ];
            if (bars.Length > 1)
                yield return new("A negative, by month (how many)", width =>
                [
                    .. BarChart.Of(bars, width),
                    .. CostChange.Latest(_months) is { } change
                        ? Paragraph.Of(change.Sentence(_settings.Style), width)
                        : [],
                ]);
        }
    }

    private Bar Bar(string label, Money money) => new(label, money.Amount, money.Text(_settings.Style));

    private static string Text(long count) => count.ToString(CultureInfo.InvariantCulture);
}
