using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Entries;

/// <summary>How the user orders an item, in place of what was said before.</summary>
public sealed record OrderTermsSetting : Entry
{
    /// <summary>The terms.</summary>
    public required OrderTerms Terms { get; init; }

    /// <inheritdoc/>
    public override string Kind => "order terms";
}
