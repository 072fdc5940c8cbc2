using System.Collections.Immutable;
using Ledger.Core.Journal.Rules;
using Ledger.Storage.Reading;

namespace Ledger.Storage.Deriving;

/// <summary>
/// What is defined, as it was on a day: items, formats, processes, holders, settings. The first definition of a thing
/// reaches back to the beginning, since nothing could be said of the thing without it; so does a setting that was made
/// before anything happened.
/// </summary>
internal sealed class Definitions(Snapshot inside, SaidLog log, Standing standing)
{
    private const string Setting = "setting";

    /// <summary>The kinds of entries that define.</summary>
    public static ImmutableArray<string> Kinds { get; } = ["setting", "format", "item", "process", "holder"];

    /// <summary>Puts into holdings what was defined otherwise on a day; null when all was as it is now.</summary>
    public static Action<Holdings>? On(Snapshot snapshot, LocalDate day)
    {
        var log = new SaidLog(snapshot.Connection);
        var definitions = new Definitions(snapshot, log, new Standing(log));
        var after = new Position(Dates.Text(day.PlusDays(1)), 0);
        var changed = definitions.ChangedFrom(after)
            .Where(thing => definitions.IsOtherwise(thing.Kind, thing.Name, after)).ToList();
        return changed.Count == 0 ? null : holdings => definitions.PutInto(holdings, changed, after, day);
    }

    /// <summary>Whether an entry defines something.</summary>
    public static bool IsOne(Said said) => said.Name is not null;

    /// <summary>What an entry defines; null for one that does not.</summary>
    public static string? NameOf(EntryKind kind, EntryText text) => !Kinds.Contains(kind.Name) ? null
        : kind.Name == Setting ? text[kind.Fields[0]].Trim() : kind.NamedBy is { } named ? text[named].Trim() : null;

    /// <summary>The position from which a definition has effect.</summary>
    public Position EffectiveFrom(Said said)
    {
        if (said.Key.StartsWith(Horizon.Prefix, StringComparison.Ordinal))
            return Position.Start;
        if (IsForAlways(said))
            return Position.Start;
        if (HasUsualValue(said.Kind, said.Name!))
            return IsOfTheBeginning(said) ? Position.Start : standing.PositionOf(said);
        var first = log.Definitions(said.Kind, said.Name!).Where(one => standing.Holds(one.Key))
            .MinBy(one => one.RecordedAt, StringComparer.Ordinal);
        return first is null || first.Key == said.Key ? Position.Start : standing.PositionOf(said);
    }

    /// <summary>
    /// Whether a thing is something before it is defined: a setting, and a format that every ledger knows.
    /// </summary>
    public static bool HasUsualValue(string kind, string name) =>
        kind == Setting || (kind == "format" && new FormatTable().TryFind(name, out _));

    /// <summary>All that is defined.</summary>
    public IReadOnlyList<(string Kind, string Name)> Things() =>
    [
        .. inside.Connection.Query<DefinedRow>(
            "SELECT DISTINCT kind AS Kind, name AS Name FROM said WHERE name IS NOT NULL")
            .Select(row => (row.Kind, row.Name)),
    ];

    /// <summary>
    /// The things that are defined otherwise from a position on: what they were before has to be put back. What was
    /// defined once and never put right has been so from the beginning, unless it had a usual value before.
    /// </summary>
    public IReadOnlyList<(string Kind, string Name)> ChangedFrom(Position from) =>
    [
        .. inside.Connection.Query<DefinedRow>(
            """
            SELECT DISTINCT s.kind AS Kind, s.name AS Name FROM said s
            WHERE s.name IS NOT NULL AND (EXISTS (SELECT 1 FROM said a WHERE a.about = s.key)
                OR ((s.date, s.ord) >= (@Date, @Ord) AND (s.kind IN ('setting', 'format')
                    OR EXISTS (SELECT 1 FROM said o WHERE o.kind = s.kind AND o.name = s.name AND o.key <> s.key))))
            """,
            new { from.Date, from.Ord }).Select(row => (row.Kind, row.Name)),
    ];

    /// <summary>The definitions of a thing that hold and have effect before a position, in their order.</summary>
    public IEnumerable<Said> Before(string kind, string name, Position position) =>
        InEffect(kind, name).Select(one => (Said: one, From: EffectiveFrom(one)))
            .Where(one => one.From == Position.Start || one.From < position).OrderBy(one => one.From)
            .Select(one => one.Said);

    /// <summary>
    /// Whether a definition that holds has effect only from a position on. How things are shown follows the settings of
    /// now.
    /// </summary>
    private bool IsOtherwise(string kind, string name, Position position) => !IsOfDisplay(kind, name)
        && InEffect(kind, name).Any(one => EffectiveFrom(one) >= position);

