using Ledger.Core.Film;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Costing;

/// <summary>What the journal knows of the costs of a period.</summary>
/// <param name="From">The first day.</param>
/// <param name="To">The last day, inclusive.</param>
/// <param name="OnHandBefore">The value of all containers when the period began.</param>
/// <param name="Bought">What was bought in it.</param>
/// <param name="OnHandAfter">The value of all containers when it ended.</param>
/// <param name="Discarded">What was discarded unused in it.</param>
/// <param name="FilmDiscarded">Sheets of film discarded undeveloped in it, by item.</param>
/// <param name="Lost">What counts found missing, less what they found in excess.</param>
/// <param name="Baths">Every bath that was in use on a day of the period.</param>
/// <param name="Sessions">What the sessions cost.</param>
public sealed record CostFacts(
    LocalDate From,
    LocalDate To,
    Money OnHandBefore,
    Money Bought,
    Money OnHandAfter,
    Money Discarded,
    IReadOnlyList<FilmLoss> FilmDiscarded,
    Money Lost,
    IReadOnlyList<BathUse> Baths,
    SessionCosts Sessions)
{
    /// <summary>The print sessions in order.</summary>
    public IReadOnlyList<PrintUse> Prints { get; init; } = [];

    /// <summary>What came without a price and was used in the period or is on hand at its end.</summary>
    public IReadOnlyList<UnpricedStock> Unpriced { get; init; } = [];

    /// <summary>
    /// What was discarded unused or found missing, day by day; what a count found in excess is less than nothing.
    /// </summary>
    public IReadOnlyList<StockLoss> Losses { get; init; } = [];
}

/// <summary>Stock of one item that was discarded or lost on a day.</summary>
/// <param name="Date">The day.</param>
/// <param name="Item">The item.</param>
/// <param name="Kind">What sort of thing it is.</param>
/// <param name="Quantity">How much, in base units.</param>
/// <param name="Cost">What it cost.</param>
public sealed record StockLoss(LocalDate Date, string Item, ItemKind Kind, long Quantity, Money Cost)
{
    /// <summary>How much of it came without a price.</summary>
    public long Unpriced { get; init; }
}

/// <summary>Film discarded undeveloped.</summary>
/// <param name="Item">The film.</param>
/// <param name="Sheets">How many sheets or rolls.</param>
/// <param name="Cost">What they cost.</param>
public sealed record FilmLoss(string Item, long Sheets, Money Cost)
{
    /// <summary>How many of them came without a price.</summary>
    public long Unpriced { get; init; }

    /// <summary>The film among what was discarded or lost, by item.</summary>
    public static IReadOnlyList<FilmLoss> Of(IEnumerable<StockLoss> losses) =>
    [
        .. losses.Where(loss => loss.Kind == ItemKind.Film).GroupBy(loss => loss.Item)
            .Select(group => new FilmLoss(group.Key, group.Sum(loss => loss.Quantity),
                new(group.Sum(loss => loss.Cost.Millionths)))
            {
                Unpriced = group.Sum(loss => loss.Unpriced),
            })
            .Where(loss => loss.Sheets != 0 || loss.Cost != Money.Zero).OrderBy(loss => loss.Item,
                StringComparer.OrdinalIgnoreCase),
    ];
}

/// <summary>A bath's work before and in a period.</summary>
/// <param name="Share">Its cost and capacity.</param>
/// <param name="WorkedBefore">The weighted area it had taken when the period began.</param>
/// <param name="WorkedAfter">The weighted area it had taken when the period ended.</param>
/// <param name="WasMixedBefore">Whether it stood there when the period began.</param>
/// <param name="HasEnded">Whether it was discarded by the end of the period.</param>
public sealed record BathUse(BathShare Share, Area WorkedBefore, Area WorkedAfter, bool WasMixedBefore, bool HasEnded)
{
    /// <summary>What was added to it in the period.</summary>
    public Money AddedSince => new(Share.TopUps.Where(added => added.IsNew).Sum(added => added.Value.Millionths));

    /// <summary>The day it was discarded; null while it is in use.</summary>
    public LocalDate? EndedOn { get; init; }

