namespace Ledger.Core.Journal.Entries;

/// <summary>Sheets in holders were exposed.</summary>
public sealed record ExposureNote : Entry
{
    /// <summary>The sides, such as E07-2; a holder's name stands for all its sides.</summary>
    public required IReadOnlyList<string> Sides { get; init; }

    /// <summary>How they will be developed: N, N+1, N-1…; empty for N.</summary>
    public string Group { get; init; } = "";

    /// <summary>One free line; may be empty.</summary>
    public string Subject { get; init; } = "";

    /// <inheritdoc/>
    public override string Kind => "exposure";
}
