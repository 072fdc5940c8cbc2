using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Costing;

/// <summary>What a period cost, and where the money is: spent = film + chemistry + supplies + waste + on hand + still in baths.</summary>
public sealed class CostReading
{
    private readonly List<SheetCost> _sheets;

    /// <summary>Reads the costs of a period.</summary>
    /// <param name="facts">What the journal knows of it.</param>
    public CostReading(CostFacts facts)
    {
        Facts = facts;
        _sheets = [.. facts.Sessions.SelectMany(SheetCost.Of)];
        var opening = facts.Baths.Select(bath => bath.LeftBefore);
        Spent = facts.OnHandBefore + Sum(opening) + facts.Bought;
        Film = Sum(_sheets.Where(sheet => sheet.Fate.IsNegative()).Select(sheet => sheet.Film));
        SpoiledFilm = Sum(_sheets.Where(sheet => !sheet.Fate.IsNegative()).Select(sheet => sheet.Film));
        Chemistry = Sum(facts.Sessions.Select(session => session.Developer + session.OtherChemistry + session.BathUsedUp));
        Supplies = Sum(facts.Sessions.Select(session => session.Supplies));
        NeverUsedInBaths = Sum(facts.Baths.Where(bath => bath.HasEnded).Select(bath => bath.Share.LeftAfter(bath.WorkedAfter)));
        Waste = SpoiledFilm + facts.ThrownAway + facts.Lost + NeverUsedInBaths;
        StillInBaths = Sum(facts.Baths.Where(bath => !bath.HasEnded).Select(bath => bath.Share.LeftAfter(bath.WorkedAfter)));
    }

    /// <summary>What it was read from.</summary>
    public CostFacts Facts { get; }

    /// <summary>The value at the beginning and what was bought since.</summary>
    public Money Spent { get; }

    /// <summary>Film that became negatives.</summary>
    public Money Film { get; }

    /// <summary>Chemistry used: one-shot developer and other one-shot chemistry, and the baths by area share.</summary>
    public Money Chemistry { get; }

    /// <summary>Supplies used up.</summary>
    public Money Supplies { get; }

    /// <summary>Spoiled film, stock thrown away or lost, and what was never used of baths that were poured out.</summary>
    public Money Waste { get; }

    /// <summary>The part of <see cref="Waste"/> that is developed film without a negative: rejects, tests, practice.</summary>
    public Money SpoiledFilm { get; }

    /// <summary>The part of <see cref="Waste"/> that was poured out with baths before their capacity was used.</summary>
    public Money NeverUsedInBaths { get; }

    /// <summary>The value of the containers at the end.</summary>
    public Money OnHand => Facts.OnHandAfter;

    /// <summary>What the baths in use at the end still have in them.</summary>
    public Money StillInBaths { get; }

    /// <summary>Whether every millionth is accounted for.</summary>
    public bool Reconciles => Spent == Used + OnHand + StillInBaths;

    /// <summary>All that is gone: film, chemistry, supplies and waste.</summary>
    public Money Used => Film + Chemistry + Supplies + Waste;

    /// <summary>The cost of every developed sheet, in order.</summary>
    public IReadOnlyList<SheetCost> Sheets => _sheets;

    /// <summary>The same by film, and the wasted sheets with it.</summary>
    public IEnumerable<FilmCost> ByFilm => _sheets.Select(sheet => sheet.Item)
        .Concat(Facts.FilmThrownAway.Select(loss => loss.Item))
        .Distinct(StringComparer.OrdinalIgnoreCase)
        .Order(StringComparer.OrdinalIgnoreCase)
        .Select(Of);

    /// <summary>The costs of one film.</summary>
    public FilmCost Of(string item)
    {
        var sheets = _sheets.Where(sheet => sheet.Item.Equals(item, StringComparison.OrdinalIgnoreCase)).ToList();
        var lost = Facts.FilmThrownAway.Where(loss => loss.Item.Equals(item, StringComparison.OrdinalIgnoreCase)).ToList();
        return new(
            item,
            sheets.Count + lost.Sum(loss => loss.Sheets),
            sheets.Count(sheet => sheet.Fate.IsNegative()),
            sheets.Count(sheet => sheet.Fate == Fate.Keeper),
            Sum(sheets.Select(sheet => sheet.Film)) + Sum(lost.Select(loss => loss.Cost)),
            Sum(sheets.Select(sheet => sheet.Developer + sheet.OtherChemistry)),
            Sum(sheets.Select(sheet => sheet.Supplies)));
    }

    /// <summary>All films together, with their chemistry and supplies.</summary>
    public FilmCost AllFilms
    {
        get
        {
            var films = ByFilm.ToList();
            return new(
                "",
                films.Sum(film => film.SheetsUsed),
                films.Sum(film => film.Negatives),
                films.Sum(film => film.Keepers),
                Sum(films.Select(film => film.Film)),
                Sum(films.Select(film => film.Chemistry)),
                Sum(films.Select(film => film.Supplies)));
        }
    }

    private static Money Sum(IEnumerable<Money> amounts) => amounts.Aggregate(Money.Zero, (sum, amount) => sum + amount);
}

/// <summary>What one film cost in a period, wasted sheets included.</summary>
/// <param name="Item">The film's code; empty for all films together.</param>
/// <param name="SheetsUsed">Sheets or rolls developed or thrown away.</param>
/// <param name="Negatives">Good negatives, keepers among them.</param>
/// <param name="Keepers">Negatives worth printing.</param>
/// <param name="Film">The cost of all sheets used, spoiled ones too.</param>
/// <param name="Chemistry">Their share of the chemistry.</param>
/// <param name="Supplies">Their share of the supplies.</param>
public sealed record FilmCost(
    string Item, long SheetsUsed, long Negatives, long Keepers, Money Film, Money Chemistry, Money Supplies)
{
    /// <summary>All of it.</summary>
    public Money Total => Film + Chemistry + Supplies;

    /// <summary>The cost per sheet used; null when there is none.</summary>
    public Money? PerSheetUsed => Total.Per(SheetsUsed);

    /// <summary>The cost per good negative; null when there is none.</summary>
    public Money? PerNegative => Total.Per(Negatives);

    /// <summary>The cost per keeper; null when there is none.</summary>
    public Money? PerKeeper => Total.Per(Keepers);
}
