namespace Ledger.Core.Journal.Entries;

/// <summary>The exposure index at which the user exposes a lot.</summary>
public sealed record ExposureIndexSetting : Entry
{
    /// <summary>The code of a container of the lot.</summary>
    public required string Container { get; init; }

    /// <summary>The exposure index: 64, 80, 400…</summary>
    public required int ExposureIndex { get; init; }

    /// <inheritdoc/>
    public override string Kind => "exposure-index";
}
