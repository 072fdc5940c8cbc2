using Ledger.Core.Baths;
using Ledger.Core.Film;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;
using Ledger.Core.Tracing;

namespace Ledger.Core.Faults;

/// <summary>
/// From a fault to everything that shares it, worst first, each with its reason and what can be done. Of a fixer the
/// worst is what went through it when it was
/// past its limits or when nothing proved that it still worked: a fixer only gets worse, so a good test speaks for all
/// that went through before it.
/// </summary>
public sealed class RiskReading
{
    private readonly ILedger _ledger;
    private readonly Holdings _holdings;
    private readonly LocalDate? _by;
    private readonly Dictionary<string, (Bath? Bath, IReadOnlyList<BathPassing> Passings)> _baths = new(
        StringComparer.OrdinalIgnoreCase);
    private readonly IReadOnlyDictionary<TraceNode, TraceLabel> _labels;

    /// <summary>Reads what shares a fault.</summary>
    /// <param name="name">What is at fault, as it was asked for.</param>
    /// <param name="start">What that means; at least one.</param>
    /// <param name="ledger">The ledger.</param>
    /// <param name="holdings">What it holds on the last day that counts.</param>
    /// <param name="by">The day by which the fault was there; null where that is not known.</param>
    public RiskReading(string name, IReadOnlyList<TraceNode> start, ILedger ledger, Holdings holdings, LocalDate? by)
    {
        (Name, By, _ledger, _holdings) = (name, by, ledger, holdings);
        var self = start is [{ Kind: TraceKind.Sheet } one]
            && ledger.Cards([new SheetId(one.Id)], holdings.AsOf) is [var own, ..] ? own : null;
        _by = by ?? self?.DevelopedOn;
        var walk = new TraceWalk(ledger, holdings.AsOf);
        var reach = walk.Forward(start is [{ Kind: TraceKind.Sheet }] ? Sources(start[0], walk) : start);
        _labels = ledger.Labels([.. reach.Nodes.Keys.Concat(start).Where(node => node.Kind != TraceKind.Sheet)],
            holdings.AsOf);
        var sheets = reach.Of(TraceKind.Sheet).Where(sheet => !start.Contains(sheet.Node)).ToList();
        var cards = ledger.Cards([.. sheets.Select(sheet => new SheetId(sheet.Node.Id))],
            holdings.AsOf).ToDictionary(card => card.Id.Value);
        Sheets = [.. First(Ordered(sheets.Where(sheet => cards.ContainsKey(sheet.Node.Id))
            .Select(sheet => AtRisk(cards[sheet.Node.Id], sheet, reach, start, self))))];
        Things = [.. ThingsOf(start, reach)];
    }

    /// <summary>What is at fault, as it was asked for.</summary>
    public string Name { get; }

    /// <summary>The day by which the fault was there; null where that is not known.</summary>
    public LocalDate? By { get; }

    /// <summary>The sheets that share it, worst first.</summary>
    public IReadOnlyList<SheetAtRisk> Sheets { get; }

    /// <summary>The boxes, bottles, baths and holder sides that share it.</summary>
    public IReadOnlyList<ThingAtRisk> Things { get; }

    /// <summary>How many sheets there are of each level, the worst level first.</summary>
    public IEnumerable<(RiskLevel Level, int Sheets)> Levels => Sheets.GroupBy(sheet => sheet.Level)
        .Select(group => (group.Key, group.Count()));

    /// <summary>A sheet at fault puts what it lay with and what its baths did under question.</summary>
    private static List<TraceNode> Sources(TraceNode sheet, TraceWalk walk) =>
        [.. walk.Back(sheet).Nodes.Values.Where(reached => reached.Via is not null
            && Depth(reached) is TraceKind.Batch or TraceKind.Bath).Select(reached => reached.Node)];

    private static TraceKind Depth(Reached reached) => reached.Node.Kind == TraceKind.Bath
        && reached.Via!.To.Kind != TraceKind.Session
        ? TraceKind.Container : reached.Node.Kind;

    private SheetAtRisk AtRisk(SheetCard card, Reached reached, TraceReach reach, IReadOnlyList<TraceNode> start,
        SheetCard? self)
    {
        var path = reach.PathTo(reached.Node);
        var (level, reason, on) = self is not null ? FromSheet(card, reached, path, self)
            : FromThing(reached, path, start[0].Kind);
        if (Settled(card, on, path) is { } settled)
            (level, reason) = (RiskLevel.Settled, settled);
        return new(card, level, on, reason, level == RiskLevel.Settled ? "nothing" : ToDo(card, start[0].Kind, path),
            IsFirst: false);
    }

