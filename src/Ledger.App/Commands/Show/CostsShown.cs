namespace Ledger.App.Commands.Show;

/// <summary>The costs that are shown.</summary>
/// <param name="Costs">The costs of the period.</param>
/// <param name="Film">The film that the figures per sheet are limited to, or null for all.</param>
internal sealed record CostsShown(CostReading Costs, string? Film)
{
    /// <summary>What the period is divided by; null when it is not.</summary>
    public CostGrouping? Grouping { get; init; }

    /// <summary>Whether sheets count by what they were at the end of the period, not by what they are now.</summary>
    public bool CountsThen { get; init; }

    /// <summary>The formula of all figures.</summary>
    public CostFormula Formula { get; init; }

    /// <summary>The stock by that formula, when it was asked for.</summary>
    public Revaluation? Revaluation { get; init; }

    /// <summary>What the next session would cost.</summary>
    public NextSession? Next { get; init; }

    /// <summary>What the user means to spend in a month; null for nothing in particular.</summary>
    public Money? MonthlyBudget { get; init; }

    /// <summary>What buying before an announced rise would save.</summary>
    public IReadOnlyList<Notice> PriceRises { get; init; } = [];

    /// <summary>The account of that film; null for all.</summary>
    public FilmAccount? Account { get; init; }

    /// <summary>The parts of the period, or of what that film or paper cost.</summary>
    public IReadOnlyList<CostSlice> Slices => Grouping is { } grouping ? CostSlices.Of(Costs, grouping, Account) : [];

    /// <summary>The items of <see cref="Revaluation"/> that were asked for.</summary>
    public IEnumerable<ItemValue> StockShown => (Revaluation?.Items ?? []).Where(
        item => Film is null || item.Item.Equals(Film, StringComparison.OrdinalIgnoreCase));

    public FilmCost Practice => Account?.Practice ?? Costs.Practice;

    public FilmCost PerFilm => Film is null ? Costs.AllFilms : Costs.Of(Film);

    public IEnumerable<FilmCost> Films => Film is null ? Costs.ByFilm : [Costs.Of(Film)];

    /// <summary>What came without a price: of that film, or of everything.</summary>
    public IReadOnlyList<UnpricedStock> Unpriced => Account?.Unpriced ?? Costs.Facts.Unpriced;

    /// <summary>Whether nothing in the figures is without a price.</summary>
    public bool IsComplete => Unpriced.Count == 0 && PerFilm.IsComplete;

    public IReadOnlyList<SheetCost> Sheets => Account?.Sheets ?? Costs.Sheets;
}
