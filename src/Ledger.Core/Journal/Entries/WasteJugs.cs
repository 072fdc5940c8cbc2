using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Entries;

/// <summary>A jug for used solutions is started.</summary>
public sealed record JugStart : Entry
{
    /// <summary>What is written on it.</summary>
    public required string Jug { get; init; }

    /// <summary>What it holds when full.</summary>
    public required Volume Size { get; init; }

    /// <summary>What goes into it: used fixer, developer…</summary>
    public required string Contents { get; init; }

    /// <inheritdoc/>
    public override string Kind => "jug-start";
}

/// <summary>Used solution goes into a jug, apart from a bath that is discarded.</summary>
public sealed record JugFilling : Entry
{
    /// <summary>The jug.</summary>
    public required string Jug { get; init; }

    /// <summary>How much.</summary>
    public required Volume Volume { get; init; }

    /// <summary>What it is.</summary>
    public required string What { get; init; }

    /// <inheritdoc/>
    public override string Kind => "jug-filling";
}

/// <summary>
/// A jug is handed over. Whether where it goes is right is for the maker's safety data sheet and the local rules to
/// say.
/// </summary>
public sealed record JugHandover : Entry
{
    /// <summary>The jug.</summary>
    public required string Jug { get; init; }

    /// <summary>Where it went, as the user writes it.</summary>
    public required string To { get; init; }

    /// <inheritdoc/>
    public override string Kind => "jug-handover";
}
