using Ledger.Storage.Files;

namespace Ledger.Storage.Reading;

/// <summary>Reads where an item is, and what nobody has touched for long.</summary>
internal sealed class PlaceReader(Snapshot snapshot)
{
    /// <summary>What went into a waste jug is shown there, and not as used up or discarded.</summary>
    public IReadOnlyList<PlaceHeld> PlacesOf(string item, LocalDate asOf)
    {
        var inJugs = InJugs(item, asOf);
        return
        [
            .. Places(item, asOf).Select(place => Less(place, inJugs)).Where(place => !place.Held.IsZero),
            .. inJugs.GroupBy(row => row.Jug).Select(jug => new PlaceHeld(
                jug.Key, jug.First().IsHandedOver == 1 ? "jug handed over" : "jug",
                new(jug.Sum(row => row.Quantity), Units.Named(jug.First().Unit)!.Value),
                new(jug.Sum(row => row.Value)))),
        ];
    }

    private static PlaceHeld Less(PlaceHeld place, IReadOnlyList<JugRow> inJugs)
    {
        var gone = inJugs.Where(row => row.Kind == place.Kind).ToList();
        return place with
        {
            Held = place.Held with { Base = place.Held.Base - gone.Sum(row => row.Quantity) },
            Value = place.Value - new Money(gone.Sum(row => row.Value)),
        };
    }

    /// <summary>What entries that filled a jug took out of baths and bottles.</summary>
    private List<JugRow> InJugs(string item, LocalDate asOf) =>
    [
        .. snapshot.Connection.Query<JugRow>(
            $"""
            SELECT j.code AS Jug, p.kind AS Kind, i.unit AS Unit, sum(m.quantity) AS Quantity, sum(m.value) AS Value,
                EXISTS (SELECT 1 FROM jug_handover h CROSS JOIN standing_entry he ON he.id = h.entry_id
                    WHERE h.place_id = f.place_id AND he.date <= @asOf) AS IsHandedOver
            FROM item i CROSS JOIN lot l ON l.item_id = i.id CROSS JOIN movement m ON m.lot_id = l.id
                AND m.to_place IN ({InSql.UsedUp}, {InSql.Discarded})
                CROSS JOIN jug_fill f ON f.entry_id = m.entry_id CROSS JOIN standing_entry e ON e.id = m.entry_id
                CROSS JOIN place j ON j.id = f.place_id CROSS JOIN place p ON p.id = m.to_place
            WHERE i.code = @item AND e.date <= @asOf GROUP BY f.place_id, m.to_place ORDER BY f.place_id
            """,
            new { item, asOf = Dates.Text(asOf) }),
    ];

    private IReadOnlyList<PlaceHeld> Places(string item, LocalDate asOf) =>
    [
        .. snapshot.Connection.Query<PlaceRow>(
            """
            SELECT p.code AS Code, p.kind AS Kind, i.unit AS Unit, sum(t.quantity) AS Quantity, sum(t.value) AS Value
            FROM (
                SELECT b.place_id, b.lot_id, b.quantity, b.value
                FROM item i JOIN lot l ON l.item_id = i.id JOIN balance b ON b.lot_id = l.id WHERE i.code = @item
                UNION ALL
                SELECT m.from_place, m.lot_id, m.quantity, m.value
                FROM item i JOIN lot l ON l.item_id = i.id JOIN movement m ON m.lot_id = l.id
                    JOIN entry e ON e.id = m.entry_id
                WHERE i.code = @item AND e.date > @asOf
                UNION ALL
                SELECT m.to_place, m.lot_id, -m.quantity, -m.value
                FROM item i JOIN lot l ON l.item_id = i.id JOIN movement m ON m.lot_id = l.id
                    JOIN entry e ON e.id = m.entry_id
                WHERE i.code = @item AND e.date > @asOf) t
            JOIN place p ON p.id = t.place_id JOIN lot l ON l.id = t.lot_id JOIN item i ON i.id = l.item_id
            GROUP BY p.id HAVING sum(t.quantity) <> 0 ORDER BY p.id < 100, p.kind, p.id
            """,
            new { item, asOf = Dates.Text(asOf) })
        .Select(row => new PlaceHeld(row.Code, row.Kind, new(row.Quantity, Units.Named(row.Unit)!.Value),
            new(row.Value))),
    ];

    public IReadOnlyList<Untouched> UntouchedSince(LocalDate day, Holdings holdings)
    {
        var touched = snapshot.Connection.Query<TouchRow>(
            """
            SELECT held.value AS PlaceId, max(
                coalesce((SELECT max(e.date) FROM movement m JOIN entry e ON e.id = m.entry_id
                    WHERE m.to_place = held.value AND m.to_place >= 100 AND e.date <= @asOf), ''),
                coalesce((SELECT max(e.date) FROM movement m JOIN entry e ON e.id = m.entry_id
                    WHERE m.from_place = held.value AND m.from_place >= 100 AND e.date <= @asOf), ''),
                coalesce((SELECT max(e.date) FROM opening o JOIN standing_entry e ON e.id = o.entry_id
                    WHERE o.place_id = held.value AND e.date <= @asOf), '')) AS Date
            FROM json_each(@places) held
            """,
            new { places = Json.Array(holdings.Containers.Select(container => container.Place.Value)),
                asOf = Dates.Text(holdings.AsOf) });
        return
        [
            .. touched.Select(row => new Untouched(holdings.Container(new PlaceId(row.PlaceId))!, Days.Read(row.Date)))
                .Where(container => container.LastTouched < day)
                .OrderBy(container => container.LastTouched)
                .ThenBy(container => container.Container.Code, StringComparer.OrdinalIgnoreCase),
        ];
    }

    internal sealed record PlaceRow(string Code, string Kind, string Unit, long Quantity, long Value);

    internal sealed record JugRow(string Jug, string Kind, string Unit, long Quantity, long Value, long IsHandedOver);

    internal sealed record TouchRow(long PlaceId, string Date);
}
