using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Costing;

/// <summary>
/// What a period cost, and where the money is: spent = film + chemistry + supplies + prints + waste + on hand + still
/// in baths.
/// </summary>
public sealed class CostReading
{
    /// <summary>Reads the costs of a period.</summary>
    /// <param name="facts">What the journal knows of it.</param>
    /// <param name="countsPractice">
    /// Whether sheets for practice count in what a sheet or a negative cost; they are waste in either case.
    /// </param>
    public CostReading(CostFacts facts, bool countsPractice = false)
    {
        Facts = facts;
        CountsPractice = countsPractice;
        var opening = facts.Baths.Select(bath => bath.LeftBefore);
        Spent = facts.OnHandBefore + Sum(opening) + facts.Bought;
        Film = Sum(Sheets.Where(sheet => sheet.Fate.IsNegative()).Select(sheet => sheet.Film));
        SpoiledFilm = Sum(Sheets.Where(sheet => !sheet.Fate.IsNegative()).Select(sheet => sheet.Film));
        Chemistry = facts.Sessions.Chemistry;
        Supplies = facts.Sessions.Supplies;
        Prints = Sum(facts.Prints.Select(print => print.Total));
        NeverUsedInBaths = Sum(facts.Baths.Select(bath => bath.NeverUsed));
        Waste = SpoiledFilm + facts.Discarded + facts.Lost + NeverUsedInBaths;
        StillInBaths = Sum(facts.Baths.Where(bath => !bath.HasEnded)
            .Select(bath => bath.Share.LeftAfter(bath.WorkedAfter)));
    }

    /// <summary>What it was read from.</summary>
    public CostFacts Facts { get; }

    /// <summary>Whether sheets for practice count in what a sheet or a negative cost.</summary>
    public bool CountsPractice { get; }

    /// <summary>What was there when the period began, in containers and in baths.</summary>
    public Money Opening => Spent - Facts.Bought;

    /// <summary>What is there at its end, in containers and in baths.</summary>
    public Money Closing => OnHand + StillInBaths;

    /// <summary>The value at the beginning and what was bought since.</summary>
    public Money Spent { get; }

    /// <summary>Film that became negatives.</summary>
    public Money Film { get; }

    /// <summary>Chemistry used: one-shot developer and other one-shot chemistry, and the baths by area share.</summary>
    public Money Chemistry { get; }

    /// <summary>Supplies used up.</summary>
    public Money Supplies { get; }

    /// <summary>What print sessions used: paper, and their part of the baths for paper.</summary>
    public Money Prints { get; }

    /// <summary>Spoiled film, stock discarded or lost, and what was never used of baths that were discarded.</summary>
    public Money Waste { get; }

    /// <summary>
    /// The part of <see cref="Waste"/> that is developed film without a negative: rejects, tests, practice.
    /// </summary>
    public Money SpoiledFilm { get; }

    /// <summary>The part of <see cref="Waste"/> that was discarded with baths before their capacity was used.</summary>
    public Money NeverUsedInBaths { get; }

    /// <summary>What <see cref="Waste"/> is made of, in words.</summary>
    public string WasteText(MeasureStyle style) =>
        $"spoiled film {SpoiledFilm.Text(style)}, discarded {Facts.Discarded.Text(style)}, lost "
            + $"{Facts.Lost.Text(style)}, discarded unused with baths {NeverUsedInBaths.Text(style)}";

    /// <summary>The value of the containers at the end.</summary>
    public Money OnHand => Facts.OnHandAfter;

    /// <summary>What the baths in use at the end still have in them.</summary>
    public Money StillInBaths { get; }

    /// <summary>Whether all that was used or is on hand has a price.</summary>
    public bool IsComplete => Facts.Unpriced.Count == 0;

    /// <summary>Whether every millionth that is known is accounted for; see <see cref="IsComplete"/>.</summary>
    public bool Reconciles => Spent == Used + OnHand + StillInBaths;

    /// <summary>All that is gone: film, chemistry, supplies, prints and waste.</summary>
    public Money Used => Film + Chemistry + Supplies + Prints + Waste;

    /// <summary>The cost of every developed sheet, in order.</summary>
    public IReadOnlyList<SheetCost> Sheets => Facts.Sessions.Sheets;

    /// <summary>The sheets that count in what a negative cost.</summary>
    public IEnumerable<SheetCost> Counted => Sheets.Where(Counts);

    /// <summary>The sheets for practice, with their chemistry and supplies.</summary>
    public FilmCost Practice => FilmCost.Of("", Sheets.Where(sheet => sheet.Fate == Fate.Practice));

    /// <summary>The same by film, and the wasted sheets with it.</summary>
    public IEnumerable<FilmCost> ByFilm => Counted.Select(sheet => sheet.Item)
        .Concat(Facts.FilmDiscarded.Select(loss => loss.Item))
        .Distinct(StringComparer.OrdinalIgnoreCase)
        .Order(StringComparer.OrdinalIgnoreCase)
        .Select(Of);

    /// <summary>The costs of one film.</summary>
    public FilmCost Of(string item) => FilmCost.Of(
        item,
        Counted.Where(sheet => sheet.Item.Equals(item, StringComparison.OrdinalIgnoreCase)),
        Facts.FilmDiscarded.Where(loss => loss.Item.Equals(item, StringComparison.OrdinalIgnoreCase)));

    /// <summary>All films together, with their chemistry and supplies.</summary>
    public FilmCost AllFilms => FilmCost.Of("", Counted, Facts.FilmDiscarded);

    internal bool Counts(SheetCost sheet) => CountsPractice || sheet.Fate != Fate.Practice;

    private static Money Sum(IEnumerable<Money> amounts) =>
        amounts.Aggregate(Money.Zero, (sum, amount) => sum + amount);
}
