using Ledger.Core.Keeping;

namespace Ledger.Core.Journal.Entries;

/// <summary>
/// A bath stands in another container from this day on: poured back into its bottle, left in the tray…
/// </summary>
public sealed record BathStorage : Entry
{
    /// <summary>The bath.</summary>
    public required string Bath { get; init; }

    /// <summary>What it stands in now.</summary>
    public required WorkingContainer Container { get; init; }

    /// <inheritdoc/>
    public override string Kind => "bath-storage";
}