    /// <summary>What was discarded with it before its capacity was used.</summary>
    public Money NeverUsed => HasEnded ? Share.LeftAfter(WorkedAfter) : Money.Zero;

    /// <summary>What was left of it when the period began.</summary>
    public Money LeftBefore => WasMixedBefore ? Share.LeftAfter(WorkedBefore) - AddedSince : Money.Zero;
}

/// <summary>What a session used.</summary>
/// <param name="Session">Its name.</param>
/// <param name="Date">Its day.</param>
/// <param name="Developer">The cost of its one-shot developer.</param>
/// <param name="OtherChemistry">The cost of its other one-shot chemistry.</param>
/// <param name="Supplies">The cost of its supplies.</param>
/// <param name="Baths">The baths that it went through.</param>
/// <param name="Lines">The film it developed.</param>
public sealed record SessionUse(
    string Session,
    LocalDate Date,
    Money Developer,
    Money OtherChemistry,
    Money Supplies,
    IReadOnlyList<BathPart> Baths,
    IReadOnlyList<FilmUse> Lines)
{
    /// <summary>The number of its entry.</summary>
    public long Entry { get; init; }

    /// <summary>Its process.</summary>
    public string Process { get; init; } = "";

    /// <summary>The item of its developer, the bath named where it is used again; empty where it had none.</summary>
    public string Developing { get; init; } = "";

    /// <summary>The bath that it is filed under; empty where it went through none.</summary>
    public string Bath { get; init; } = "";

    /// <summary>Whether all chemistry and supplies that it used up had a price.</summary>
    public bool IsPriced { get; init; } = true;

    /// <summary>
    /// Its sheets by their place in the order of the session, counting from 1; rolls have a place but no number of
    /// their own.
    /// </summary>
    public IReadOnlyDictionary<long, SheetName> Sheets { get; init; } = new Dictionary<long, SheetName>();

    /// <summary>The part of the baths' cost that its sheets used up.</summary>
    public Money BathUsedUp => new(Baths.Sum(bath => bath.UsedUp.Millionths));
}

/// <summary>What a developed sheet is called; a roll has no name of its own.</summary>
/// <param name="Id">Its number in the ledger.</param>
/// <param name="Negative">The number it is filed under; null when it is no negative.</param>
public readonly record struct SheetName(SheetId Id, string? Negative)
{
    /// <summary>Its negative's number, its own number, or the place of a roll in its session.</summary>
    public string Of(string session, long position) => this == default
        ? string.Create(CultureInfo.InvariantCulture, $"{session}-{position:00}")
        : Negative ?? Id.ToString();
}

/// <summary>What a print session used.</summary>
/// <param name="Entry">The number of its entry.</param>
/// <param name="Session">Its name.</param>
/// <param name="Date">Its day.</param>
/// <param name="Stock">The cost of what it took from the shelf: paper, and one-shot chemistry.</param>
/// <param name="Baths">The baths that it went through.</param>
public sealed record PrintUse(long Entry, string Session, LocalDate Date, Money Stock, IReadOnlyList<BathPart> Baths)
{
    /// <summary>All of it.</summary>
    public Money Total => Stock + new Money(Baths.Sum(bath => bath.UsedUp.Millionths));
}

/// <summary>Sheets of one lot and one fate in a session.</summary>
/// <param name="Item">The film.</param>
/// <param name="Sheets">How many.</param>
/// <param name="Area">Their area.</param>
/// <param name="Cost">What the film cost.</param>
/// <param name="Fate">What became of them.</param>
public sealed record FilmUse(string Item, long Sheets, Area Area, Money Cost, Fate Fate)
{
    /// <summary>The lot.</summary>
    public LotId Lot { get; init; }

    /// <summary>The emulsion number of the lot; may be empty.</summary>
    public string Number { get; init; } = "";

    /// <summary>Whether the lot had a price.</summary>
    public bool IsPriced { get; init; } = true;

    /// <summary>What the film asks of a fixer, in thousandths of what usual film does.</summary>
    public int FixerFactorThousandths { get; init; } = 1000;
}
