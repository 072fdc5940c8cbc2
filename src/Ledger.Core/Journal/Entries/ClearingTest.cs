namespace Ledger.Core.Journal.Entries;

/// <summary>A strip of film is timed until it clears in a fixer.</summary>
public sealed record ClearingTest : Entry
{
    /// <summary>The bath.</summary>
    public required string Bath { get; init; }

    /// <summary>The code of the film.</summary>
    public required string Film { get; init; }

    /// <summary>The time until it cleared, in seconds; tenths at the finest.</summary>
    public required decimal Seconds { get; init; }

    /// <summary>Whether this is the fresh time that later tests of the same film are measured against.</summary>
    public bool IsFresh { get; init; }

    /// <summary>Sheets that were cut up for the strips; none when a scrap was used.</summary>
    public int Sheets { get; init; }

    /// <summary>The box to draw them from; null for the one used first.</summary>
    public string? Container { get; init; }

    /// <inheritdoc/>
    public override string Kind => "clearing-test";
}
