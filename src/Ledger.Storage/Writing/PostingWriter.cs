using Dapper;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Microsoft.Data.Sqlite;
using NodaTime;
using NodaTime.Text;

namespace Ledger.Storage.Writing;

/// <summary>Writes a posting: its entry, what it establishes, and its movements, in that order.</summary>
internal sealed class PostingWriter(SqliteConnection connection)
{
    private static readonly InstantPattern Stamp = InstantPattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:ss.fff'Z'");

    /// <summary>Writes the posting and returns the entry's number.</summary>
    public long Write(Posting posting, Instant recordedAt)
    {
        var entry = posting.Entry;
        var number = connection.ExecuteScalar<long>(
            """
            INSERT INTO entry (key, kind, date, recorded_at, summary, note, undoes)
            VALUES (@Key, @Kind, @Date, @RecordedAt, @Summary, @Note, @Undoes) RETURNING id
            """,
            new
            {
                entry.Key, entry.Kind, Date = Dates.Text(entry.Date), RecordedAt = Stamp.Format(recordedAt), posting.Summary, entry.Note,
                Undoes = (entry as Core.Journal.Entries.Undo)?.Number,
            });
        var facts = new FactWriter(connection, number);
        foreach (var fact in posting.Facts)
            facts.Write(fact);
        foreach (var movement in posting.Movements)
            Write(movement, number);
        return number;
    }

    private void Write(Movement movement, long entry) => connection.Execute(
        """
        INSERT INTO movement (entry_id, lot_id, from_place, to_place, quantity, value)
        VALUES (@Entry, @Lot, @From, @To, @Quantity, @Value)
        """,
        new
        {
            Entry = entry, Lot = movement.Lot.Value, From = movement.From.Value, To = movement.To.Value, movement.Quantity,
            Value = movement.Value.Millionths,
        });
}
