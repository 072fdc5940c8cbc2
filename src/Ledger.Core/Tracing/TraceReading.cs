using Ledger.Core.Baths;
using Ledger.Core.Film;

namespace Ledger.Core.Tracing;

/// <summary>One thing that what is traced came through.</summary>
/// <param name="Node">What.</param>
/// <param name="Label">What it is called.</param>
/// <param name="On">When; null where it began.</param>
/// <param name="IsShared">Whether it only reached what is traced through something that many have in common.</param>
public sealed record TraceStep(TraceNode Node, TraceLabel Label, LocalDate? On, bool IsShared)
{
    /// <summary>How the bath stood then; null for what is no bath, or was only reached by way of another one.</summary>
    public BathMoment? Bath { get; init; }

    /// <summary>How many other sheets came through it too.</summary>
    public int OtherSheets { get; init; }

    /// <summary>Whether there are more than so many.</summary>
    public bool AreMore { get; init; }

    /// <summary>
    /// How many, in words: "35 more", "many more" where they were not counted to the end, "no other".
    /// </summary>
    public string Others => AreMore ? "many more" : OtherSheets == 0 ? "no other" : $"{OtherSheets} more";
}

/// <summary>A sheet that came through what is traced.</summary>
/// <param name="Card">The sheet.</param>
/// <param name="On">When it was reached: loaded, drawn, developed.</param>
/// <param name="Through">By what, from the beginning on: F4, S12, S12 batch 1.</param>
/// <param name="IsShared">Whether only through something that many have in common.</param>
public sealed record TracedSheet(SheetCard Card, LocalDate? On, IReadOnlyList<string> Through, bool IsShared);

/// <summary>
/// What something came through, and what else came through that: trace back and trace forward, as ISO 22005:2007
/// (Traceability in the feed and food chain)
/// speaks of following the movement of a thing through stages of production and processing.
/// </summary>
public sealed class TraceReading
{
    /// <summary>The most sheets that are told one by one for each thing that a sheet shares with others.</summary>
    public const int MostShared = 500;

    /// <summary>The most that are counted.</summary>
    private const int MostCounted = 200;

    private readonly ITraceRecords _records;
    private readonly LocalDate _asOf;

    /// <summary>Traces what a name means.</summary>
    /// <param name="name">The name, as it was asked for.</param>
    /// <param name="start">What it means; at least one.</param>
    /// <param name="records">The links.</param>
    /// <param name="bath">A bath by its name, with all that is known of it; null when there is none.</param>
    /// <param name="asOf">The last day that counts.</param>
    public TraceReading(string name, IReadOnlyList<TraceNode> start, ITraceRecords records, Func<string, Bath?> bath,
        LocalDate asOf)
    {
        (Name, Start, _records, _asOf) = (name, start, records, asOf);
        var walk = new TraceWalk(records, asOf);
        var (back, forward) = (walk.Back(start), walk.Forward(start));
        var labels = records.Labels(
            [.. back.Nodes.Keys.Union(forward.Nodes.Keys.Where(node => node.Kind != TraceKind.Sheet))], asOf);
        StartLabels = [.. start.Select(node => Labelled(node, labels))];
        Sheets = [.. Traced(forward, labels)];
        Back = [.. Steps(back, labels, bath)];
        if (start is [{ Kind: TraceKind.Sheet } sheet])
        {
            Card = records.Cards([new SheetId(sheet.Id)], asOf) is [var card, ..] ? card : null;
            var counts = new Dictionary<TraceNode, (int Sheets, bool AreMore)>();
            Back = [.. Back.Select(step => Counted(step, Count(step.Node, back, walk, counts)))];
            Mates = [.. Back.Where(step => step.Node.Kind == TraceKind.Batch)
                .SelectMany(step => Sharing(step.Node, walk, sheet)).Order(ByMoment)];
            BathMates = [.. Back.Where(step => step is { Node.Kind: TraceKind.Bath, IsShared: false, Bath: not null })
                .Select(step => (step, Since(step, back.Nodes[step.Node])))];
        }

        Things =
        [
            .. forward.Nodes.Values.Where(reached => reached.Node.Kind is not (TraceKind.Sheet or TraceKind.Batch)
                && !start.Contains(reached.Node))
                .OrderBy(reached => reached.Node.Kind).ThenBy(reached => reached.At)
                .Select(reached => new TraceStep(reached.Node, Labelled(reached.Node, labels), reached.At.Date,
                    Others(forward, reached.Node))),
        ];
    }

    /// <summary>The name, as it was asked for.</summary>
    public string Name { get; }

    /// <summary>What it means.</summary>
    public IReadOnlyList<TraceNode> Start { get; }

    /// <summary>What that is called, in the same order.</summary>
    public IReadOnlyList<TraceLabel> StartLabels { get; }

    /// <summary>The sheet that is traced; null where it is something else.</summary>
    public SheetCard? Card { get; }

    /// <summary>What it came through, the first first.</summary>
    public IReadOnlyList<TraceStep> Back { get; }

    /// <summary>The sheets that came through it, the first first.</summary>
    public IReadOnlyList<TracedSheet> Sheets { get; }

    /// <summary>What else came through it: boxes, bottles, baths, sessions, print sessions.</summary>
    public IReadOnlyList<TraceStep> Things { get; }

