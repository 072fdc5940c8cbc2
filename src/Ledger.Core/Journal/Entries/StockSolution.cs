using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Entries;

/// <summary>A powder or concentrate is mixed into a stock solution, from which working solutions are drawn.</summary>
public sealed record StockSolution : Entry
{
    /// <summary>The code of the stock solution's item.</summary>
    public required string Item { get; init; }

    /// <summary>The code of what it is mixed from; null for what the item names.</summary>
    public string? From { get; init; }

    /// <summary>How many packs are mixed whole; 1 unless <see cref="Amount"/> says otherwise.</summary>
    public int Packs { get; init; } = 1;

    /// <summary>A weighed part of a pack, in place of whole ones.</summary>
    public Quantity? Amount { get; init; }

    /// <summary>The stock solution that is made.</summary>
    public required Volume Volume { get; init; }

    /// <summary>The bottles it is filled into; none for one bottle that just holds it.</summary>
    public IReadOnlyList<FilledBottle> Bottles { get; init; } = [];

    /// <summary>The container to draw from; null for the one used first.</summary>
    public string? Container { get; init; }

    /// <inheritdoc/>
    public override string Kind => "stock-solution";
}
