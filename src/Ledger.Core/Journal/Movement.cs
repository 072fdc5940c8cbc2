using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>Part of an entry: so much of a lot goes from one place to another, and its cost with it.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="From">The place it leaves.</param>
/// <param name="To">The place it comes to.</param>
/// <param name="Quantity">How much, in base units; positive.</param>
/// <param name="Value">What it cost; not negative.</param>
public sealed record Movement(LotId Lot, PlaceId From, PlaceId To, long Quantity, Money Value)
{
    /// <summary>The movement that undoes this one.</summary>
    public Movement Reversed() => this with { From = To, To = From };
}
