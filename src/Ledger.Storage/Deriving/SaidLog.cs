using NodaTime.Text;

namespace Ledger.Storage.Deriving;

/// <summary>
/// What was said, entry by entry: only ever added to. Each row's digest covers the row and the digest of the one
/// recorded before it, so that no row can be changed, added or taken out unseen.
/// </summary>
internal sealed class SaidLog(SqliteConnection connection)
{
    private static readonly InstantPattern Stamp = InstantPattern.CreateWithInvariantCulture(
        "uuuu-MM-dd'T'HH:mm:ss.ffffff'Z'");

    /// <summary>What was said under a key; null when nothing was.</summary>
    public Said? Find(string key) => connection.QueryFirstOrDefault<Said>(
        """
        SELECT key AS Key, kind AS Kind, about AS About, name AS Name, date AS Date, ord AS Ord,
            recorded_at AS RecordedAt, json AS Json,
            digest AS Digest
        FROM said WHERE key = @key
        """,
        new { key });

    /// <summary>What takes back or amends what was said under a key, in the order of recording.</summary>
    public IReadOnlyList<Said> About(string key) => connection.Query<Said>(
        """
        SELECT key AS Key, kind AS Kind, about AS About, name AS Name, date AS Date, ord AS Ord,
            recorded_at AS RecordedAt, json AS Json,
            digest AS Digest
        FROM said WHERE about = @key ORDER BY recorded_at
        """,
        new { key }).ToList();

    /// <summary>All that was said, in the order of recording.</summary>
    public IEnumerable<Said> All() => connection.Query<Said>(
        """
        SELECT key AS Key, kind AS Kind, about AS About, name AS Name, date AS Date, ord AS Ord,
            recorded_at AS RecordedAt, json AS Json,
            digest AS Digest
        FROM said ORDER BY recorded_at, key
        """);

    /// <summary>The definitions of one thing, in their order; those that were taken back too.</summary>
    public IReadOnlyList<Said> Definitions(string kind, string name) => connection.Query<Said>(
        """
        SELECT key AS Key, kind AS Kind, about AS About, name AS Name, date AS Date, ord AS Ord,
            recorded_at AS RecordedAt, json AS Json,
            digest AS Digest
        FROM said WHERE kind = @kind AND name = @name ORDER BY date, ord
        """,
        new { kind, name }).ToList();

    /// <summary>Whether the ledger holds entries of an earlier version, which stay as they were posted.</summary>
    public bool IsBehindHorizon() => connection.ExecuteScalar<long>(
        "SELECT EXISTS (SELECT 1 FROM entry e WHERE NOT EXISTS (SELECT 1 FROM said s WHERE s.key = e.key))") == 1;

    /// <summary>The moment for the next row: now, or just after the last one where the clock says less.</summary>
    public Instant Next(Instant now)
    {
        var last = connection.QueryFirstOrDefault<string?>(
            "SELECT recorded_at FROM said ORDER BY recorded_at DESC LIMIT 1");
        var micro = Instant.FromUnixTimeTicks(now.ToUnixTimeTicks() / 10 * 10);
        return last is not null && Stamp.Parse(last).Value is var before && before >= micro
            ? before + Duration.FromTicks(10)
            : micro;
    }

    /// <summary>The place in its day of what is recorded at a moment.</summary>
    public static long OrdOf(Instant recordedAt) => recordedAt.ToUnixTimeTicks() / 10 * Step;

    /// <summary>
    /// How far two entries of one microsecond after the other are apart: room for others to be put between them.
    /// </summary>
    public const long Step = 1024;

    /// <summary>A moment as the file has it.</summary>
    public static string Text(Instant recordedAt) => Stamp.Format(recordedAt);

    /// <summary>A moment as it was.</summary>
    public static Instant Moment(string text) => Stamp.Parse(text).Value;

    /// <summary>Adds a row that is recorded after all others.</summary>
    public void Append(Said said)
    {
        var before = connection.QueryFirstOrDefault<string?>(
            "SELECT digest FROM said ORDER BY recorded_at DESC, key DESC LIMIT 1") ?? "";
        Insert(said with { Digest = DigestOf(said, before) });
    }

