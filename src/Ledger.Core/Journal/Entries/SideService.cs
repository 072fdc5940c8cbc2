namespace Ledger.Core.Journal.Entries;

/// <summary>Sides are taken out of service, with the film that is in them, or put back into it.</summary>
public sealed record SideService : Entry
{
    /// <summary>The sides, such as E07-2; a holder's name stands for all its sides.</summary>
    public required IReadOnlyList<string> Sides { get; init; }

    /// <summary>Whether they are in service from now on.</summary>
    public required bool IsInService { get; init; }

    /// <summary>Why: light leak, stiff slide… or repaired.</summary>
    public required string Reason { get; init; }

    /// <inheritdoc/>
    public override string Kind => "service";
}
