using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Costing;

/// <summary>
/// Where one film's money is: what was there of it and what was bought, with the chemistry and the supplies that its
/// sheets used, is what became negatives, prints or waste, and what is on hand. Baths belong to no film, so what is
/// left in them is not in it.
/// </summary>
public sealed class FilmAccount
{
    private readonly List<SheetCost> _sheets;
    private readonly List<StockLoss> _losses;

    /// <summary>Reads a film's account.</summary>
    /// <param name="costs">The costs of the period.</param>
    /// <param name="stock">The stock of the same period by the same formula.</param>
    /// <param name="film">The film's code.</param>
    public FilmAccount(CostReading costs, Revaluation stock, string film)
    {
        (Item, Costs) = (film, costs);
        _sheets = [.. costs.Sheets.Where(sheet => IsOf(sheet.Item))];
        _losses = [.. costs.Facts.Losses.Where(loss => loss.Kind == ItemKind.Film && IsOf(loss.Item))];
        if (stock.Items.FirstOrDefault(item => IsOf(item.Item)) is { } held)
            (Opening, Bought, OnHand) = (held.Before, held.Bought, held.OnHand);
        PrintsBySession =
        [
            .. stock.Costed.Where(costed => IsOf(costed.Move.Item) && costed.Move.Other == Places.Prints
                && costed.Move.Date >= costs.Facts.From)
                .GroupBy(costed => costed.Move.Entry)
                .Select(entry => (entry.Key, entry.First().Move.Date,
                    Sum(entry.Select(costed => costed.Move.Change < 0 ? costed.Cost : Money.Zero - costed.Cost)))),
        ];
    }

    /// <summary>The film's code.</summary>
    public string Item { get; }

    /// <summary>The costs of the period, of everything.</summary>
    public CostReading Costs { get; }

    /// <summary>What its stock was worth when the period began, in boxes and holders.</summary>
    public Money Opening { get; }

    /// <summary>What was bought of it.</summary>
    public Money Bought { get; }

    /// <summary>What its stock is worth at the end.</summary>
    public Money OnHand { get; }

    /// <summary>Its sheets that became negatives.</summary>
    public Money Film => Sum(_sheets.Where(sheet => sheet.Fate.IsNegative()).Select(sheet => sheet.Film));

    /// <summary>Its share of the chemistry.</summary>
    public Money Chemistry => Sum(_sheets.Select(sheet => sheet.Chemistry));

    /// <summary>Its share of the supplies.</summary>
    public Money Supplies => Sum(_sheets.Select(sheet => sheet.Supplies));

    /// <summary>Paper that was printed on.</summary>
    public Money Prints => Sum(PrintsBySession.Select(print => print.Cost));

    /// <summary>The same by the entry of each print session.</summary>
    public IReadOnlyList<(long Entry, LocalDate Date, Money Cost)> PrintsBySession { get; }

    /// <summary>Its sheets that were developed without becoming negatives.</summary>
    public Money SpoiledFilm => Sum(_sheets.Where(sheet => !sheet.Fate.IsNegative()).Select(sheet => sheet.Film));

    /// <summary>What of it was discarded or lost, less what a count found in excess.</summary>
    public Money ThrownOrLost => Sum(_losses.Select(loss => loss.Cost));

    /// <summary>Spoiled, discarded or lost.</summary>
    public Money Waste => SpoiledFilm + ThrownOrLost;

    /// <summary>What was there of it, what was bought of it, and what its sheets used of everything else.</summary>
    public Money Spent => Opening + Bought + Chemistry + Supplies;

    /// <summary>Whether every millionth of its stock is accounted for.</summary>
    public bool Reconciles => Opening + Bought == Film + Prints + Waste + OnHand;

    /// <summary>What of it came without a price.</summary>
    public IReadOnlyList<UnpricedStock> Unpriced => [.. Costs.Facts.Unpriced.Where(stock => IsOf(stock.Item))];

    /// <summary>Its sheets, in order.</summary>
    public IReadOnlyList<SheetCost> Sheets => _sheets;

    /// <summary>What its sheets and negatives cost.</summary>
    public FilmCost PerSheet => Costs.Of(Item);

    /// <summary>Its sheets for practice.</summary>
    public FilmCost Practice => FilmCost.Of(Item, _sheets.Where(sheet => sheet.Fate == Fate.Practice));

    private bool IsOf(string item) => item.Equals(Item, StringComparison.OrdinalIgnoreCase);

    private static Money Sum(IEnumerable<Money> amounts) => new(amounts.Sum(amount => amount.Millionths));
}