    /// <summary>Adds rows anywhere among the others; the digests are chained once more.</summary>
    public void Merge(IEnumerable<Said> rows)
    {
        foreach (var row in rows)
            Insert(row);
        var before = "";
        foreach (var row in All().ToList())
        {
            var digest = DigestOf(row, before);
            if (digest != row.Digest)
                connection.Execute("UPDATE said SET digest = @digest WHERE key = @Key", new { digest, row.Key });
            before = digest;
        }
    }

    /// <summary>The names that were given by what was said under a key.</summary>
    public GivenNames Names(string key) => new(NamesOf(key));

    /// <summary>The same as a list.</summary>
    public IReadOnlyList<GivenName> NamesOf(string key) => connection.Query<GivenName>(
        "SELECT slot AS Slot, series AS Series, number AS Number FROM said_name WHERE key = @key ORDER BY "
            + "slot", new { key }).ToList();

    /// <summary>Keeps names for ever.</summary>
    public void Keep(string key, IEnumerable<GivenName> names)
    {
        foreach (var name in names)
            connection.Execute(
                """
                INSERT INTO said_name (key, slot, series, number, digest)
                    VALUES (@key, @Slot, @Series, @Number, @digest)
                ON CONFLICT (key, slot) DO NOTHING
                """,
                new { key, name.Slot, name.Series, name.Number, digest = DigestOf(key, name) });
    }

    /// <summary>Who gave a name already; null when nobody did.</summary>
    public (string Key, GivenName Name)? HolderOf(GivenName name) => connection.QueryFirstOrDefault<NameRow>(
        "SELECT key AS Key, slot AS Slot, series AS Series, number AS Number, digest AS Digest FROM said_name "
            + "WHERE series = @Series AND number = @Number", new { name.Series, name.Number }) is { } row
        ? (row.Key, new(row.Slot, row.Series, row.Number)) : null;

    /// <summary>An entry that does not hold lets go of a name that another one gave as well.</summary>
    public void Yield(string key, GivenName name) => connection.Execute(
        "DELETE FROM said_name WHERE key = @key AND slot = @Slot", new { key, name.Slot });

    /// <summary>The digest of a row after the one before it.</summary>
    public static string DigestOf(Said said, string before) => Sha256.Hex(
        string.Join('\n', before, said.RecordedAt, said.Key, said.Kind, said.About, said.Name,
            said.Date, $"{said.Ord}", said.Json));

    /// <summary>
    /// The digest of a name that was given. Names are added when they are needed, so that they are no part of the
    /// chain.
    /// </summary>
    public static string DigestOf(string key, GivenName name) =>
        Sha256.Hex($"{key}\n{name.Slot}\n{name.Series}\n{name.Number}");

    /// <summary>The names that are not as they were given: their keys.</summary>
    public IEnumerable<(string Key, GivenName Name)> AlteredNames() => connection.Query<NameRow>(
            "SELECT key AS Key, slot AS Slot, series AS Series, number AS Number, digest AS Digest FROM said_name "
                + "WHERE digest <> '' ORDER BY key, slot")
        .Select(row => (row, Name: new GivenName(row.Slot, row.Series, row.Number)))
        .Where(one => DigestOf(one.row.Key, one.Name) != one.row.Digest).Select(one => (one.row.Key, one.Name));

    /// <summary>Gives a digest to names that were given before names had one.</summary>
    public void SealNames()
    {
        foreach (var row in connection.Query<NameRow>(
            "SELECT key AS Key, slot AS Slot, series AS Series, number AS Number, digest AS Digest FROM said_name "
                + "WHERE digest = ''").ToList())
            connection.Execute(
                "UPDATE said_name SET digest = @digest WHERE key = @Key AND slot = @Slot",
                new { row.Key, row.Slot, digest = DigestOf(row.Key, new(row.Slot, row.Series, row.Number)) });
    }

    internal sealed record NameRow(string Key, string Slot, string Series, long Number, string Digest);

    private void Insert(Said said) => connection.Execute(
        """
        INSERT INTO said (key, kind, about, name, date, ord, recorded_at, json, digest)
        VALUES (@Key, @Kind, @About, @Name, @Date, @Ord, @RecordedAt, @Json, @Digest)
        """,
        said);
}
