namespace Ledger.Core.Tracing;

/// <summary>
/// Goes along the links in either direction, and in time: what went into a bath today cannot have reached what went
/// through it yesterday. Back of something
/// is all that it came through, forward all that came through it; each contains where it began. A sheet is forward of
/// something exactly when that is
/// back of the sheet.
/// </summary>
/// <param name="records">The links.</param>
/// <param name="asOf">The last day that counts.</param>
public sealed class TraceWalk(ITraceRecords records, LocalDate asOf)
{
    private readonly Dictionary<TraceNode, List<TraceLink>> _into = [];
    private readonly Dictionary<TraceNode, List<TraceLink>> _outOf = [];
    private readonly Dictionary<TraceNode, List<TraceLink>> _some = [];
    private readonly List<TraceNode> _cut = [];

    /// <summary>All that these came through.</summary>
    /// <param name="start">Where it begins.</param>
    public TraceReach Back(params IReadOnlyCollection<TraceNode> start) =>
        Walk(start, isForward: false, Moment.Last, int.MaxValue);

    /// <summary>All that came through these.</summary>
    /// <param name="start">Where it begins.</param>
    /// <param name="atMost">It ends when so many sheets are reached.</param>
    /// <param name="since">Only what came through them from this moment on; null for all.</param>
    public TraceReach Forward(IReadOnlyCollection<TraceNode> start, int atMost = int.MaxValue, Moment? since = null) =>
        Walk(start, isForward: true, since ?? Moment.First, atMost);

    private TraceReach Walk(IReadOnlyCollection<TraceNode> start, bool isForward, Moment begin, int atMost)
    {
        var reached = start.Distinct().ToDictionary(node => node, _ => (At: begin, Via: (TraceLink?)null));
        var frontier = reached.Keys.ToList();
        var isCut = false;
        while (!isCut && frontier.Count > 0 && reached.Keys.Count(node => node.Kind == TraceKind.Sheet) <= atMost)
        {
            isCut |= Fetch(frontier, isForward, atMost);
            var next = new HashSet<TraceNode>();
            foreach (var node in frontier)
                foreach (var link in Links(node, isForward, atMost))
                {
                    var (at, to) = (reached[node].At, isForward ? link.To : link.From);
                    if (isForward ? link.At < at : link.At > at)
                        continue;
                    if (reached.TryGetValue(to, out var known)
                        && (isForward ? known.At <= link.At : known.At >= link.At))
                        continue;
                    reached[to] = (link.At, link);
                    next.Add(to);
                }

            frontier = [.. next];
        }

        return new(
            reached.ToDictionary(pair => pair.Key, pair => new Reached(pair.Key, pair.Value.At, pair.Value.Via)),
            isForward, isCut || frontier.Count > 0);
    }

    private List<TraceLink> Links(TraceNode node, bool isForward, int atMost) => !isForward ? _into[node]
        : atMost < int.MaxValue ? _some.GetValueOrDefault(node, []) : _outOf[node];

    /// <summary>Asks once for all nodes that were not asked about before; whether some links were left out.</summary>
    private bool Fetch(List<TraceNode> nodes, bool isForward, int atMost)
    {
        if (isForward && atMost < int.MaxValue)
            return FetchSome(nodes, atMost);
        var known = isForward ? _outOf : _into;
        var missing = nodes.Where(node => !known.ContainsKey(node)).ToList();
        if (missing.Count == 0)
            return false;
        foreach (var node in missing)
            known[node] = [];
        foreach (var link in isForward ? records.OutOf(missing, asOf) : records.Into(missing, asOf))
            known[isForward ? link.From : link.To].Add(link);
        return false;
    }

    /// <summary>What is cut is not kept: another walk may want all of it.</summary>
    private bool FetchSome(List<TraceNode> nodes, int atMost)
    {
        foreach (var cut in _cut)
            _some.Remove(cut);
        _cut.Clear();
        var missing = nodes.Where(node => !_some.ContainsKey(node)).ToList();
        if (missing.Count == 0)
            return false;
        var (links, areMore) = records.OutOf(missing, asOf, atMost);
        foreach (var node in missing)
            _some[node] = [];
        foreach (var link in links)
            _some[link.From].Add(link);
        if (areMore)
            _cut.AddRange(missing);
        return areMore;
    }
}

/// <summary>A node that a walk came to.</summary>
/// <param name="Node">The node.</param>
/// <param name="At">When: going forward the first moment at which it was reached, going back the last one.</param>
/// <param name="Via">The link that it came by; null where the walk began.</param>
public sealed record Reached(TraceNode Node, Moment At, TraceLink? Via);

/// <summary>All that a walk came to.</summary>
/// <param name="Nodes">The nodes, those where it began among them.</param>
/// <param name="IsForward">Whether it went forward.</param>
/// <param name="IsCut">Whether it ended early, so that there are more.</param>
public sealed record TraceReach(IReadOnlyDictionary<TraceNode, Reached> Nodes, bool IsForward, bool IsCut)
{
    /// <summary>The nodes of a kind.</summary>
    public IEnumerable<Reached> Of(TraceKind kind) => Nodes.Values.Where(reached => reached.Node.Kind == kind);

    /// <summary>The links from where it began to a node, in the order of the walk; none for a beginning.</summary>
    public IReadOnlyList<TraceLink> PathTo(TraceNode node)
    {
        var path = new List<TraceLink>();
        while (Nodes.TryGetValue(node, out var reached) && reached.Via is { } link)
        {
            path.Add(link);
            node = IsForward ? link.From : link.To;
        }

        path.Reverse();
        return path;
    }

    /// <summary>Whether a node was reached only through something that many have in common.</summary>
    public bool IsShared(TraceNode node) => PathTo(node).Any(link => link.IsShared);
}
