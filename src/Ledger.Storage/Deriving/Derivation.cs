using Ledger.Core.Journal.Rules;
using Ledger.Storage.Reading;

namespace Ledger.Storage.Deriving;

/// <summary>
/// Derives what follows from what was said, from a position on: takes out what the entries from there on wrote, puts
/// definitions back to what they were, and decides the entries one by one, in the order in which they happened. All
/// inside a transaction of the caller, who rolls back when an entry would no longer hold.
/// </summary>
internal sealed class Derivation(SqliteConnection connection, Snapshot inside, LocalDate today)
{
    private const int MostCosts = 12;

    private readonly SaidLog _log = new(connection);

    /// <summary>What holds of what was said.</summary>
    public Standing Standing => field ??= new(_log);

    /// <summary>What is defined on which day.</summary>
    public Definitions Definitions => field ??= new(inside, _log, Standing);

    /// <summary>Derives everything that was said: what an earlier version posted stays as it is.</summary>
    public DerivedLedger All() => From(Position.Start, [], [], Definitions.Things(), before: null);

    /// <summary>Derives from a position on.</summary>
    /// <param name="from">The first position at which anything is different.</param>
    /// <param name="news">What is said now, each with its place.</param>
    /// <param name="changed">The keys of entries that were taken back or amended; their heads may stand elsewhere than
    /// they are to.</param>
    /// <param name="redefined">What is defined by those.</param>
    /// <param name="before">What is held today as the file stands: the effects are what differs from it in the end.
    /// Null: nobody asks for them.</param>
    public DerivedLedger From(
        Position from,
        IReadOnlyList<NewEntry> news,
        IReadOnlyCollection<string> changed,
        IReadOnlyList<(string Kind, string Name)> redefined,
        Holdings? before)
    {
        _ = before?.Film.Holders; // all of them as they are before anything is taken out
        var things = Definitions.ChangedFrom(from).Concat(redefined).Distinct().ToList();
        var suffix = Suffix(from, changed);
        var costs = before is null ? [] : Costs(suffix);
        TakeOut(suffix);
        Definitions.Reset(things, from, today);
        foreach (var head in suffix)
            Count(head);

        var holdings = Held();
        var outcomes = new PostOutcome[news.Count];
        var steps = suffix.Where(head => Standing.Holds(head.Key)).Select(head => new Step(PositionOf(head), head, -1))
            .Concat(news.Select((entry, i) => new Step(entry.Position, null, i)));
        foreach (var step in steps.OrderBy(step => step.Position).ThenBy(step => step.Head?.Key,
            StringComparer.Ordinal))
        {
            var isNew = step.Head is null;
            var key = isNew ? news[step.New].Entry.Key : step.Head!.Key;
            var terms = ReadingTerms.Of(holdings, today);
            var entry = isNew ? news[step.New].Entry : Standing.EntryOf(_log.Find(key)!, terms);
            switch (PostingRules.Decide(entry, holdings, new JournalReader(inside), today,
                isNew ? null : _log.Names(key)))
            {
                case Refused { Refusal: var refusal } when isNew:
                    outcomes[step.New] = new NotPosted(refusal);
                    break;
                case Refused { Refusal: var refusal }:
                    throw new NoLongerHoldsException(step.Head!, refusal);
                case Accepted { Posting: var posting }:
                    var number = isNew
                        ? new EntryWriter(connection).Write(posting, news[step.New].RecordedAt, step.Position, terms)
                        : new EntryWriter(connection).Rewrite(posting, step.Head!.Number, step.Position);
                    if (isNew)
                        outcomes[step.New] = new Posted(number, posting);
                    if (posting.Entry is Undo)
                        holdings = Held();
                    else
                        holdings.Apply(posting);
                    break;
            }
        }

        return new(outcomes,
            before is null ? [] : [.. HoldingsChange.Between(before, holdings),
                .. CostEffects(costs, Costs(suffix), holdings)]);
    }

    /// <summary>What is held today, as the file stands now.</summary>
    private Holdings Held() => new HoldingsReader(inside).Read(today);

    /// <summary>Says of each undo and amendment whether it holds.</summary>
    public void CountActs()
    {
        foreach (var said in _log.All().Where(said => said.IsAct).ToList())
            connection.Execute(
                "UPDATE entry SET counts = @counts WHERE key = @Key",
                new { said.Key, counts = Standing.Holds(said.Key) ? 1 : 0 });
    }

    /// <summary>
    /// An entry that does not count is shown by what was said alone: no rule says what it would have done.
    /// </summary>
    private void Count(Head head)
    {
        if (Standing.Holds(head.Key))
            connection.Execute("UPDATE entry SET counts = 1 WHERE id = @Number", new { head.Number });
        else
        {
            var (words, note) = Standing.WordsOf(_log.Find(head.Key)!);
            connection.Execute(
                "UPDATE entry SET counts = 0, summary = @words, note = @note WHERE id = @Number",
                new { head.Number, words, note });
        }
    }

    /// <summary>
    /// The last position of an entry that decides something; null when there is none. A definition does where the same
    /// thing is defined more than once: the only one reaches back to the beginning.
    /// </summary>
    public Position? Last() => new[] { LastAct(), LastOfSeveralDefinitions() }
        .OfType<PositionRow>().Select(row => (Position?)new Position(row.Date, row.Ord)).Max();

    private PositionRow? LastAct() => connection.QueryFirstOrDefault<PositionRow>(
        """
        SELECT e.date AS Date, e.ord AS Ord FROM entry e CROSS JOIN said s ON s.key = e.key
        WHERE e.undoes IS NULL AND e.amends IS NULL AND e.counts = 1 AND e.kind NOT IN ('item', 'process', 'holder')
        ORDER BY e.date DESC, e.ord DESC LIMIT 1
        """);

