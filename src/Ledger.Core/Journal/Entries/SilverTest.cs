namespace Ledger.Core.Journal.Entries;

/// <summary>A silver strip was held into a fixer.</summary>
public sealed record SilverTest : Entry
{
    /// <summary>The bath.</summary>
    public required string Bath { get; init; }

    /// <summary>What it showed, in grams of silver per litre.</summary>
    public required decimal GramsPerLitre { get; init; }

    /// <inheritdoc/>
    public override string Kind => "silver-test";
}
