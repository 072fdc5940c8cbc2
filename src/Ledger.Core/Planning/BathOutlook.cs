using Ledger.Core.Baths;
using Ledger.Core.Measures;

namespace Ledger.Core.Planning;

/// <summary>A bath before and after a session.</summary>
/// <param name="Item">The code of the item that the process wants a bath of.</param>
/// <param name="Bath">The bath; null when none is in use.</param>
/// <param name="IsFirst">Whether it counts the work: it stands alone or first.</param>
/// <param name="Before">The weighted area it has taken.</param>
/// <param name="After">The weighted area it will have taken, dummies among it.</param>
/// <param name="Fits">Whether it is good and has enough capacity left; null where that cannot be said: a fixer without
/// a capacity.</param>
/// <param name="Share">The part of its cost that the session uses up.</param>
/// <param name="Word">What is the matter with it; empty when all is well.</param>
/// <param name="Proposal">What to do about it first; empty when all is well.</param>
public sealed record BathOutlook(
    string Item, Bath? Bath, bool IsFirst, Area Before, Area After, bool? Fits, Money Share,
    string Word, string Proposal)
{
    /// <summary>
    /// What must be measured out of each item for the bath or baths that are to be mixed first; none where none is, or
    /// it is not known.
    /// </summary>
    public IReadOnlyList<(string Item, Quantity Amount)> ToMix { get; init; } = [];

    /// <summary>What is to be done about it before the session.</summary>
    public BathCure Cure { get; init; }

    /// <summary>The baths of which the user must name one: F4 or F9; empty when there is nothing to choose.</summary>
    public string Choices { get; init; } = "";
}

/// <summary>What makes a bath fit for a session.</summary>
public enum BathCure
{
    /// <summary>Nothing: it is fit, or what it lacks is for the user to decide, such as which bath is meant.</summary>
    None,

    /// <summary>A fresh one takes its place.</summary>
    Mix,

    /// <summary>The pair is rotated: the second moves up and a fresh one is second.</summary>
    Rotate,

    /// <summary>Both of the pair are mixed fresh.</summary>
    MixPair,

    /// <summary>No bath of its size takes the session: it is split, or a larger bath is mixed.</summary>
    Split,
}