    private PositionRow? LastOfSeveralDefinitions() => connection.QueryFirstOrDefault<PositionRow>(
        """
        SELECT e.date AS Date, e.ord AS Ord FROM (
            SELECT kind, name FROM said WHERE name IS NOT NULL AND kind IN ('item', 'process', 'holder')
            GROUP BY kind, name HAVING count(*) > 1) d
        CROSS JOIN said s ON s.kind = d.kind AND s.name = d.name CROSS JOIN entry e ON e.key = s.key
        WHERE e.undoes IS NULL AND e.amends IS NULL AND e.counts = 1 ORDER BY e.date DESC, e.ord DESC LIMIT 1
        """);

    /// <summary>
    /// The entries from a position on that decide something, without definitions that reach back further, as the only
    /// one of a thing does; and those that changed.
    /// </summary>
    private IReadOnlyList<Head> Suffix(Position from, IReadOnlyCollection<string> changed) =>
    [
        .. connection.Query<Head>(
            """
            SELECT e.id AS Number, e.key AS Key, e.date AS Date, e.ord AS Ord, e.summary AS Summary, e.kind AS Kind
            FROM entry e CROSS JOIN said s ON s.key = e.key
            WHERE (e.date, e.ord) >= (@Date, @Ord) AND (s.about IS NULL OR NOT EXISTS (SELECT 1 FROM said t
                WHERE t.key = s.about))
                AND (s.name IS NULL OR s.kind IN ('setting', 'format') OR EXISTS (SELECT 1 FROM said a
                    WHERE a.about = s.key)
                    OR EXISTS (SELECT 1 FROM said o WHERE o.kind = s.kind AND o.name = s.name AND o.key <> s.key))
            ORDER BY e.date, e.ord
            """,
            new { from.Date, from.Ord })
        .Where(head => changed.Contains(head.Key) || _log.Find(head.Key) is not { } said || !Definitions.IsOne(said)
            || (Definitions.EffectiveFrom(said) != Position.Start && !Definitions.IsSuperseded(said))),
    ];

    /// <summary>Where an entry stands: an amendment may have given it another day or another place.</summary>
    private Position PositionOf(Head head) =>
        _log.About(head.Key).Count > 0 && _log.Find(head.Key) is { } said
            ? Standing.PositionOf(said)
            : new(head.Date, head.Ord);

    /// <summary>
    /// What an undo took back of an entry whose words were not kept counts again until the undo is decided once more.
    /// </summary>
    private void TakeOut(IReadOnlyList<Head> suffix)
    {
        new Wipe(connection).Of(suffix.Select(head => head.Number));
        foreach (var undo in suffix.Where(head => head.Kind == "undo"))
            EntryWriter.CountAgain(connection, undo.Number);
    }

    /// <summary>What each entry took out of stock, in money.</summary>
    private Dictionary<long, long> Costs(IReadOnlyList<Head> heads) => connection.Query<CostRow>(
        """
        SELECT m.entry_id AS Number, sum(m.value) AS Value FROM json_each(@numbers) n
            CROSS JOIN movement m ON m.entry_id = n.value
        WHERE m.from_place >= 100 AND m.to_place < 100 GROUP BY m.entry_id
        """,
        new { numbers = Reading.Json.Array(heads.Select(head => head.Number)) }).ToDictionary(row => row.Number,
            row => row.Value);

    private IEnumerable<Effect> CostEffects(Dictionary<long, long> before, Dictionary<long, long> after,
        Holdings holdings)
    {
        var past = new JournalReader(inside);
        var changed = after.Where(cost => before.TryGetValue(cost.Key, out var then) && then != cost.Value).ToList();
        foreach (var (number, value) in changed.Take(MostCosts))
            yield return new($"entry {number} ({past.Find(number)!.Kind})", Text(before[number]), Text(value));
        if (changed.Count > MostCosts)
            yield return new($"{changed.Count - MostCosts} more entries", "cost", "differs");

        string Text(long millionths) =>
            $"{new Money(millionths).Text(holdings.Settings.Style)} {holdings.Settings.Currency}".TrimEnd();
    }

    internal sealed record CostRow(long Number, long Value);

    internal sealed record PositionRow(string Date, long Ord);

    private sealed record Step(Position Position, Head? Head, int New);
}

/// <summary>An entry in the journal.</summary>
internal sealed record Head(long Number, string Key, string Date, long Ord, string Summary, string Kind);

/// <summary>Something that is said now.</summary>
/// <param name="Entry">What.</param>
/// <param name="Position">Where it stands among all entries.</param>
/// <param name="RecordedAt">When it is recorded.</param>
internal sealed record NewEntry(Entry Entry, Position Position, Instant RecordedAt);

/// <summary>What came of a derivation.</summary>
/// <param name="Outcomes">What became of each entry that was said now.</param>
/// <param name="Effects">What is different in the end, before and after.</param>
internal sealed record DerivedLedger(IReadOnlyList<PostOutcome> Outcomes, IReadOnlyList<Effect> Effects);

/// <summary>
/// An entry would no longer hold after a change before it: the change is refused and all stays as it was.
/// </summary>
internal sealed class NoLongerHoldsException(Head entry, Refusal refusal)
    : Exception($"entry {entry.Number} of {entry.Date} ({entry.Summary}) would no longer hold: {refusal.Sentence}")
{
    /// <summary>The entry.</summary>
    public Head Entry => entry;

    /// <summary>Why it would no longer hold.</summary>
    public Refusal Reason => refusal;

    /// <summary>The refusal of the change.</summary>
    public Refusal Refusal => new(RefusalKind.DependedOn,
        $"{Message}; take back or amend entry {entry.Number} first") { Entry = entry.Number };
}
