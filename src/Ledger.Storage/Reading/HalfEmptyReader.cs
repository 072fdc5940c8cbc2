namespace Ledger.Storage.Reading;

/// <summary>
/// Finds, from the journal, the day on which a container fell below half; only for those whose life depends on it.
/// </summary>
internal sealed class HalfEmptyReader(Snapshot snapshot)
{
    public void ReadInto(Holdings holdings)
    {
        var below = holdings.Containers
            .Where(container =>
                (container.FormulaLimits ?? holdings.ItemOf(container.Lot.Item).Keeping).OpenedPartDays is not null
                    && IsBelowHalf(container.Held.Base, container))
            .ToList();
        if (below.Count == 0)
            return;
        var changes = snapshot.Connection.Query<ChangeRow>(
            """
            SELECT place AS PlaceId, date AS Date, sum(change) AS Change
            FROM (
                SELECT m.to_place AS place, e.date, m.quantity AS change, e.id
                FROM json_each(@places) j JOIN movement m ON m.to_place = j.value JOIN entry e ON e.id = m.entry_id
                    WHERE m.to_place >= 100
                UNION ALL
                SELECT m.from_place, e.date, -m.quantity, e.id
                FROM json_each(@places) j JOIN movement m ON m.from_place = j.value JOIN entry e ON e.id = m.entry_id
                    WHERE m.from_place >= 100)
            WHERE date <= @asOf GROUP BY place, date ORDER BY place, date
            """,
            new { places = Json.Array(below.Select(container => container.Place.Value)),
                asOf = Dates.Text(holdings.AsOf) })
            .ToLookup(row => row.PlaceId);
        foreach (var container in below)
            holdings.Put(container with { HalfEmptyOn = FellBelowHalf(container, changes[container.Place.Value]) });
    }

    /// <summary>The day of the last fall below half: a refill above half would have ended an earlier one.</summary>
    private static LocalDate? FellBelowHalf(Container container, IEnumerable<ChangeRow> changes)
    {
        LocalDate? since = null;
        var held = 0L;
        foreach (var change in changes)
        {
            held += change.Change;
            if (!IsBelowHalf(held, container))
                since = null;
            else
                since ??= Days.Read(change.Date);
        }

        return since;
    }

    private static bool IsBelowHalf(long held, Container container) => held < container.Size.Base - held;

    internal sealed record ChangeRow(long PlaceId, string Date, long Change);
}
