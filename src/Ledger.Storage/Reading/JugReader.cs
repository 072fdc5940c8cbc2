namespace Ledger.Storage.Reading;

/// <summary>Reads waste jugs with what is in them.</summary>
internal sealed class JugReader(Snapshot snapshot)
{
    /// <summary>
    /// Every jug started by the end of the day, those that were handed over too, in the order of their start.
    /// </summary>
    public IReadOnlyList<WasteJug> All(LocalDate asOf)
    {
        var day = Dates.Text(asOf);
        var fills = snapshot.Connection.Query<FillRow>(
            """
            SELECT f.place_id AS PlaceId, e.date AS Date, f.volume AS Volume, f.what AS What, f.material AS Material
            FROM jug_fill f CROSS JOIN standing_entry e ON e.id = f.entry_id WHERE e.date <= @day ORDER BY e.date, e.ord
            """,
            new { day })
            .ToLookup(row => row.PlaceId, row => new JugFill(
                Days.Read(row.Date), Volume.FromMicrolitres(row.Volume), row.What,
                row.Material is null ? null : Named.Material(row.Material)));
        return
        [
            .. snapshot.Connection.Query<JugRow>(
                """
                SELECT j.place_id AS PlaceId, p.code AS Code, j.contents AS Contents, j.size AS Size,
                    e.date AS StartedOn,
                    o.date AS HandedOverOn, o.destination AS HandedTo
                FROM jug j CROSS JOIN place p ON p.id = j.place_id CROSS JOIN standing_entry e ON e.id = j.entry_id
                LEFT JOIN (SELECT h.place_id, h."to" AS destination, oe.date
                    FROM jug_handover h CROSS JOIN standing_entry oe ON oe.id = h.entry_id
                    WHERE oe.date <= @day) o ON o.place_id = j.place_id
                WHERE e.date <= @day ORDER BY e.date, j.place_id
                """,
                new { day })
            .Select(row => new WasteJug(
                new(row.PlaceId), row.Code, row.Contents, Volume.FromMicrolitres(row.Size), Days.Read(row.StartedOn))
            {
                Fills = [.. fills[row.PlaceId]],
                HandedOverOn = Days.ReadOptional(row.HandedOverOn),
                HandedTo = row.HandedTo ?? "",
            }),
        ];
    }

    internal sealed record FillRow(long PlaceId, string Date, long Volume, string What, string? Material);

    internal sealed record JugRow(
        long PlaceId, string Code, string Contents, long Size, string StartedOn, string? HandedOverOn,
        string? HandedTo);
}
