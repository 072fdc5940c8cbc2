using CsCheck;
using QuikGraph;
using QuikGraph.Algorithms.Search;
using static Ledger.Storage.Tests.Support.Holders;

namespace Ledger.Storage.Tests.Tracing;

/// <summary>
/// What a trace comes to on random ledgers, against two others who know nothing of it: recursive SQL over the bare
/// tables, and a general library of graphs
/// over a graph in which each thing stands once for each of its moments.
/// </summary>
public sealed class ClosureTests
{
    private static readonly string[] Sides = ["E01-1", "E01-2", "E02-1", "E02-2"];

    private static readonly Gen<(int Kind, int Which, int Other)[]> Steps =
        Gen.Select(Gen.Int[0, 12], Gen.Int[0, 3], Gen.Int[0, 30]).Array[5, 40];

    [Fact]
    public void Back_and_forward_are_what_recursive_SQL_and_a_graph_library_say() => Steps.Sample(
        steps =>
        {
            using var file = new TemporaryLedger();
            Fill(file, steps);
            var (walk, nodes) = (new TraceWalk(file.Ledger, file.Ledger.Today), AllNodes(file));
            var graph = new TimedGraph(file.Ledger.OutOf(nodes, file.Ledger.Today));
            Link(file);
            foreach (var node in nodes)
            {
                var (back, forward) = (Names(walk.Back(node)), Names(walk.Forward([node])));
                Assert.Equal(Recursive(file, node, isForward: true), forward);
                Assert.Equal(Recursive(file, node, isForward: false), back);
                Assert.Equal(graph.From(node).Select(Name).Order(StringComparer.Ordinal), forward);
            }
        },
        iter: 25, threads: 1);

    [Fact]
    public void A_sheet_is_forward_of_something_exactly_when_that_is_back_of_the_sheet_and_forward_of_back_holds_it() =>
        Steps.Sample(
        steps =>
        {
            using var file = new TemporaryLedger();
            Fill(file, steps);
            var (walk, nodes) = (new TraceWalk(file.Ledger, file.Ledger.Today), AllNodes(file));
            var forward = nodes.ToDictionary(node => node, node => walk.Forward([node]).Nodes.Keys.ToHashSet());
            foreach (var sheet in nodes.Where(node => node.Kind == TraceKind.Sheet))
            {
                var back = walk.Back(sheet).Nodes.Keys.ToHashSet();
                Assert.Equal(nodes.Where(node => forward[node].Contains(sheet)).ToHashSet(), back);
                Assert.Contains(sheet, walk.Forward(back).Nodes.Keys);
            }
        },
        iter: 25, threads: 1);

    [Fact]
    public void What_was_added_to_a_bath_later_is_not_back_of_what_went_through_before()
    {
        using var file = new TemporaryLedger();
        Some.Stock(file);
        file.Accept(Some.Delivery("fix", 1, 15m, month: 2));
        file.Accept(Some.Session("S01", 1, month: 3));
        file.Accept(new TopUp { Key = Some.Key(), Date = Some.Day(4, 1), Bath = "F1",
            Added = Volume.FromMillilitres(200), Container = "fix/2" });
        file.Accept(Some.Session("S02", 1, month: 5));
        var walk = new TraceWalk(file.Ledger, file.Ledger.Today);
        var bottle = Assert.Single(file.Ledger.Named("fix/2", file.Ledger.Today));
        Assert.DoesNotContain(bottle, walk.Back(file.Ledger.Named("2025-001", file.Ledger.Today).Single()).Nodes.Keys);
        Assert.Contains(bottle, walk.Back(file.Ledger.Named("2025-002", file.Ledger.Today).Single()).Nodes.Keys);
        Assert.Equal([2L], walk.Forward([bottle]).Of(TraceKind.Sheet).Select(sheet => sheet.Node.Id));
    }

    private static void Fill(TemporaryLedger file, (int Kind, int Which, int Other)[] steps)
    {
        Some.Stock(file);
        file.Accept(Some.Define(Some.Film("fibre") with { Name = "Fibre paper", Role = ItemRole.FibrePaper }));
        file.Accept(Some.Delivery("fibre", 4, 150m));
        file.Accept(Some.Bath("PF") with { Material = BathMaterial.Paper });
        file.Accept(Holder("E01"));
        file.Accept(Holder("E02"));
        for (var i = 0; i < steps.Length; i++)
            file.Ledger.Post(Entry(steps[i], i));
    }

