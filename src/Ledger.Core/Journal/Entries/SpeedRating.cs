namespace Ledger.Core.Journal.Entries;

/// <summary>The speed at which the user exposes a lot.</summary>
public sealed record SpeedRating : Entry
{
    /// <summary>The code of a container of the lot.</summary>
    public required string Container { get; init; }

    /// <summary>The user's own speed: 64, 80, 400…</summary>
    public required int Speed { get; init; }

    /// <inheritdoc/>
    public override string Kind => "speed";
}
