using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Entries;

/// <summary>A bottle is filled into smaller ones; each begins a life of its own.</summary>
public sealed record Decanting : Entry
{
    /// <summary>The code of the bottle, or of an item for the one used first.</summary>
    public required string From { get; init; }

    /// <summary>The bottles that were filled, in their order.</summary>
    public required IReadOnlyList<FilledBottle> Bottles { get; init; }

    /// <inheritdoc/>
    public override string Kind => "decanting";
}

/// <summary>A bottle that something was filled into.</summary>
/// <param name="Size">What it holds when full.</param>
/// <param name="Amount">What was filled in; null for a full one.</param>
/// <param name="Name">What is written on it; null for the item's code and the next running number.</param>
public sealed record FilledBottle(Quantity Size, Quantity? Amount = null, string? Name = null);