    private static Entry Entry((int Kind, int Which, int Other) step, int index)
    {
        var (date, side, number) = (Some.Day(3, 1).PlusDays(index / 3), Sides[step.Which], 1 + step.Other % 3);
        return step.Kind switch
        {
            0 or 1 => Load(date, side) with { From = step.Other % 2 == 0 ? "pan" : $"pan/{number}" },
            2 => Expose(date, "N", side) with { Anyway = true },
            3 => Unload(date, side),
            4 => Develop(date, $"S{index}", From(step.Other % 2 == 0 ? side : "pan N", number)) with { Anyway = true,
                Bath = step.Other % 3 == 0 ? "F1" : null },
            5 => Some.Session($"S{index}", number) with { Date = date, Bath = null, Anyway = true },
            6 => new Delivery
            {
                Key = Some.Key(), Date = date, Anyway = true,
                Lines = [new() { Item = step.Other % 3 == 0 ? "fix" : step.Other % 3 == 1 ? "syrup" : "pan", Packs = 1,
                    Price = Money.Of(10), Batch = step.Which == 0 ? "" : $"N{step.Which}" }],
            },
            7 => new Decanting
            {
                Key = Some.Key(), Date = date, From = step.Other % 2 == 0 ? "fix" : "syrup", Anyway = true,
                Bottles = [new(Quantity.Of(100, Unit.Millilitre), null), new(Quantity.Of(100, Unit.Millilitre), null)],
            },
            8 => new BathMixing
            {
                Key = Some.Key(), Date = date, Bath = $"F{2 + step.Which}", Item = "fix",
                    WorkingVolume = Volume.FromMillilitres(500), Anyway = true,
                PairedWith = step.Other % 4 == 0 ? "F1" : null,
            },
            9 => new TopUp { Key = Some.Key(), Date = date, Bath = $"F{1 + step.Which}",
                Added = Volume.FromMillilitres(100), Anyway = true },
            11 => new PrintSession
            {
                Key = Some.Key(), Date = date, Session = $"P{index}", Bath = "PF", Anyway = true,
                Lines = [new() { Item = "fibre", Sheets = 1 }],
                Negatives = step.Which == 0 ? [] : step.Which == 1 ? [$"#{number}"] : [$"#{number}", $"#{number + 1}"],
            },
            10 => new Discard { Key = Some.Key(), Date = date, What = $"F{1 + step.Which}", Reason = "exhausted" },
            _ => new Undo { Key = Some.Key(), Date = date, Number = 18 + step.Other, Reason = "mistake" },
        };
    }

    private static IReadOnlyList<TraceNode> AllNodes(TemporaryLedger file)
    {
        var found = new HashSet<TraceNode>();
        var frontier = new List<TraceNode>();
        using var command = file.Ledger.Connection.CreateCommand();
        command.CommandText = "SELECT id FROM lot";
        using (var reader = command.ExecuteReader())
            while (reader.Read())
                frontier.Add(new(TraceKind.Delivery, reader.GetInt64(0)));
        while (frontier.Count > 0)
        {
            found.UnionWith(frontier);
            var links = file.Ledger.OutOf(frontier, file.Ledger.Today)
                .Concat(file.Ledger.Into(frontier, file.Ledger.Today));
            frontier = [.. links.SelectMany(link => new[] { link.From, link.To }).Where(node => !found.Contains(node))
                .Distinct()];
        }

        return [.. found];
    }

    private static string Name(TraceNode node) => $"{node.Kind} {node.Id} {node.Part}";

    private static List<string> Names(TraceReach reach) =>
        [.. reach.Nodes.Keys.Select(Name).Order(StringComparer.Ordinal)];

