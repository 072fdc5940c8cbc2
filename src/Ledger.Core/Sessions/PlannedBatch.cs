using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Sessions;

/// <summary>Sheets of one film and one development group that go through the trays together, in the order in which they go in and come out.</summary>
public sealed record PlannedBatch
{
    /// <summary>Its number in the session.</summary>
    public required int Number { get; init; }

    /// <summary>The film.</summary>
    public required Item Film { get; init; }

    /// <summary>The development group.</summary>
    public required string Group { get; init; }

    /// <summary>The sheets.</summary>
    public required IReadOnlyList<PlannedSheet> Sheets { get; init; }

    /// <summary>Whether a dummy, a rejected sheet of the same format, goes with a lone sheet so that it can be moved about.</summary>
    public bool HasDummy { get; init; }

    /// <summary>How many lie in the stack, the dummy among them.</summary>
    public int InTray => Sheets.Count + (HasDummy ? 1 : 0);

    /// <summary>The area of film to develop. A dummy has been developed before and asks for no developer.</summary>
    public Area Area => Film.AreaOf(Sheets.Count);

    /// <summary>The area of the dummy, which the fixer takes as well.</summary>
    public Area DummyArea => Film.AreaOf(HasDummy ? 1 : 0);

    /// <summary>Rolls are not shuffled in a tray.</summary>
    public bool IsShuffled => Film.Unit == Unit.Sheet;

    /// <summary>What the developer tray takes; null for a process without developer.</summary>
    public BatchDeveloper? Developer { get; init; }

    /// <summary>The developing time; null when the process does not say it.</summary>
    public decimal? Minutes { get; init; }

    /// <summary>How often a sheet is moved; null for rolls.</summary>
    public decimal? ShuffleEverySeconds { get; init; }

    /// <summary>When the stack is turned by 180 degrees: at half of the time; null for rolls or an unknown time.</summary>
    public decimal? TurnAtMinutes => IsShuffled && Minutes is { } minutes ? minutes / 2 : null;
}
