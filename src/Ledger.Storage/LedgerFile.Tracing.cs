using Ledger.Storage.Reading;

namespace Ledger.Storage;

/// <content>What the ledger remembers of what came from what.</content>
public sealed partial class LedgerFile
{
    /// <inheritdoc/>
    public IReadOnlyList<TraceNode> Named(string name, LocalDate asOf) =>
        Read(snapshot => new TraceReader(snapshot, asOf).Named(name.Trim()));

    /// <inheritdoc/>
    public IReadOnlyList<TraceLink> Into(IReadOnlyCollection<TraceNode> nodes, LocalDate asOf) =>
        Read(snapshot => new TraceLinks(snapshot, asOf).Of(nodes, isInto: true));

    /// <inheritdoc/>
    public IReadOnlyList<TraceLink> OutOf(IReadOnlyCollection<TraceNode> nodes, LocalDate asOf) =>
        Read(snapshot => new TraceLinks(snapshot, asOf).Of(nodes, isInto: false));

    /// <inheritdoc/>
    public (IReadOnlyList<TraceLink> Links, bool AreMore) OutOf(
        IReadOnlyCollection<TraceNode> nodes, LocalDate asOf, int atMost) =>
        Read(snapshot => new TraceLinks(snapshot, asOf).OutOf(nodes, atMost));

    /// <inheritdoc/>
    public IReadOnlyList<SheetId> ThroughSince(TraceNode bath, Moment after, LocalDate asOf, int atMost) =>
        Read(snapshot => new TraceReader(snapshot, asOf).ThroughSince(bath, after, atMost));

    /// <inheritdoc/>
    public BathPassing? Passing(TraceNode bath, TraceNode by, LocalDate asOf) =>
        Read(snapshot => new TraceReader(snapshot, asOf).Passing(bath, by));

    /// <inheritdoc/>
    public IReadOnlyDictionary<TraceNode, TraceLabel> Labels(IReadOnlyCollection<TraceNode> nodes, LocalDate asOf) =>
        Read(snapshot => new TraceReader(snapshot, asOf).Labels(nodes));

    /// <inheritdoc/>
    public IReadOnlyList<BathPassing> Passings(string bath, LocalDate asOf) =>
        Read(snapshot => new TraceReader(snapshot, asOf).Passings(bath));

    /// <inheritdoc/>
    public IReadOnlyList<SheetCard> Cards(IReadOnlyCollection<SheetId> sheets, LocalDate asOf) =>
        Read(snapshot => new SheetCardReader(snapshot, asOf).Read(sheets.Select(sheet => sheet.Value)));

    /// <inheritdoc/>
    public IReadOnlyList<SheetCard> Cards(SheetSearch search, LocalDate asOf) =>
        Read(snapshot => new SheetCardReader(snapshot, asOf).Read(search));
}
