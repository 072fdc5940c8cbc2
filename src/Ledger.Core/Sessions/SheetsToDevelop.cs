using Ledger.Core.Film;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Sessions;

/// <summary>Sheets or rolls of one film and one development group that wait to be developed.</summary>
/// <param name="Film">The film.</param>
/// <param name="Group">The development group: N, N+1, N-1…; may be empty.</param>
/// <param name="Count">How many.</param>
/// <param name="Subject">What is on them, so that sheets of one subject are spread over the batches; empty when not
/// known.</param>
/// <param name="Holder">The holder they were exposed in, for the same reason; empty when not known.</param>
public sealed record SheetsToDevelop(Item Film, string Group, int Count, string Subject = "", string Holder = "")
{
    /// <summary>The sheet itself, where it is known; a known sheet has a line of its own.</summary>
    public Sheet? Known { get; init; }

    /// <summary>The batch that the user puts them into; null where the plan chooses.</summary>
    public int? Batch { get; init; }

    /// <summary>Their area.</summary>
    public Area Area => Film.AreaOf(Count);
}

/// <summary>One sheet in a batch.</summary>
/// <param name="Number">Its number in the plan, in the order in which sheets go in and come out.</param>
/// <param name="Subject">What is on it; may be empty.</param>
/// <param name="Holder">Its holder; may be empty.</param>
public sealed record PlannedSheet(int Number, string Subject, string Holder)
{
    /// <summary>The sheet itself, where it is known.</summary>
    public Sheet? Known { get; init; }

    /// <summary>What is known of it: "mill race, E04-1".</summary>
    public override string ToString() =>
        string.Join(", ", new[] { Subject, Known?.SideCode ?? Holder }.Where(text => text.Length > 0));
}
