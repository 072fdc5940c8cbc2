namespace Ledger.Core.Journal.Entries;

/// <summary>
/// Somebody looked at a bath's indicator. The colour that the item names ends the bath's use; another one is put down
/// only.
/// </summary>
public sealed record IndicatorReading : Entry
{
    /// <summary>The bath.</summary>
    public required string Bath { get; init; }

    /// <summary>The colour it had.</summary>
    public required string Colour { get; init; }

    /// <inheritdoc/>
    public override string Kind => "indicator";
}
