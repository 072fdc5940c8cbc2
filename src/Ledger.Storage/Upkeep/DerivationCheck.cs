using Ledger.Storage.Deriving;
using Ledger.Storage.Files;
using Ledger.Storage.Reading;
using Standing = Ledger.Storage.Deriving.Standing;

namespace Ledger.Storage.Upkeep;

/// <summary>
/// Proves that what was said was not altered, and that all the rest follows from it: it is derived once more in memory,
/// and every row compared.
/// </summary>
internal static class DerivationCheck
{
    private const int Constraint = 19;

    /// <summary>What was said, row by row, by its digests.</summary>
    public static IEnumerable<Problem> Digests(SqliteConnection connection)
    {
        var before = "";
        foreach (var said in new SaidLog(connection).All())
        {
            var digest = SaidLog.DigestOf(said, before);
            if (digest != said.Digest)
                yield return new(
                    $"what was said under {said.Key} on {said.RecordedAt} ({said.Kind}), or its digest, was altered, "
                    + "or something said before it was taken out");
            before = said.Digest;
        }

        foreach (var (key, name) in new SaidLog(connection).AlteredNames())
            yield return new(
                $"the name {name.Number} of {name.Series} was given by what was said under {key}, and was altered "
                    + "since");
    }

    /// <summary>What the heads in the journal say of what was said.</summary>
    public static IEnumerable<Problem> Heads(SqliteConnection connection) => connection.Texts(
        """
        SELECT format('entry %d of the journal is not as it was said under %s: '
            || 'its kind, time, or what it takes back or amends', e.id, s.key)
        FROM said s JOIN entry e ON e.key = s.key
        WHERE replace(e.kind, ' ', '-') <> s.kind OR e.recorded_at <> s.recorded_at
            OR (e.ord <> s.ord AND NOT EXISTS (SELECT 1 FROM said a WHERE a.about = s.key AND a.kind = 'amendment'))
            OR coalesce((SELECT t.key FROM entry t WHERE t.id = coalesce(e.undoes, e.amends)), '') <> coalesce(s.about,
            '')
            OR (e.undoes IS NOT NULL AND e.kind <> 'undo') OR (e.amends IS NOT NULL AND e.kind <> 'amendment')
        UNION ALL
        SELECT format('what was said under %s has no entry in the journal', s.key) FROM said s
        WHERE NOT EXISTS (SELECT 1 FROM entry e WHERE e.key = s.key) AND s.key NOT GLOB 'kept:*'
        """).Select(sentence => new Problem(sentence));

    /// <summary>What the journal says of undos and amendments.</summary>
    public static IEnumerable<Problem> Acts(Snapshot snapshot)
    {
        var past = new JournalReader(snapshot);
        var log = new SaidLog(snapshot.Connection);
        foreach (var said in log.All().Where(said => said.About is not null && log.Find(said.About) is not null))
            if (past.Find(said.Key) is { } entry && past.Find(said.About!) is { } target
                && Standing.ActOf(said) is var act
                && entry.Note != act.Note)
                yield return new($"entry {entry.Number} of the journal does not say what was said under {said.Key}");
    }

    /// <summary>What does not follow from what was said.</summary>
    public static IEnumerable<Problem> Rows(Snapshot snapshot, LocalDate today)
    {
        using var memory = FileOpener.Connect(":memory:");
        snapshot.Connection.BackupDatabase(memory);
        Problem? stopped = null;
        try
        {
            memory.Run("BEGIN");
            using var inside = new Snapshot(memory);
            new Derivation(memory, inside, today).All();
            Words.Write(memory, inside);
        }
        catch (NoLongerHoldsException refused)
        {
            stopped = new(refused.Message);
        }
        catch (FormatException unreadable)
        {
            stopped = new(unreadable.Message);
        }

        catch (SqliteException trouble) when (trouble.SqliteErrorCode == Constraint)
        {
            stopped = new($"what follows from what was said does not go with what is kept: {trouble.Message}");
        }

        if (stopped is not null)
            return [stopped];
        return
        [
            .. OtherWords(snapshot.Connection, memory),
            .. new Comparison(memory).Differences(snapshot.Connection, memory).Select(difference => new Problem(
                $"the table {difference.Table} holds {difference.Kept ?? "nothing more"}, "
                + $"and from what was said follows {difference.Derived ?? "nothing more"}",
                IsMendable: true)),
        ];
    }

    /// <summary>
    /// The line in which the journal shows an entry is how this version tells what was said: it is no part of what must
    /// follow. An earlier version may have told it otherwise, and nothing is wrong then.
    /// </summary>
    private static IEnumerable<Problem> OtherWords(SqliteConnection kept, SqliteConnection derived)
    {
        var told = Summaries(kept).ToDictionary(entry => entry.Id, entry => entry.Summary);
        var others = Summaries(derived)
            .Where(entry => told.TryGetValue(entry.Id, out var words) && words != entry.Summary).ToList();
        if (others is [var first, ..])
            yield return new(
                $"the journal tells {Counted.Of(others.Count, "entry")} in other words than this version would, entry "
                    + $"{first.Id} as \"{told[first.Id]}\" and not as \"{first.Summary}\"; `trayledger check --mend` "
                    + "writes them so",
                IsMendable: false, IsOfWords: true);
    }

    private static IEnumerable<SummaryRow> Summaries(SqliteConnection connection) =>
        connection.Query<SummaryRow>("SELECT id AS Id, summary AS Summary FROM entry ORDER BY id");

    internal sealed record SummaryRow(long Id, string Summary);
}