    private (RiskLevel, string, LocalDate) FromSheet(SheetCard card, Reached reached, IReadOnlyList<TraceLink> path,
        SheetCard self)
    {
        if (card.SessionEntry == self.SessionEntry && card.Batch == self.Batch)
            return (RiskLevel.SameBatch, $"it lay in the trays with {self.Name}", reached.At.Date);
        var (level, reason, on) = FromThing(reached, path, TraceKind.Bath);
        return level == RiskLevel.Direct ? (RiskLevel.ByBath, reason, on) : (level, reason, on);
    }

    private (RiskLevel, string, LocalDate) FromThing(Reached reached, IReadOnlyList<TraceLink> path, TraceKind start)
    {
        var on = path is [.., var last] ? last.At.Date : reached.At.Date;
        if (path.FirstOrDefault(link => link.From.Kind == TraceKind.Bath) is { } through)
        {
            var (level, reason) = ThroughBath(through);
            return start == TraceKind.Bath ? (level, reason, through.At.Date)
                : (RiskLevel.ByBath, $"it went through bath {Called(through.From)}, which holds some of it; {reason}",
                    through.At.Date);
        }

        var what = path.Count == 0 ? "it came through it" : Sentence(path);
        if (path.FirstOrDefault(link => link.IsShared) is { } mixed)
            return (RiskLevel.ByBath,
                $"{what}; a sheet was put back among others on {Dates.Text(mixed.At.Date)} and may be this one", on);
        return By is { } by && on >= by ? (RiskLevel.AfterFault, $"{what}, on the day of the fault or later", on)
            : (RiskLevel.Direct, what, on);
    }

    /// <summary>How a bath stood when a session went through it.</summary>
    private (RiskLevel Level, string Reason) ThroughBath(TraceLink link)
    {
        var code = Called(link.From);
        var (bath, passings) = BathOf(code);
        var on = link.At.Date;
        if (_by is { } by && on >= by)
            return (RiskLevel.AfterFault,
                $"it went through {code} on {Dates.Text(on)}, when the fault was there: by {Dates.Text(by)}");
        if (bath is null || passings.LastOrDefault(passing => passing.By == link.To
            && passing.At == link.At) is not { } passing)
            return (RiskLevel.NotProved, $"it went through {code} on {Dates.Text(on)}");
        var moment = new BathMoment(bath, on, passing.Before, passing.After);
        var litre = Area.FromSquareInches(decimal.Ceiling(moment.SquareInchesPerLitre)).ToText(
            _holdings.Settings.Style);
        var went = $"it went through {code} on {Dates.Text(on)}, at {litre} a litre";
        if (moment.PastLimit is { } past)
            return (RiskLevel.PastLimit, $"{went}, {past}");
        if (moment.GoodTestSince is { } since && bath.Role == ItemRole.Fixer)
            return (RiskLevel.ProvedSince,
                $"{went}; a test on {Dates.Text(since.Date)} found it in order: {since.Text}");
        return moment.LastGoodTest is { } good
            ? (RiskLevel.NotProved,
                $"{went}, {Counted.Of(Period.DaysBetween(good.Date, on), "day")} after its last good test on "
                    + $"{Dates.Text(good.Date)}")
            : (RiskLevel.NotProved, $"{went}; no test had found it in order");
    }

    /// <summary>What settles it for a sheet: a test passed or a remedy since; or that it is a reject already.</summary>
    private static string? Settled(SheetCard card, LocalDate on, IReadOnlyList<TraceLink> path)
    {
        if (card.LastFinding is { } finding && finding.Date >= on
            && (finding.HasPassed == true || finding.What is SheetWork.Refixed
                && path.Any(link => link.From.Kind == TraceKind.Bath)))
            return $"{finding.Text}, on {Dates.Text(finding.Date)}";
        return card.Fate == Fate.Reject
            ? $"it is a reject already{(card.Cause is { } cause ? $": {cause.Name()}" : "")}" : null;
    }

    private string ToDo(SheetCard card, TraceKind start, IReadOnlyList<TraceLink> path)
    {
        if (card.IsUndeveloped)
            return start == TraceKind.Side
                ? card.ExposedOn is null ? $"unload it from {card.Place}, and test the side before it is used"
                    : "develop it apart and look for the fault"
                : card.ExposedOn is null ? $"unload it from {card.Place}; do not expose it"
                    : "develop one sheet as a test before this one";
        if (card.Fate is null)
            return "nothing: it is gone";
        if (path.FirstOrDefault(link => link.From.Kind == TraceKind.Bath) is { } link)
            return BathOf(Called(link.From)).Bath?.Role switch
            {
                ItemRole.Fixer => "residual silver test; if it fails, refix in fresh fixer and rewash",
                ItemRole.WashAid => "residual hypo test; if it fails, rewash",
                ItemRole.Developer => "compare its density with a sheet from another bath",
                _ => "look at it closely",
            };
        return path.Any(link => link.To.Kind == TraceKind.Session)
            ? "compare its density with a sheet from another bottle" : "look at it for the same fault";
    }

