using Ledger.Core.Film;

namespace Ledger.Core.Tracing;

/// <summary>What the ledger remembers of what came from what. All answers are of what had happened by the end of a
/// day.</summary>
public interface ITraceRecords
{
    /// <summary>
    /// What somebody may mean by a name: a sheet, a negative, a bath, a box or bottle, a number of a delivery, a holder
    /// side, a session, a print session,
    /// a plan, or a box of exposed sheets. Several where several bear the name; none where nothing does.
    /// </summary>
    IReadOnlyList<TraceNode> Named(string name, LocalDate asOf) => [];

    /// <summary>The links that lead to these nodes.</summary>
    IReadOnlyList<TraceLink> Into(IReadOnlyCollection<TraceNode> nodes, LocalDate asOf) => [];

    /// <summary>The links that lead from these nodes.</summary>
    IReadOnlyList<TraceLink> OutOf(IReadOnlyCollection<TraceNode> nodes, LocalDate asOf) => [];

    /// <summary>
    /// The links that lead from these nodes, where only some are wanted: at most so many rows of each sort are looked
    /// at.
    /// </summary>
    /// <returns>The links, and whether there may be more.</returns>
    (IReadOnlyList<TraceLink> Links, bool AreMore) OutOf(
        IReadOnlyCollection<TraceNode> nodes, LocalDate asOf, int atMost) => (OutOf(nodes, asOf), false);

    /// <summary>
    /// The sheets that went through a bath in sessions after a moment, at most so many, the first first.
    /// </summary>
    IReadOnlyList<SheetId> ThroughSince(TraceNode bath, Moment after, LocalDate asOf, int atMost) => [];

    /// <summary>
    /// What a bath had taken before and after one session or print session; null where that did not go through it.
    /// </summary>
    BathPassing? Passing(TraceNode bath, TraceNode by, LocalDate asOf) => null;

    /// <summary>What each of these nodes is called and what there is to say of it.</summary>
    IReadOnlyDictionary<TraceNode, TraceLabel> Labels(IReadOnlyCollection<TraceNode> nodes, LocalDate asOf) =>
        new Dictionary<TraceNode, TraceLabel>();

    /// <summary>What went through a bath, in order, with what it had taken before and after.</summary>
    IReadOnlyList<BathPassing> Passings(string bath, LocalDate asOf) => [];

    /// <summary>The cards of sheets, those of the highest number last; sheets that the ledger does not know have
    /// none.</summary>
    IReadOnlyList<SheetCard> Cards(IReadOnlyCollection<SheetId> sheets, LocalDate asOf) => [];

    /// <summary>The cards of all sheets that a search may find; it narrows down by what is written in tables, the rest
    /// is <see cref="SheetSearch.Finds"/>.</summary>
    IReadOnlyList<SheetCard> Cards(SheetSearch search, LocalDate asOf) => [];
}

/// <summary>What a node is called.</summary>
/// <param name="Name">Its name: F3, pan/3, S12, 2026-109.</param>
/// <param name="Text">What there is to say of it, in a few words; may be empty.</param>
/// <param name="Date">The day on which it came to be; null where it has none.</param>
public sealed record TraceLabel(string Name, string Text, LocalDate? Date);

/// <summary>A session or print session that went through a bath.</summary>
/// <param name="By">The session.</param>
/// <param name="At">When.</param>
/// <param name="Before">The weighted area that the bath had taken before.</param>
/// <param name="After">The same afterwards.</param>
/// <param name="IsFirst">Whether the bath counted it: it stood alone or first.</param>
public sealed record BathPassing(TraceNode By, Moment At, Measures.Area Before, Measures.Area After, bool IsFirst);
