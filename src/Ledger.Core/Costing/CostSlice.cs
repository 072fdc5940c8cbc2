using Ledger.Core.Measures;

namespace Ledger.Core.Costing;

/// <summary>
/// A part of what was used in a period: a film's, a session's, a month's. The parts of a period add up to all of it.
/// </summary>
/// <param name="Name">Which part: fen80, S02, 2026-03, 2026.</param>
/// <param name="PerSheet">What its sheets and negatives cost.</param>
/// <param name="Film">Film that became negatives.</param>
/// <param name="Chemistry">Chemistry, the baths by area share.</param>
/// <param name="Supplies">Supplies.</param>
/// <param name="Waste">Spoiled film, what was discarded or lost, and what was never used of baths.</param>
public sealed record CostSlice(string Name, FilmCost PerSheet, Money Film, Money Chemistry, Money Supplies, Money Waste)
{
    /// <summary>What print sessions used.</summary>
    public Money Prints { get; init; }

    /// <summary>All of it.</summary>
    public Money Used => Film + Chemistry + Supplies + Prints + Waste;

    /// <summary>A share in percent of what was used, to so many decimals; null when nothing was.</summary>
    public decimal? Percent(Money part, int decimals) => part.PercentOf(Used, decimals);
}

/// <summary>What the costs of a period are divided by.</summary>
public enum CostGrouping
{
    /// <summary>By film.</summary>
    Film,

    /// <summary>By session.</summary>
    Session,

    /// <summary>By month.</summary>
    Month,

    /// <summary>By year.</summary>
    Year,

    /// <summary>By the process of the session.</summary>
    Process,

    /// <summary>By the developer of the session.</summary>
    Developer,

    /// <summary>By the bath that the session is filed under: its fixer.</summary>
    Bath,

    /// <summary>By the film's emulsion number.</summary>
    Number,
}