    /// <summary>Of a sheet: those that lay in the trays with it.</summary>
    public IReadOnlyList<SheetCard> Mates { get; } = [];

    /// <summary>Of a sheet: each bath that it went through, with the sheets that went through it in later
    /// sessions.</summary>
    public IReadOnlyList<(TraceStep Bath, IReadOnlyList<SheetCard> Since)> BathMates { get; } = [];

    private static IComparer<SheetCard> ByMoment { get; } =
        Comparer<SheetCard>.Create((one, other) => (one.DevelopedOn,
            one.Id.Value).CompareTo((other.DevelopedOn, other.Id.Value)));

    private static TraceLabel Labelled(TraceNode node, IReadOnlyDictionary<TraceNode, TraceLabel> labels) =>
        labels.GetValueOrDefault(node) ?? new($"{node.Kind.Name()} {node.Id}", "", null);

    private IEnumerable<TraceStep> Steps(TraceReach back, IReadOnlyDictionary<TraceNode, TraceLabel> labels,
        Func<string, Bath?> bath)
    {
        foreach (var reached in back.Nodes.Values.Where(reached => !Start.Contains(reached.Node))
            .OrderBy(reached => When(reached, labels))
            .ThenBy(reached => reached.Node.Kind).ThenBy(reached => reached.Node.Id))
        {
            var label = Labelled(reached.Node, labels);
            var step = new TraceStep(reached.Node, label, When(reached, labels), Others(back.PathTo(reached.Node)));
            yield return reached.Node.Kind == TraceKind.Bath && reached.Via is { } link && bath(label.Name) is { } known
                ? step with { Bath = Moment(known, link) } : step;
        }
    }

    /// <summary>Whether anything but the last link before the thing itself is shared: the bath is direct, what was put
    /// into the bath is not.</summary>
    private static bool Others(IReadOnlyList<TraceLink> path) => path.SkipLast(1).Any(link => link.IsShared);

    /// <summary>Whether it was only reached by way of something that many have in common, other than where the trace
    /// began.</summary>
    private bool Others(TraceReach forward, TraceNode node) => forward.PathTo(node)
        .Any(link => link.IsShared && !Start.Contains(link.From));

    private static LocalDate? When(Reached reached, IReadOnlyDictionary<TraceNode, TraceLabel> labels) =>
        reached.Node.Kind is TraceKind.Delivery or TraceKind.Container
            ? Labelled(reached.Node, labels).Date ?? reached.At.Date : reached.At.Date;

    private BathMoment? Moment(Bath bath, TraceLink link) => _records.Passing(link.From, link.To, _asOf) is { } passing
        ? new(bath, passing.At.Date, passing.Before, passing.After) : null;

    private IEnumerable<TracedSheet> Traced(TraceReach forward, IReadOnlyDictionary<TraceNode, TraceLabel> labels)
    {
        var reached = forward.Of(TraceKind.Sheet).Where(sheet => !Start.Contains(sheet.Node)).ToList();
        var cards = _records.Cards([.. reached.Select(sheet => new SheetId(sheet.Node.Id))],
            _asOf).ToDictionary(card => card.Id.Value);
        return reached.Where(sheet => cards.ContainsKey(sheet.Node.Id)).OrderBy(sheet => sheet.At)
            .ThenBy(sheet => sheet.Node.Id)
            .Select(sheet => new TracedSheet(
                cards[sheet.Node.Id], sheet.At.Date,
                [.. forward.PathTo(sheet.Node).Skip(1).Select(link => Labelled(link.From, labels).Name)],
                    Others(forward, sheet.Node)));
    }

    private static TraceStep Counted(TraceStep step, (int Sheets, bool AreMore) count) =>
        step with { OtherSheets = Math.Max(0, count.Sheets - 1), AreMore = count.AreMore };

    /// <summary>
    /// The sheets that came through something, up to so many. Where what came of a delivery is more than that already,
    /// so is the delivery, without asking.
    /// </summary>
    private static (int Sheets, bool AreMore) Count(
        TraceNode node, TraceReach back, TraceWalk walk, Dictionary<TraceNode, (int Sheets, bool AreMore)> counts)
    {
        if (counts.TryGetValue(node, out var known))
            return known;
        if (node.Kind is TraceKind.Number or TraceKind.Delivery && back.Nodes[node].Via is { } link
            && Count(link.To, back, walk, counts) is { AreMore: true } part)
            return counts[node] = part;
        var reach = walk.Forward([node], MostCounted);
        return counts[node] = (reach.Of(TraceKind.Sheet).Count(), reach.IsCut);
    }

    private IReadOnlyList<SheetCard> Sharing(TraceNode node, TraceWalk walk, TraceNode sheet) => _records.Cards(
        [.. walk.Forward([node], MostShared).Of(TraceKind.Sheet).Where(other => other.Node != sheet)
            .Select(other => new SheetId(other.Node.Id))], _asOf);

    /// <summary>What went through a bath in later sessions.</summary>
    private IReadOnlyList<SheetCard> Since(TraceStep step, Reached reached) =>
        [.. _records.Cards(_records.ThroughSince(step.Node, reached.At, _asOf, MostShared), _asOf).Order(ByMoment)];
}
