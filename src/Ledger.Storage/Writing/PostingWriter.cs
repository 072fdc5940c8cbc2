namespace Ledger.Storage.Writing;

/// <summary>Writes what a posting establishes, and its movements, in that order.</summary>
internal sealed class PostingWriter(SqliteConnection connection)
{
    /// <summary>Writes the facts and movements of an entry.</summary>
    public void WriteFacts(Posting posting, long number)
    {
        var facts = new FactWriter(connection, number);
        foreach (var fact in posting.Facts)
            facts.Write(fact);
        foreach (var movement in posting.Movements)
            Write(movement, number);
        if (posting.Movements.Count > 0)
            new UseByDay(connection).Add(number);
    }

    private void Write(Movement movement, long entry) => connection.Execute(
        """
        INSERT INTO movement (entry_id, lot_id, from_place, to_place, quantity, value)
        VALUES (@Entry, @Lot, @From, @To, @Quantity, @Value)
        """,
        new
        {
            Entry = entry, Lot = movement.Lot.Value, From = movement.From.Value, To = movement.To.Value,
            movement.Quantity, Value = movement.Value.Millionths,
        });
}
