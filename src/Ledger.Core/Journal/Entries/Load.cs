namespace Ledger.Core.Journal.Entries;

/// <summary>Sheets go from a box into holders, one into each side.</summary>
public sealed record Load : Entry
{
    /// <summary>The sides, such as E07-2; a holder's name stands for all its sides.</summary>
    public required IReadOnlyList<string> Sides { get; init; }

    /// <summary>The code of the film, for the box used first; or of a box.</summary>
    public required string From { get; init; }

    /// <inheritdoc/>
    public override string Kind => "load";
}