    /// <summary>Whether a definition has no effect any more, since a later one says what has been so always.</summary>
    public bool IsSuperseded(Said said) =>
        said.Name is { } name && standing.Holds(said.Key) && InEffect(said.Kind, name).All(one => one.Key != said.Key);

    /// <summary>The definitions of a thing that hold, without those before the last one that is for always.</summary>
    private IEnumerable<Said> InEffect(string kind, string name)
    {
        var hold = log.Definitions(kind, name).Where(one => standing.Holds(one.Key)).ToList();
        var always = hold.Where(IsForAlways).Select(one => one.RecordedAt).Max(StringComparer.Ordinal);
        return always is null ? hold : hold.Where(one => string.CompareOrdinal(one.RecordedAt, always) >= 0);
    }

    private bool IsForAlways(Said said) => FromDay.IsAlways(standing.TextOf(said, out _)[CommonFields.FromDay]);

    /// <summary>Units and language of what is shown are no part of what happened.</summary>
    private static bool IsOfDisplay(string kind, string name) =>
        kind == Setting && Core.Journal.Setting.Named(name) is { IsOfDisplay: true };

    /// <summary>What else is defined by a thing and could not be read without it; null when nothing is.</summary>
    public string? UserOf(string kind, string name) => inside.Connection.QueryFirstOrDefault<string?>(
        """
        SELECT 'process ' || p.name FROM process p JOIN process_step s ON s.process_id = p.id
            JOIN item i ON i.id = s.item_id
        WHERE @kind = 'item' AND i.code = @name
        UNION ALL SELECT 'item ' || code FROM item WHERE @kind = 'format' AND format = @name COLLATE NOCASE
        UNION ALL SELECT 'holder ' || code FROM holder WHERE @kind = 'format' AND format = @name COLLATE NOCASE
        """,
        new { kind, name });

    /// <summary>Whether a thing is defined by anything that holds.</summary>
    public bool IsDefined(string kind, string name) => log.Definitions(kind, name).Any(one => standing.Holds(one.Key));

    /// <summary>Puts things back to what they were at a position, in the file.</summary>
    public void Reset(IEnumerable<(string Kind, string Name)> things, Position position, LocalDate today)
    {
        var ordered = things.OrderBy(thing => Kinds.IndexOf(thing.Kind)).ToList();
        foreach (var (kind, name) in ordered)
            Delete(kind, name);
        var catalogue = new Catalogue(new InsideOf(inside), today);
        var holdings = new Holdings(today, catalogue, catalogue);
        if (ordered.Count > 0)
            new CatalogueReader(inside).ReadInto(holdings);

        foreach (var (kind, name) in ordered)
        {
            Forget(kind, name, holdings);
            foreach (var said in log.Definitions(kind, name).Where(IsSuperseded))
                ShowAsSaid(said);
            foreach (var said in Before(kind, name, position))
            {
                if (Decide(said, holdings, today) is not Accepted accepted)
                    throw new FormatException($"{kind} {name} can no longer be defined as it was said: "
                        + ((Refused)Decide(said, holdings, today)).Refusal.Sentence);
                new EntryWriter(inside.Connection).Rewrite(accepted.Posting, Number(said.Key),
                    standing.PositionOf(said));
                holdings.Apply(accepted.Posting);
            }
        }
    }

    /// <summary>
    /// What has no effect any more is shown by what was said alone, however the ledger came to that state.
    /// </summary>
    private void ShowAsSaid(Said said)
    {
        var (words, note) = standing.WordsOf(said);
        inside.Connection.Execute("UPDATE entry SET counts = 1, summary = @words, note = @note WHERE key = @Key",
            new { said.Key, words, note });
    }

    /// <summary>Puts things into holdings as they were at a position; the file stays as it is.</summary>
    public void PutInto(Holdings holdings, IEnumerable<(string Kind, string Name)> things,
        Position position, LocalDate today)
    {
        foreach (var (kind, name) in things.OrderBy(thing => Kinds.IndexOf(thing.Kind))
            .Where(thing => thing.Kind != "holder"))
        {
            if (kind == Setting)
                holdings.Settings = Usual(name, holdings.Settings);
            if (kind == "format" && new FormatTable().TryFind(name, out var usual))
                holdings.Put(usual);
            Forget(kind, name, holdings);
            foreach (var said in Before(kind, name, position))
                if (Decide(said, holdings, today) is Accepted accepted)
                    holdings.Apply(accepted.Posting);
        }
    }

