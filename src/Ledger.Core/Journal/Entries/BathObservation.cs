namespace Ledger.Core.Journal.Entries;

/// <summary>Something was seen or smelled at a bath. It may end the bath's use before anybody pours it out.</summary>
public sealed record BathObservation : Entry
{
    /// <summary>The bath.</summary>
    public required string Bath { get; init; }

    /// <summary>What it was: yellow, specks, smell…</summary>
    public required string Sign { get; init; }

    /// <summary>Whether the bath is not to be used any more.</summary>
    public bool EndsUse { get; init; } = true;

    /// <inheritdoc/>
    public override string Kind => "observation";
}
