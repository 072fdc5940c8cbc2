namespace Ledger.Storage.Reading;

/// <summary>
/// Reads the plans that are open at the end of a day: the last one made under each name, unless it was ended.
/// </summary>
internal sealed class PlanReader(Snapshot snapshot)
{
    public void ReadInto(Holdings holdings)
    {
        var rows = snapshot.Connection.Query<PlanRow>(
            """
            SELECT p.entry_id AS Entry, p.name AS Name, p.date AS "On", p.is_trip AS IsTrip, p.process AS Process,
                p.times AS Times, p.bath AS Bath,
                e.date AS MadeOn, e.note AS Note
            FROM plan p CROSS JOIN standing_entry e ON e.id = p.entry_id
            WHERE e.date <= @asOf
                AND p.entry_id = (SELECT max(o.entry_id) FROM plan o CROSS JOIN standing_entry oe ON oe.id = o.entry_id
                    WHERE o.name = p.name AND oe.date <= @asOf)
                AND NOT EXISTS (SELECT 1 FROM plan_end d CROSS JOIN standing_entry de ON de.id = d.entry_id
                    WHERE d.plan_id = p.entry_id AND de.date <= @asOf)
            """,
            new { asOf = Dates.Text(holdings.AsOf) }).ToList();
        var sheets = snapshot.Connection.Query<SheetsRow>(
            """
            SELECT s.entry_id AS Entry, i.code AS Film, s.sheets AS Sheets, s."group" AS "Group", s.subject AS Subject,
                s.holder AS Holder, s."from" AS "From",
                s.batch AS Batch
            FROM json_each(@plans) j JOIN plan_sheets s ON s.entry_id = j.value JOIN item i ON i.id = s.item_id
                ORDER BY s.entry_id, s.number
            """,
            new { plans = Json.Array(rows.Select(row => row.Entry)) }).ToLookup(row => row.Entry);
        foreach (var row in rows)
            holdings.Put(ToPlan(row, sheets[row.Entry]));
    }

    private static OpenPlan ToPlan(PlanRow row, IEnumerable<SheetsRow> sheets) => new(
        row.Name, Days.Read(row.On), row.IsTrip == 1,
        new()
        {
            Process = row.Process,
            Times = GroupTimes.Read(row.Times) ?? GroupTimes.None,
            Bath = row.Bath,
            Sheets = [.. sheets.Select(line => new RequestedSheets
            {
                Film = line.Film, Count = line.Sheets, Group = line.Group, Subject = line.Subject, Holder = line.Holder,
                From = line.From, Batch = line.Batch,
            })],
        },
        Days.Read(row.MadeOn), row.Note);

    internal sealed record PlanRow(
        long Entry, string Name, string On, long IsTrip, string Process, string Times, string? Bath,
        string MadeOn, string Note);

    internal sealed record SheetsRow(long Entry, string Film, int Sheets, string Group, string Subject,
        string Holder, string? From, int? Batch);
}
