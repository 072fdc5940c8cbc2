namespace Ledger.Core.Journal.Entries;

/// <summary>A test of what is left in film or paper: silver after fixing, fixer after washing.</summary>
public sealed record ResidualCheck : Entry
{
    /// <summary>The bath it went through.</summary>
    public required string Bath { get; init; }

    /// <summary>The session; null for a test of the bath alone.</summary>
    public string? Session { get; init; }

    /// <summary>What was looked for: silver or fixer.</summary>
    public required string LookedFor { get; init; }

    /// <summary>What it showed: no stain, faint, 0.01 g/m²…</summary>
    public required string Result { get; init; }

    /// <summary>Whether that was good enough.</summary>
    public required bool HasPassed { get; init; }

    /// <inheritdoc/>
    public override string Kind => "residual-test";
}
