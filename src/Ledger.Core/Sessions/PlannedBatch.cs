using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Sessions;

/// <summary>
/// Sheets of one film and one development group that go through the trays together, in the order in which they go in
/// and come out.
/// </summary>
/// <param name="Number">Its number in the session.</param>
/// <param name="Film">The film.</param>
/// <param name="Group">The development group.</param>
/// <param name="Sheets">The sheets.</param>
public sealed record PlannedBatch(int Number, Item Film, string Group, IReadOnlyList<PlannedSheet> Sheets)
{
    /// <summary>
    /// Whether a dummy, a rejected sheet of the same format, goes with a lone sheet so that it can be moved about.
    /// </summary>
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

    /// <summary>
    /// When the stack is turned by 180 degrees: at half of the time; null for rolls or an unknown time.
    /// </summary>
    public decimal? TurnAtMinutes => IsShuffled && Minutes is { } minutes ? minutes / 2 : null;
}
