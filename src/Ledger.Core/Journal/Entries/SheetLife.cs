using Ledger.Core.Film;
using Ledger.Core.Sessions;

namespace Ledger.Core.Journal.Entries;

/// <summary>Sheets have another fate from a day on: a negative turns out to be spoiled, or is good again.</summary>
public sealed record FateChange : Entry
{
    /// <summary>The sheets, by their negatives' numbers or their own.</summary>
    public required IReadOnlyList<string> Sheets { get; init; }

    /// <summary>What they are from that day on.</summary>
    public required Fate Fate { get; init; }

    /// <summary>What spoiled them; only of rejects.</summary>
    public RejectCause? Cause { get; init; }

    /// <inheritdoc/>
    public override string Kind => "fate";
}

/// <summary>Something was done to developed sheets, or tested or seen on them.</summary>
public sealed record SheetNote : Entry
{
    /// <summary>The sheets, by their negatives' numbers or their own.</summary>
    public required IReadOnlyList<string> Sheets { get; init; }

    /// <summary>What.</summary>
    public required SheetWork What { get; init; }

    /// <summary>What it showed, or how it was done; may be empty.</summary>
    public string Result { get; init; } = "";

    /// <summary>Whether a test was passed; null where nothing was tested.</summary>
    public bool? HasPassed { get; init; }

    /// <inheritdoc/>
    public override string Kind => "sheet-note";
}

/// <summary>Sheets are kept somewhere: a sleeve, a page, a box.</summary>
public sealed record Filing : Entry
{
    /// <summary>The sheets, by their negatives' numbers or their own.</summary>
    public required IReadOnlyList<string> Sheets { get; init; }

    /// <summary>Where: binder B, page 12.</summary>
    public required string Place { get; init; }

    /// <inheritdoc/>
    public override string Kind => "filing";
}
