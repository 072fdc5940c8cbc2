using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Costing;

/// <summary>What one film cost in a period, wasted sheets included.</summary>
/// <param name="Item">The film's code; empty for all films together.</param>
/// <param name="SheetsUsed">Sheets or rolls developed or discarded.</param>
/// <param name="Negatives">Good negatives, keepers among them.</param>
/// <param name="Keepers">Negatives worth printing.</param>
/// <param name="Film">The cost of all sheets used, spoiled ones too.</param>
/// <param name="Chemistry">Their share of the chemistry.</param>
/// <param name="Supplies">Their share of the supplies.</param>
public sealed record FilmCost(
    string Item, long SheetsUsed, long Negatives, long Keepers, Money Film, Money Chemistry, Money Supplies)
{
    /// <summary>Adds up sheets, and film that was discarded or lost undeveloped.</summary>
    public static FilmCost Of(string item, IEnumerable<SheetCost> sheets, params IEnumerable<FilmLoss> lost)
    {
        var (used, negatives, keepers, unpriced) = (0L, 0L, 0L, 0L);
        var (film, spoiled, chemistry, supplies) = (Money.Zero, Money.Zero, Money.Zero, Money.Zero);
        foreach (var sheet in sheets)
        {
            used++;
            film += sheet.Film;
            chemistry += sheet.Chemistry;
            supplies += sheet.Supplies;
            unpriced += sheet.IsComplete ? 0 : 1;
            negatives += sheet.Fate.IsNegative() ? 1 : 0;
            keepers += sheet.Fate == Fate.Keeper ? 1 : 0;
            spoiled += sheet.Fate.IsNegative() ? Money.Zero : sheet.Film;
        }

        foreach (var loss in lost)
        {
            used += loss.Sheets;
            film += loss.Cost;
            spoiled += loss.Cost;
            unpriced += loss.Unpriced;
        }

        return new(item, used, negatives, keepers, film, chemistry, supplies)
        {
            Spoiled = spoiled,
            Unpriced = unpriced,
        };
    }

    /// <summary>
    /// The part of <see cref="Film"/> that became no negative: rejects, tests, sheets discarded or lost.
    /// </summary>
    public Money Spoiled { get; init; }

    /// <summary>
    /// How many of the sheets used something that came without a price, so that they cost more than is known.
    /// </summary>
    public long Unpriced { get; init; }

    /// <summary>Whether everything in these figures has a price.</summary>
    public bool IsComplete => Unpriced == 0;

    /// <summary>All of it.</summary>
    public Money Total => Film + Chemistry + Supplies;

    /// <summary>The cost per sheet used; null when there is none, or when a count found more than was used.</summary>
    public Money? PerSheetUsed => SheetsUsed > 0 ? Total.Per(SheetsUsed) : null;

    /// <summary>The cost per good negative; null when there is none.</summary>
    public Money? PerNegative => Total.Per(Negatives);

    /// <summary>The cost per keeper; null when there is none.</summary>
    public Money? PerKeeper => Total.Per(Keepers);
}