    /// <summary>All links, written down once more straight from the tables.</summary>
    private static void Link(TemporaryLedger file) => file.Run(
        """
        CREATE TEMP TABLE IF NOT EXISTS link (f TEXT, t TEXT, at TEXT);
        DELETE FROM temp.link;
        WITH e AS (SELECT id, kind, date || printf('%020d', ord) AS at FROM entry
            WHERE counts = 1 AND undoes IS NULL AND amends IS NULL)
        INSERT INTO temp.link
        SELECT 'Number ' || (SELECT min(id) FROM lot o WHERE o.item_id = l.item_id
            AND o.batch = l.batch) || ' 0', 'Delivery ' || l.id || ' 0', at
            FROM lot l, e WHERE e.id = l.entry_id AND l.batch <> ''
        UNION SELECT 'Delivery ' || c.lot_id || ' 0', 'Container ' || c.place_id || ' 0', at
            FROM container c, place p, lot l, e
            WHERE p.id = c.place_id AND l.id = c.lot_id AND e.id = l.entry_id AND p.entry_id = l.entry_id
        UNION SELECT 'Container ' || from_place || ' 0', iif(to_place IN (SELECT place_id
            FROM bath), 'Bath ', 'Container ') || to_place || ' 0', at
            FROM movement m, e WHERE e.id = m.entry_id AND from_place IN (SELECT place_id FROM container)
            AND (to_place IN (SELECT place_id FROM container) OR to_place IN (SELECT place_id FROM bath))
        UNION SELECT 'Container ' || from_place || ' 0', 'Session ' || m.entry_id || ' 0', at FROM movement m, e
            WHERE e.id = m.entry_id AND to_place = 4 AND from_place IN (SELECT place_id
                FROM container) AND m.entry_id IN (SELECT entry_id FROM session)
        UNION SELECT 'Container ' || from_place || ' 0', 'PrintSession ' || m.entry_id || ' 0', at FROM movement m, e
            WHERE e.id = m.entry_id AND from_place IN (SELECT place_id
                FROM container) AND m.entry_id IN (SELECT entry_id FROM print_session)
        UNION SELECT 'Container ' || box_id || ' 0', 'Sheet ' || s.id || ' 0', at FROM sheet s, e
            WHERE e.id = s.entry_id
        UNION SELECT 'Side ' || side_id || ' 0', 'Sheet ' || s.id || ' 0', at FROM sheet s, e
            WHERE e.id = s.entry_id AND side_id IS NOT NULL
        UNION SELECT 'Exposure ' || x.entry_id || ' 0', 'Sheet ' || sheet_id || ' 0', at FROM exposure x, e
            WHERE e.id = x.entry_id AND e.kind = 'exposure'
        UNION SELECT 'ExposedBox ' || to_place || ' 0', 'Sheet ' || sheet_id || ' 0', at FROM sheet_move m, e
            WHERE e.id = m.entry_id AND to_place IN (SELECT place_id FROM exposed_box)
        UNION SELECT 'Bath ' || place_id || ' 0', iif(w.entry_id IN (SELECT entry_id
            FROM session), 'Session ', 'PrintSession ') || w.entry_id || ' 0', at
            FROM bath_work w, e WHERE e.id = w.entry_id
        UNION SELECT 'Sheet ' || sheet_id || ' 0', 'PrintSession ' || n.entry_id || ' 0', at FROM print_negative n, e
            WHERE e.id = n.entry_id
        UNION SELECT 'Session ' || f.entry_id || ' 0', 'Batch ' || f.entry_id || ' ' || batch, at FROM sheet_fate f, e
            WHERE e.id = f.entry_id
        UNION SELECT 'Batch ' || f.entry_id || ' ' || batch, 'Sheet ' || sheet_id || ' 0', at FROM sheet_fate f, e
            WHERE e.id = f.entry_id
        UNION SELECT 'Sheet ' || sheet_id || ' 0', 'Container ' || to_place || ' 0', at FROM sheet_move m, e
            WHERE e.id = m.entry_id AND to_place IN (SELECT place_id FROM container);
        """);

    private static List<string> Recursive(TemporaryLedger file, TraceNode node, bool isForward)
    {
        using var command = file.Ledger.Connection.CreateCommand();
        command.CommandText = isForward
            ? """
            WITH RECURSIVE r (n, at) AS (
                SELECT $start, '' UNION SELECT l.t, l.at FROM r JOIN temp.link l ON l.f = r.n AND l.at >= r.at)
            SELECT DISTINCT n FROM r
            """
            : """
            WITH RECURSIVE r (n, at) AS (
                SELECT $start, '~' UNION SELECT l.f, l.at FROM r JOIN temp.link l ON l.t = r.n AND l.at <= r.at)
            SELECT DISTINCT n FROM r
            """;
        command.Parameters.Add(new SqliteParameter("$start", Name(node)));
        var names = new List<string>();
        using var reader = command.ExecuteReader();
        while (reader.Read())
            names.Add(reader.GetString(0));
        names.Sort(StringComparer.Ordinal);
        return names;
    }

    /// <summary>Each thing once for every moment at which a link touches it, the moments of a thing in a
    /// chain.</summary>
    private sealed class TimedGraph
    {
        private readonly AdjacencyGraph<(TraceNode Node, Moment At),
            Edge<(TraceNode, Moment)>> _graph = new(allowParallelEdges: true);
        private readonly Dictionary<TraceNode, List<Moment>> _moments = [];

        public TimedGraph(IReadOnlyList<TraceLink> links)
        {
            foreach (var touched in links.SelectMany(link =>
                new[] { (Node: link.From, link.At), (Node: link.To, link.At) }).GroupBy(pair => pair.Node))
            {
                _moments[touched.Key] = [.. touched.Select(pair => pair.At).Distinct().Order()];
                foreach (var at in _moments[touched.Key])
                    _graph.AddVertex((touched.Key, at));
                for (var i = 1; i < _moments[touched.Key].Count; i++)
                    _graph.AddEdge(new((touched.Key, _moments[touched.Key][i - 1]),
                        (touched.Key, _moments[touched.Key][i])));
            }

            foreach (var link in links)
                _graph.AddEdge(new((link.From, link.At), (link.To, link.At)));
        }

        public HashSet<TraceNode> From(TraceNode node)
        {
            if (!_moments.TryGetValue(node, out var moments))
                return [node];
            var found = new HashSet<TraceNode> { node };
            var search = new BreadthFirstSearchAlgorithm<(TraceNode Node, Moment At),
                Edge<(TraceNode, Moment)>>(_graph);
            search.DiscoverVertex += vertex => found.Add(vertex.Node);
            search.Compute((node, moments[0]));
            return found;
        }
    }
}
