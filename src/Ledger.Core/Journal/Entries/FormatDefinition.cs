using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Entries;

/// <summary>
/// A format of the user's own, or another area for a known one. Sessions of the past keep the area that they were
/// recorded with.
/// </summary>
public sealed record FormatDefinition : Definition
{
    /// <summary>The format with its area.</summary>
    public required Format Format { get; init; }

    /// <inheritdoc/>
    public override string Kind => "format";
}