    /// <summary>The worst first; of a level what is nearest to the day of the fault, and without one the
    /// latest.</summary>
    private IEnumerable<SheetAtRisk> Ordered(IEnumerable<SheetAtRisk> sheets) => sheets
        .OrderBy(sheet => sheet.Level).ThenBy(sheet => _by is { } by ? Math.Abs(Period.DaysBetween(sheet.On, by))
            : -Period.DaysBetween(new(1900, 1, 1), sheet.On))
        .ThenBy(sheet => sheet.Card.SessionEntry).ThenBy(sheet => sheet.Card.Batch)
            .ThenBy(sheet => sheet.Card.Id.Value);

    /// <summary>Marks the first of each batch: what a test shows of it holds for the others. Sheets that were not
    /// developed are each first.</summary>
    private static IEnumerable<SheetAtRisk> First(IEnumerable<SheetAtRisk> sheets)
    {
        var batches = new HashSet<(long?, int?)>();
        foreach (var sheet in sheets)
            yield return sheet with
            {
                IsFirst = sheet.Level < RiskLevel.ProvedSince
                    && (sheet.Card.SessionEntry is null || batches.Add((sheet.Card.SessionEntry, sheet.Card.Batch))),
            };
    }

    private IEnumerable<ThingAtRisk> ThingsOf(IReadOnlyList<TraceNode> start, TraceReach reach)
    {
        foreach (var place in reach.Nodes.Keys.Where(node => node.Kind == TraceKind.Container))
            if (_holdings.Container(new PlaceId(place.Id)) is { } container && !reach.IsShared(place))
                yield return new(
                    container.Code,
                        $"{container.Held.ToText(_holdings.Settings.Style)} "
                            + $"left{(container.Suspicion is { } suspicion ? $", {suspicion.Text}" : "")}",
                    container.Suspicion is not null ? "it is not used until it is cleared"
                        : $"{(container.IsSealed ? "do not open it" : "do not use it")}: `record suspicion "
                            + $"{container.Code} --reason ...`");
        foreach (var place in reach.Nodes.Keys.Where(node => node.Kind == TraceKind.Bath))
            if (_holdings.Bath(new PlaceId(place.Id)) is { } bath)
                yield return new(
                    bath.Code, $"in use, {bath.WorkedWeighted.ToText(_holdings.Settings.Style)} through it",
                    bath.Suspicion is not null ? "nothing goes through it until it is cleared"
                        : start.Contains(place)
                            ? $"test it, or discard it and mix a new one: `record suspicion {bath.Code} --reason ...`"
                        : "it holds some of it: test it before the next session, or `record suspicion "
                            + $"{bath.Code} --reason ...`");
        foreach (var place in start.Where(node => node.Kind == TraceKind.Side))
            if (_holdings.Film.Side(new PlaceId(place.Id)) is { } side)
                yield return new(
                    side.Code, side.OutOfService is { } reason ? $"out of service: {reason}" : "in service",
                    side.OutOfService is null ? $"take it out of service: `record service {side.Code} --reason ...`"
                        : "nothing");
    }

    private string Sentence(IReadOnlyList<TraceLink> path) => path[^1].From.Kind switch
    {
        TraceKind.Container => $"it came out of {Called(path[^1].From)} on {Dates.Text(path[^1].At.Date)}",
        TraceKind.Side => $"it was loaded into {Called(path[^1].From)} on {Dates.Text(path[^1].At.Date)}",
        TraceKind.ExposedBox => $"it lay in {Called(path[^1].From)} from {Dates.Text(path[^1].At.Date)} on",
        TraceKind.Exposure => $"it was exposed with it on {Dates.Text(path[^1].At.Date)}",
        _ => path.FirstOrDefault(link => link.To.Kind == TraceKind.Session) is { } session
            ? $"it was developed in {Called(session.To)} with {Called(session.From)} on {Dates.Text(session.At.Date)}"
            : $"it was developed there on {Dates.Text(path[^1].At.Date)}",
    };

    private string Called(TraceNode node) => _labels.GetValueOrDefault(node)?.Name ?? "it";

    private (Bath? Bath, IReadOnlyList<BathPassing> Passings) BathOf(string code) =>
        _baths.TryGetValue(code, out var known) ? known
        : _baths[code] = (_ledger.Bath(code, _holdings.AsOf), _ledger.Passings(code, _holdings.AsOf));
}