    /// <summary>
    /// It was accepted on its own day, which is no objection on an earlier one that it reaches back to.
    /// </summary>
    private Decision Decide(Said said, Holdings holdings, LocalDate today)
    {
        var entry = standing.EntryOf(said, ReadingTerms.Of(holdings, today));
        return PostingRules.Decide(entry, holdings, new JournalReader(inside), LocalDate.Max(today, entry.Date),
            log.Names(said.Key));
    }

    /// <summary>
    /// The number of a definition's entry; 0 for what an earlier version defined, whose rows stand there already.
    /// </summary>
    private long Number(string key) =>
        inside.Connection.QueryFirstOrDefault<long?>("SELECT id FROM entry WHERE key = @key", new { key }) ?? 0;

    /// <summary>
    /// A process is counted once more from the version on that an earlier program left; it keeps its number.
    /// </summary>
    private void Forget(string kind, string name, Holdings holdings)
    {
        if (kind != "process" || holdings.Process(name) is not { } process)
            return;
        var kept = inside.Connection.ExecuteScalar<long>(
            """
            SELECT coalesce(max(v.version), 1) FROM process_version v LEFT JOIN entry e ON e.id = v.entry_id
            WHERE v.process_id = @Id AND NOT EXISTS (SELECT 1 FROM said s WHERE s.key = e.key)
            """,
            new { Id = process.Id.Value });
        holdings.Put(new Process(process.Id, process.Name, []) { Version = (int)kept - 1 });
    }

    private static Settings Usual(string name, Settings settings) =>
        Core.Journal.Setting.Named(name) is { } setting
            ? setting.Read(settings, setting.Text(Settings.Default)) ?? settings
            : settings;

    /// <summary>Takes out what is no longer defined; a setting in any case, since it has a usual value.</summary>
    private void Delete(string kind, string name)
    {
        if (kind == "item" && !log.IsBehindHorizon())
            inside.Connection.Execute("DELETE FROM formula WHERE item_id = (SELECT id FROM item WHERE code = @name)",
                new { name });
        if (kind == "process")
            DeleteVersions(name);
        if (!HasUsualValue(kind, name) && IsDefined(kind, name))
            return;
        switch (kind)
        {
            case Setting:
                inside.Connection.Execute("DELETE FROM setting WHERE name = @name AND entry_id IS NULL", new { name });
                break;
            case "item":
                inside.Connection.Execute(
                    "DELETE FROM item_handling WHERE item_id = (SELECT id FROM item WHERE code = @name)", new { name });
                inside.Connection.Execute(
                    "DELETE FROM item_capacity WHERE item_id = (SELECT id FROM item WHERE code = @name)", new { name });
                inside.Connection.Execute("DELETE FROM item WHERE code = @name", new { name });
                break;
            case "format":
                inside.Connection.Execute("DELETE FROM film_format WHERE code = @name", new { name });
                break;
            case "process":
                inside.Connection.Execute(
                    "DELETE FROM process_step WHERE process_id = (SELECT id FROM process WHERE name = "
                        + "@name)", new { name });
                inside.Connection.Execute("DELETE FROM process WHERE name = @name", new { name });
                break;
            case "holder":
                inside.Connection.Execute("DELETE FROM holder WHERE code = @name", new { name });
                break;
        }
    }

    /// <summary>The versions of a process, but for those of an earlier program.</summary>
    private void DeleteVersions(string name)
    {
        inside.Connection.Execute(
            """
            DELETE FROM process_version_step WHERE (process_id, version) IN (
                SELECT v.process_id, v.version FROM process_version v JOIN process p ON p.id = v.process_id
                    JOIN entry e ON e.id = v.entry_id
                JOIN said s ON s.key = e.key WHERE p.name = @name)
            """,
            new { name });
        inside.Connection.Execute(
            """
            DELETE FROM process_version WHERE process_id = (SELECT id FROM process WHERE name = @name)
                AND entry_id IN (SELECT e.id FROM entry e JOIN said s ON s.key = e.key)
            """,
            new { name });
    }

    /// <summary>A setting that was made before anything happened holds from the beginning.</summary>
    private bool IsOfTheBeginning(Said said) => inside.Connection.ExecuteScalar<long>(
        """
        SELECT NOT EXISTS (SELECT 1 FROM said WHERE name IS NULL AND about IS NULL AND ord < @Ord)
            AND NOT EXISTS (SELECT 1 FROM entry e WHERE NOT EXISTS (SELECT 1 FROM said s WHERE s.key = e.key)
                AND e.kind NOT IN ('setting', 'format', 'item', 'process', 'holder'))
        """,
        new { said.Ord }) == 1;

    internal sealed record DefinedRow(string Kind, string Name);
}
