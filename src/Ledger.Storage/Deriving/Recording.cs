using Ledger.Core.Journal.Rules;
using Ledger.Storage.Reading;

namespace Ledger.Storage.Deriving;

/// <summary>
/// Records entries, inside a transaction of the caller. One that comes after all others is decided on what the ledger
/// holds and written; one that is late, takes back or amends has what follows derived.
/// </summary>
internal sealed class Recording(SqliteConnection connection, Snapshot inside, SharedHoldings holdings,
    LocalDate today, Instant now)
{
    private const int Constraint = 19;

    private readonly JournalReader _past = new(inside);
    private readonly SaidLog _log = new(connection);
    private readonly Derivation _derivation = new(connection, inside, today);

    /// <summary>
    /// The last entry that decides something, once it was asked for. What is recorded after it takes its place; a
    /// second definition of a thing makes the first one decide, wherever that stands, so that it is asked for once
    /// more.
    /// </summary>
    private Lazy<Position?>? _last;

    /// <summary>Records an entry.</summary>
    public PostOutcome Post(Entry entry) => PostAll([entry], _ => { })[0];

    /// <summary>
    /// Records entries as they follow each other in days, so that numbers do not depend on how a file was sorted; late
    /// ones are derived together.
    /// </summary>
    /// <param name="entries">The entries.</param>
    /// <param name="done">Told how many are done.</param>
    /// <returns>What became of each. When any was refused, the caller rolls all back.</returns>
    public IReadOnlyList<PostOutcome> PostAll(IReadOnlyList<Entry> entries, Action<int> done)
    {
        new Horizon(connection, _log).KeepDefinitions(() => Now);
        _log.SealNames();
        var (order, outcomes) = (InOrderOfDays(entries), new PostOutcome[entries.Count]);
        for (var next = 0; next < order.Count; done(next))
            foreach (var outcome in PostNext(order.Skip(next).Select(index => entries[index])))
                outcomes[order[next++]] = outcome;
        return outcomes;
    }

    /// <summary>The first of some entries, or all late ones that follow each other there.</summary>
    private IReadOnlyList<PostOutcome> PostNext(IEnumerable<Entry> entries)
    {
        var entry = entries.First();
        if (NumberOf(entry) is { } number)
            return [new AlreadyPosted(number)];
        if (!ChangesThePast(entry))
            return [Append(entry)];
        var outcomes = IsForAlways(entry) ? [Always(entry)]
            : IsAct(entry) ? [Act(entry)]
            : entry.Before.Length > 0 ? [InBetween(entry)]
            : Late([.. entries.TakeWhile(
                later => !IsAct(later) && !IsForAlways(later) && later.Before.Length == 0)]);
        _last = null;
        return outcomes;
    }

    /// <summary>
    /// What happened stands in the order of its days, and as it was told within a day. What is defined, put right or
    /// put before something keeps its place, for what is told after it may need it.
    /// </summary>
    private static IReadOnlyList<int> InOrderOfDays(IReadOnlyList<Entry> entries)
    {
        var (stretch, places) = (0, new List<(int Index, int Stretch, LocalDate Date)>());
        for (var i = 0; i < entries.Count; i++)
        {
            var isFixed = entries[i] is Undo or Amendment || entries[i].Before.Length > 0
                || Definitions.Kinds.Contains(entries[i].Kind);
            places.Add((i, isFixed ? ++stretch : stretch, entries[i].Date));
            stretch += isFixed ? 1 : 0;
        }

        return [.. places.OrderBy(place => place.Stretch).ThenBy(place => place.Date).Select(place => place.Index)];
    }

    /// <summary>Whether other entries follow from it, so that it is not simply the last one.</summary>
    public bool ChangesThePast(Entry entry) =>
        IsAct(entry) || IsForAlways(entry) || entry.Before.Length > 0 || IsLate(entry);

    private long? NumberOf(Entry entry) =>
        entry.FormerKeys.Prepend(entry.Key).Select(_past.NumberOf).FirstOrDefault(found => found is not null);

    /// <summary>
    /// An undo of an entry whose words were not kept is an entry like others: it moves back what was moved.
    /// </summary>
    private bool IsAct(Entry entry) =>
        entry is Amendment || (entry is Undo undo && Target(undo.Number, undo.Reference) is not { IsSaid: false });

    private static bool IsForAlways(Entry entry) => entry is Definition { IsForAlways: true };

    private JournalEntry? Target(long number, string? key) => key is null ? _past.Find(number) : _past.Find(key);

    private bool IsLate(Entry entry)
    {
        var date = entry is Undo undo && Target(undo.Number, undo.Reference) is { } target ? target.Date : entry.Date;
        // The last entry that decides something is looked for only where it can matter: among thousands of definitions
        // that is a long way.
        return IsBeforeAny(date) && !IsFirstDefinition(entry)
            && Last is { } last && string.CompareOrdinal(Dates.Text(date), last.Date) < 0;
    }

    private Position? Last => (_last ??= new(_derivation.Last)).Value;

    private bool IsBeforeAny(LocalDate date) =>
        connection.QueryFirstOrDefault<string?>("SELECT date FROM entry ORDER BY date DESC LIMIT 1") is { } newest
            && string.CompareOrdinal(Dates.Text(date), newest) < 0;

    private bool IsFirstDefinition(Entry entry)
    {
        if (entry is SettingChange || !Definitions.Kinds.Contains(entry.Kind))
            return false;
        var kind = EntryKinds.Of(entry);
        var name = Definitions.NameOf(kind, EntryWriting.Write(kind, entry, ReadingTerms.Of(Now, today)));
        return name is not null && !Definitions.HasUsualValue(kind.Name, name)
            && _log.Definitions(kind.Name, name).Count == 0;
    }

    private Holdings Now => holdings.On(today, inside);

    private PostOutcome Append(Entry entry)
    {
        switch (PostingRules.Decide(entry, Now, _past, today))
        {
            case Refused { Refusal: var refusal }:
                return new NotPosted(refusal);
            case Accepted { Posting: var posting }:
                var decides = _last is not null && !IsFirstDefinition(entry);
                return Guarded(() =>
                {
                    var recordedAt = _log.Next(now);
                    var position = new Position(Dates.Text(posting.Entry.Date), SaidLog.OrdOf(recordedAt));
                    var number = new EntryWriter(connection).Write(posting, recordedAt, position,
                        ReadingTerms.Of(Now, today));
                    holdings.Follow(posting, today, inside);
                    if (decides)
                        _last = Definitions.Kinds.Contains(entry.Kind) ? null : new(position);
                    return new Posted(number, posting);
                });
            case var other:
                throw new InvalidOperationException($"a decision is neither accepted nor refused: {other}");
        }
    }

    /// <summary>
    /// A definition that reaches back to the beginning: all that happened is decided once more under it.
    /// </summary>
    private PostOutcome Always(Entry entry)
    {
        if (PostingRules.Decide(entry, Now, _past, today) is not Accepted { Posting: var posting })
            return new NotPosted(((Refused)PostingRules.Decide(entry, Now, _past, today)).Refusal);
        var things = Things([entry]);
        var before = Now;
        return Guarded(() =>
        {
            var recordedAt = _log.Next(now);
            var position = new Position(Dates.Text(entry.Date), SaidLog.OrdOf(recordedAt));
            var number = new EntryWriter(connection).WriteHeadOnly(posting, recordedAt, position,
                ReadingTerms.Of(before, today));
            holdings.Forget();
            return new Posted(number,
                posting with { Effects = _derivation.From(Position.Start, [], [], things, before).Effects });
        });
    }

    /// <summary>An entry that is recorded before another one of its day.</summary>
    private PostOutcome InBetween(Entry entry) =>
        PostingRules.PlaceBefore(entry.Before, entry.Date, _past, out var refusal) is not { } next
            ? new NotPosted(refusal!)
            : PlaceBefore(next) is not { } ord ? new NotPosted(NoRoom(next))
            : Late([entry with { Before = next.Key }], ord)[0];

    /// <summary>A place right before an entry; null when there is none left.</summary>
    private long? PlaceBefore(JournalEntry next)
    {
        var places = connection.QueryFirst<PlaceRow>(
            """
            SELECT n.ord AS Next, (SELECT max(e.ord) FROM entry e WHERE e.date = n.date AND e.ord < n.ord) AS Before
                FROM entry n WHERE n.key = @Key
            """,
            new { next.Key });
        var place = places.Before is { } before ? before + ((places.Next - before) / 2) : places.Next - SaidLog.Step;
        return place == places.Before ? null : place;
    }

    private static Refusal NoRoom(JournalEntry next) => new(
        RefusalKind.DependedOn,
        $"no place is left right before entry {next.Number}; put it before another entry of that day, then that one "
            + "before it");

    private IReadOnlyList<PostOutcome> Late(IReadOnlyList<Entry> entries, long? ord = null)
    {
        var outcomes = new PostOutcome?[entries.Count];
        var news = new List<(int Index, NewEntry Entry)>();
        var (keys, wanted) = (new HashSet<string>(), new List<(int Index, LocalDate Date)>());
        var recordedAt = _log.Next(now);
        for (var i = 0; i < entries.Count; i++)
            if (NumberOf(entries[i]) is { } number)
                outcomes[i] = new AlreadyPosted(number);
            else if (!keys.Add(entries[i].Key))
                outcomes[i] = new AlreadyPosted(0);
            else
                wanted.Add((i, entries[i] is Undo undo && Target(undo.Number, undo.Reference) is { } target
                    ? target.Date
                    : entries[i].Date));

        // They are written in the order in which they happened, and each digest covers what was recorded before.
        foreach (var (i, date) in wanted.OrderBy(one => one.Date))
        {
            news.Add((i, new(entries[i], new(Dates.Text(date), ord ?? SaidLog.OrdOf(recordedAt)), recordedAt)));
            recordedAt += Duration.FromTicks(10);
        }

        if (news.Count == 0)
            return [.. outcomes.Select(outcome => outcome!)];
        var before = Now;
        var things = Things(news.Select(one => one.Entry.Entry));
        holdings.Forget();
        PostOutcome outcome = new NotPosted(new(RefusalKind.NotAccepted, ""));
        try
        {
            var derived = _derivation.From(
                news.Min(entry => entry.Entry.Position), [.. news.Select(one => one.Entry)], [], things, before);
            for (var i = 0; i < news.Count; i++)
                outcomes[news[i].Index] = derived.Outcomes[i] is Posted posted && news.Count == 1
                    ? posted with { Posting = posted.Posting with { Effects = derived.Effects } } : derived.Outcomes[i];
        }
        catch (NoLongerHoldsException refused)
        {
            foreach (var (index, _) in news)
                outcomes[index] = new NotPosted(refused.Refusal);
        }
        catch (FormatException unreadable)
        {
            foreach (var (index, _) in news)
                outcomes[index] = new NotPosted(new(RefusalKind.DependedOn, unreadable.Message));
        }
        catch (SqliteException trouble) when (trouble.SqliteErrorCode == Constraint)
        {
            foreach (var (index, _) in news)
                outcomes[index] = new NotPosted(RefusedByFile(trouble));
        }

        return [.. outcomes.Select(one => one ?? outcome)];
    }

    private PostOutcome Act(Entry entry)
    {
        if (PostingRules.DecideAct(entry, _past) is not Accepted { Posting: var act })
            return new NotPosted(((Refused)PostingRules.DecideAct(entry, _past)).Refusal);
        var held = Now;
        var terms = ReadingTerms.Of(held, today);
        holdings.Forget();
        return Guarded(() =>
        {
            var ord = OrdOf(act.Entry, out var unplaced, out var placed);
            if (unplaced is not null)
                return new NotPosted(unplaced);
            act = act with { Entry = placed };
            var target = _past.Find(((act.Entry as Undo)?.Reference ?? (act.Entry as Amendment)?.Reference)!)!;
            var root = _derivation.Standing.Root(target.Key)!;
            var before = EffectOf(root);
            var recordedAt = _log.Next(now);
            var place = new Position(Dates.Text(target.Date), ord ?? SaidLog.OrdOf(recordedAt));
            var number = new EntryWriter(connection).WriteHeadOnly(act, recordedAt, place, terms);
            CountActs(root.Key);
            if (Problem(root, terms) is { } problem)
                return new NotPosted(problem);
            if (root.Name is { } name && !_derivation.Definitions.IsDefined(root.Kind, name)
                && _derivation.Definitions.UserOf(root.Kind, name) is { } user)
                return new NotPosted(new(
                    RefusalKind.DependedOn,
                    $"{root.Kind} {name} is needed by {user}; take that back or amend it first"));
            var after = EffectOf(root);
            var derived = _derivation.From(
                before < after ? before : after, [], [root.Key],
                root.Name is null ? [] : [(root.Kind, root.Name)], held);
            if (root.Name is not null
                && connection.ExecuteScalar<long>("SELECT EXISTS (SELECT 1 FROM pragma_foreign_key_check)") == 1)
                return new NotPosted(new(
                    RefusalKind.DependedOn,
                    $"{root.Kind} {root.Name} is used by entries that an earlier version posted; it has to stay"));
            return new Posted(number, act with { Effects = derived.Effects });
        });
    }

    /// <summary>The place that an amendment gives to its entry; null when it leaves it where it is.</summary>
    private long? OrdOf(Entry act, out Refusal? refusal, out Entry placed)
    {
        (refusal, placed) = (null, act);
        if (act is not Amendment amendment || amendment.Changes.LastOrDefault(Standing.IsPlace) is not { } change)
            return null;
        var root = _log.Find(amendment.Reference!)!;
        if (change.Value.Length == 0)
            return SaidLog.OrdOf(SaidLog.Moment(root.RecordedAt));
        var day =
            amendment.Changes.LastOrDefault(other => other.Line == 0 && other.Field == CommonFields.Date.Name)?.Value
                ?? _derivation.Standing.PositionOf(root).Date;
        if (PostingRules.PlaceBefore(change.Value, Dates.Parse(day) ?? today, _past, out refusal) is not { } next)
            return null;
        if (next.Key == root.Key)
            refusal = new(RefusalKind.NotAccepted,
                $"entry {next.Number} cannot come before itself; name another entry of that day");
        placed =
            amendment with { Changes = [
                .. amendment.Changes.Select(one => Standing.IsPlace(one) ? one with { Value = next.Key } : one)] };
        var ord = PlaceBefore(next);
        refusal ??= ord is null ? NoRoom(next) : null;
        return ord;
    }

    internal sealed record PlaceRow(long Next, long? Before);

    /// <summary>Where an entry's effect begins, as it stands now.</summary>
    private Position EffectOf(Said root)
    {
        var own = connection.QueryFirst<Derivation.PositionRow>(
            "SELECT date AS Date, ord AS Ord FROM entry WHERE key = @Key", new { root.Key });
        if (!Definitions.IsOne(root))
            return new[] { new Position(own.Date, own.Ord), _derivation.Standing.PositionOf(root) }.Min();
        return _derivation.Definitions.EffectiveFrom(root);
    }

    /// <summary>What an entry that was amended cannot be read as; null when it can, or does not hold.</summary>
    private Refusal? Problem(Said root, ReadingTerms terms)
    {
        try
        {
            var entry = _derivation.Standing.EntryOf(root, terms);
            return entry.Date > today
                ? new(RefusalKind.InFuture, $"{Dates.Text(entry.Date)} is later than today, {Dates.Text(today)}")
                : null;
        }
        catch (FormatException wrong)
        {
            return new(RefusalKind.NotAccepted, wrong.Message);
        }
    }

    private void CountActs(string key)
    {
        foreach (var act in _log.About(key))
        {
            connection.Execute(
                "UPDATE entry SET counts = @counts WHERE key = @Key",
                new { act.Key, counts = _derivation.Standing.Holds(act.Key) ? 1 : 0 });
            CountActs(act.Key);
        }
    }

    private IReadOnlyList<(string Kind, string Name)> Things(IEnumerable<Entry> entries) =>
    [
        .. entries.Where(entry => Definitions.Kinds.Contains(entry.Kind)).Select(entry =>
            (entry.Kind, Definitions.NameOf(EntryKinds.Of(entry),
                EntryWriting.Write(EntryKinds.Of(entry), entry, ReadingTerms.Of(Now, today)))!)),
    ];

    private PostOutcome Guarded(Func<PostOutcome> write)
    {
        try
        {
            return write();
        }
        catch (NoLongerHoldsException refused)
        {
            holdings.Forget();
            return new NotPosted(refused.Refusal);
        }
        catch (FormatException unreadable)
        {
            holdings.Forget();
            return new NotPosted(new(RefusalKind.DependedOn, unreadable.Message));
        }
        catch (SqliteException trouble) when (trouble.SqliteErrorCode == Constraint)
        {
            holdings.Forget();
            return new NotPosted(RefusedByFile(trouble));
        }
    }

    private static Refusal RefusedByFile(SqliteException trouble) =>
        new(RefusalKind.DependedOn, $"the file's own rules refuse it: {trouble.Message}");
}
