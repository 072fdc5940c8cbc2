using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Entries;

/// <summary>A bath is discarded, or a container, or part of an item's stock, is discarded unused.</summary>
public sealed record Discard : Entry
{
    /// <summary>The code of a bath, a container, or an item.</summary>
    public required string What { get; init; }

    /// <summary>How much; null for all of a bath or container. An item needs it.</summary>
    public Quantity? Quantity { get; init; }

    /// <summary>Why: exhausted, expired, specks, fogged…</summary>
    public required string Reason { get; init; }

    /// <summary>The waste jug that takes a bath, or a liquid; null when it goes elsewhere.</summary>
    public string? Jug { get; init; }

    /// <summary>
    /// The place that took it, where it went into no jug: a collection point. Null when it is not said.
    /// </summary>
    public string? To { get; init; }

    /// <inheritdoc/>
    public override string Kind => "discard";
}
