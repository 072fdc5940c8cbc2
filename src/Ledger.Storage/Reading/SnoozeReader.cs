namespace Ledger.Storage.Reading;

/// <summary>Reads which notices are to be quiet, in the order in which it was said: the last word holds.</summary>
internal sealed class SnoozeReader(Snapshot snapshot)
{
    public void ReadInto(Holdings holdings)
    {
        foreach (var row in snapshot.Connection.Query<SnoozeRow>(
            """
            SELECT s.notice AS Notice, s.about AS About, s.until AS Until, s.reason AS Reason
            FROM snooze s CROSS JOIN standing_entry e ON e.id = s.entry_id WHERE e.date <= @asOf ORDER BY e.date, e.ord
            """,
            new { asOf = Dates.Text(holdings.AsOf) }))
            holdings.Put(new Snooze(Named.Notice(row.Notice), row.About, Days.Read(row.Until), row.Reason));
    }

    internal sealed record SnoozeRow(string Notice, string About, string Until, string Reason);
}
