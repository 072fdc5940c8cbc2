namespace Ledger.Storage.Reading;

/// <summary>Reads what is under suspicion at the end of a day: the last that was said of each lot and place by
/// then.</summary>
internal sealed class SuspicionReader(Snapshot snapshot)
{
    /// <summary>Puts it into holdings that know their containers and baths already.</summary>
    public void ReadInto(Holdings holdings)
    {
        foreach (var row in snapshot.Connection.Query<SuspicionRow>(
            """
            SELECT Lot, Place, Date, Reason FROM (
                SELECT s.lot_id AS Lot, s.place_id AS Place, e.date AS Date, s.reason AS Reason, s.raised AS Raised,
                    row_number() OVER (PARTITION BY s.lot_id, s.place_id ORDER BY e.date DESC, e.ord DESC) AS Rank
                FROM suspicion s CROSS JOIN standing_entry e ON e.id = s.entry_id WHERE e.date <= @day)
            WHERE Rank = 1 AND Raised = 1
            """,
            new { day = Dates.Text(holdings.AsOf) }))
        {
            var suspicion = new Suspicion(Days.Read(row.Date), row.Reason);
            if (row.Lot is { } lot)
                holdings.Suspect(new LotId(lot), suspicion);
            else
                holdings.Suspect(new PlaceId(row.Place!.Value), suspicion);
        }
    }

    /// <summary>Why a place was under suspicion at the end of a day; null for nothing.</summary>
    public Suspicion? Of(long place, string day)
    {
        var row = snapshot.Connection.QueryFirstOrDefault<LastRow>(
            """
            SELECT e.date AS Date, s.reason AS Reason, s.raised AS Raised FROM suspicion s
                CROSS JOIN standing_entry e ON e.id = s.entry_id
            WHERE s.place_id = @place AND e.date <= @day ORDER BY e.date DESC, e.ord DESC LIMIT 1
            """,
            new { place, day });
        return row is { Raised: 1 } ? new(Days.Read(row.Date), row.Reason) : null;
    }

    internal sealed record SuspicionRow(long? Lot, long? Place, string Date, string Reason);

    internal sealed record LastRow(string Date, string Reason, long Raised);
}
