using Ledger.Storage.Writing;

namespace Ledger.Storage.Deriving;

/// <summary>
/// Writes an entry: what was said, the names that it gave, its head in the journal, and all that it moves and
/// establishes.
/// </summary>
internal sealed class EntryWriter(SqliteConnection connection)
{
    private readonly SaidLog _log = new(connection);

    /// <summary>Writes an entry that is said now, and returns its number.</summary>
    public long Write(Posting posting, Instant recordedAt, Position position, ReadingTerms terms)
    {
        Say(posting, recordedAt, position, terms);
        var number = WriteHead(posting, recordedAt, position);
        new PostingWriter(connection).WriteFacts(posting, number);
        TakeBackUnsaid(posting.Entry);
        _log.Keep(posting.Entry.Key, posting.Names);
        return number;
    }

    /// <summary>Writes once more what an entry moves and establishes, in place of what was taken out.</summary>
    public long Rewrite(Posting posting, long number, Position position)
    {
        connection.Execute(
            "UPDATE entry SET kind = @Kind, date = @Date, ord = @Ord, summary = @Summary, note = @Note WHERE id = "
                + "@number",
            new { number, posting.Entry.Kind, position.Date, position.Ord, posting.Summary, posting.Entry.Note });
        new PostingWriter(connection).WriteFacts(posting, number);
        TakeBackUnsaid(posting.Entry);
        if (_log.NamesOf(posting.Entry.Key) is { Count: > 0 } kept
            && posting.Names.FirstOrDefault(name => kept.Any(one => one.Slot == name.Slot && one != name)) is { } other)
            throw new FormatException(
                $"entry {number} gave the name {other.Number} of the series {other.Series}, and another one is kept");
        _log.Keep(posting.Entry.Key, posting.Names);
        return number;
    }

    /// <summary>
    /// Writes what is said and its head in the journal; what follows from it is derived by the caller.
    /// </summary>
    public long WriteHeadOnly(Posting posting, Instant recordedAt, Position position, ReadingTerms terms)
    {
        Say(posting, recordedAt, position, terms);
        return WriteHead(posting, recordedAt, position);
    }

    /// <summary>Writes the head of something that was said elsewhere; what it moves is derived by the caller.</summary>
    public void WriteJoined(Said said) => connection.Execute(
        """
        INSERT INTO entry (key, kind, date, recorded_at, summary, note, undoes, amends, ord)
        SELECT @Key, @kind, @Date, @RecordedAt, '', '', iif(@kind = 'undo', t.id, NULL),
            iif(@kind = 'amendment', t.id, NULL), @Ord
        FROM (SELECT (SELECT id FROM entry WHERE key = @About) AS id) t
        """,
        new { said.Key, kind = said.Kind, said.Date, said.RecordedAt, said.About, said.Ord });

    /// <summary>Writes what the journal says of an undo or an amendment.</summary>
    public void WriteSummary(string key, string summary, string note) =>
        connection.Execute("UPDATE entry SET summary = @summary, note = @note WHERE key = @key",
            new { key, summary, note });

    /// <summary>What an undo took back of an entry whose words were not kept, counts again.</summary>
    public static void CountAgain(SqliteConnection connection, long undo) => Count(connection, undo, 1);

    private void TakeBackUnsaid(Entry entry)
    {
        if (entry is Undo)
            Count(connection,
                connection.ExecuteScalar<long>("SELECT id FROM entry WHERE key = @Key", new { entry.Key }), 0);
    }

    /// <summary>Whether the target of an undo counts, and the work that it gave to baths with it.</summary>
    private static void Count(SqliteConnection connection, long undo, int counts)
    {
        var target = connection.ExecuteScalar<long>(
            "SELECT coalesce(max(t.id), 0) FROM entry e JOIN entry t ON t.id = e.undoes WHERE e.id = @undo AND "
                + "t.counts <> @counts", new { undo, counts });
        if (target == 0)
            return;
        if (counts == 0)
            new UseByDay(connection).Take(target);
        connection.Execute("UPDATE entry SET counts = @counts WHERE id = @target", new { target, counts });
        if (counts == 1)
            new UseByDay(connection).Add(target);
        connection.Execute(
            """
            UPDATE bath_total SET area = bath_total.area + @sign * w.area,
                weighted = bath_total.weighted + @sign * w.weighted
            FROM bath_work w
            WHERE w.entry_id = @target AND w.is_first = 1 AND w.place_id = bath_total.place_id
            """,
            new { target, sign = counts == 1 ? 1 : -1 });
    }

    private void Say(Posting posting, Instant recordedAt, Position position, ReadingTerms terms)
    {
        var entry = posting.Entry;
        var kind = EntryKinds.Of(entry);
        var name = Definitions.NameOf(kind, EntryWriting.Write(kind, entry, terms));
        _log.Append(new(
            entry.Key, kind.Name, (entry as Undo)?.Reference ?? (entry as Amendment)?.Reference,
            name, Dates.Text(entry.Date), position.Ord, SaidLog.Text(recordedAt),
            EntryJson.Write(entry, terms with { IsTyped = false }), ""));
    }

    private long WriteHead(Posting posting, Instant recordedAt, Position position)
    {
        var entry = posting.Entry;
        return connection.ExecuteScalar<long>(
            """
            INSERT INTO entry (key, kind, date, recorded_at, summary, note, undoes, amends, ord)
            VALUES (@Key, @Kind, @Date, @RecordedAt, @Summary, @Note, @Undoes, @Amends, @Ord) RETURNING id
            """,
            new
            {
                entry.Key, entry.Kind, Date = Dates.Text(entry.Date), RecordedAt = SaidLog.Text(recordedAt),
                posting.Summary, entry.Note, Undoes = (entry as Undo)?.Number, Amends = (entry as Amendment)?.Number,
                position.Ord,
            });
    }
}
