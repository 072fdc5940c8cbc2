namespace Ledger.Core.Journal.Entries;

/// <summary>A supplier announces that an item will cost more.</summary>
public sealed record PriceRiseNotice : Entry
{
    /// <summary>The item's code.</summary>
    public required string Item { get; init; }

    /// <summary>The first day of the new price.</summary>
    public required LocalDate From { get; init; }

    /// <summary>By how many percent.</summary>
    public required decimal Percent { get; init; }

    /// <inheritdoc/>
    public override string Kind => "price rise";
}
