using Ledger.Storage.Files;
using Ledger.Storage.Reading;

namespace Ledger.Storage.Deriving;

/// <summary>
/// Makes of a copy of a ledger what the ledger knew at the end of a day: what was recorded later is taken out, and the
/// rest derived from what is left. The copy is in memory; the ledger itself is not touched.
/// </summary>
/// <param name="copy">The copy.</param>
/// <param name="day">The day, as the last one that the copy knows of.</param>
internal sealed class KnownThen(SqliteConnection copy, LocalDate day)
{
    /// <summary>Takes out all that was recorded at a moment or later.</summary>
    /// <exception cref="LedgerFileException">An earlier version of the program recorded some of it and did not keep its
    /// words.</exception>
    public void Forget(Instant from)
    {
        var stamp = SaidLog.Text(from);
        if (LastUnsaid(stamp) is { } last)
            throw new LedgerFileException(
                $"an earlier version of the program recorded entries up to {last} and kept no words of them, so what "
                    + "was known before that day "
                + $"cannot be told; accepted is {last} or a later day");
        copy.Run("BEGIN; PRAGMA defer_foreign_keys = ON");
        using (var inside = new Snapshot(copy))
        {
            var later = Later(stamp);
            // All goes at once: in between a box could hold less than nothing.
            new Wipe(copy).Of(copy.Query<long>("SELECT e.id FROM entry e JOIN said s ON s.key = e.key").ToList());
            foreach (var undo in later.Where(one => one.Kind == "undo" && one.Number is not null))
                EntryWriter.CountAgain(copy, undo.Number!.Value);
            TakeOut(later);
            var derivation = new Derivation(copy, inside, day);
            derivation.CountActs();
            var redefined = later.Where(one => one.Name is not null).Select(one => (one.Kind, one.Name!))
                .Union(derivation.Definitions.Things()).ToList();
            derivation.From(Position.Start, [], [], redefined, before: null);
        }

        copy.Run("COMMIT");
    }

    private List<LaterRow> Later(string stamp) => copy.Query<LaterRow>(
        """
        SELECT s.key AS Key, s.kind AS Kind, s.name AS Name, e.id AS Number FROM said s
            LEFT JOIN entry e ON e.key = s.key
        WHERE s.recorded_at >= @stamp AND s.key NOT GLOB 'kept:*'
        """,
        new { stamp }).ToList();

    private void TakeOut(List<LaterRow> later)
    {
        foreach (var one in later)
        {
            copy.Execute("DELETE FROM said_name WHERE key = @Key", new { one.Key });
            copy.Execute("DELETE FROM said WHERE key = @Key", new { one.Key });
            copy.Execute("DELETE FROM entry WHERE key = @Key", new { one.Key });
        }
    }

    /// <summary>The day on which an earlier version recorded last, when that is at a moment or later.</summary>
    private string? LastUnsaid(string stamp) => copy.QueryFirstOrDefault<string?>(
        """
        SELECT max(e.recorded_at) FROM entry e WHERE e.recorded_at >= @stamp AND NOT EXISTS (SELECT 1 FROM said s
            WHERE s.key = e.key)
        """,
        new { stamp }) is { Length: > 9 } last ? last[..10] : null;

    internal sealed record LaterRow(string Key, string Kind, string? Name, long? Number);
}
