namespace Ledger.Storage.Reading;

/// <summary>
/// Reads what was learned about baths: tests, observations, top-ups, what they stood in, and the day they were filled.
/// </summary>
internal sealed class BathLogReader(Snapshot snapshot)
{
    /// <summary>The baths with all that was learned about them by the end of a day.</summary>
    public IReadOnlyList<Bath> With(IReadOnlyList<Bath> baths, LocalDate asOf)
    {
        if (baths.Count == 0)
            return baths;
        var places = Json.Array(baths.Select(bath => bath.Place.Value));
        var day = Dates.Text(asOf);
        var tests = Tests(places, day).ToLookup(row => row.PlaceId, ToTest);
        var seen =
            Observations(places, day).ToLookup(row => row.PlaceId,
                row => new Observation(Days.Read(row.Date), row.Sign, row.EndsUse == 1));
        var silver = Silver(places, day).ToLookup(row => row.PlaceId,
            row => new SilverReading(Days.Read(row.Date), row.Milligrams));
        var residual = Residual(places, day)
            .ToLookup(
                row => row.PlaceId,
                row => new ResidualTest(Days.Read(row.Date), row.Kind, row.Result, row.HasPassed == 1, row.Session));
        var strips = Strips(places, day)
            .ToLookup(row => row.PlaceId, row => new ControlStrip(Days.Read(row.Date), row.Result, row.IsWithin == 1));
        var standings =
            Standings(places, day).ToLookup(row => row.PlaceId,
                row => new Standing(Days.Read(row.Date), Container(row.Container)));
        var topUps = TopUps(places, day).ToLookup(
            row => row.PlaceId,
            row => new TopUpRecord(
                Days.Read(row.Date), Volume.FromMicrolitres(row.Added), Volume.FromMicrolitres(row.Bled),
                Area.FromHundredths(row.Worked)));
        return
        [
            .. baths.Select(bath => bath with
            {
                ClearingTests = [.. tests[bath.Place.Value]],
                Observations = [.. seen[bath.Place.Value]],
                SilverReadings = [.. silver[bath.Place.Value]],
                ResidualTests = [.. residual[bath.Place.Value]],
                ControlStrips = [.. strips[bath.Place.Value]],
                Standings = [.. standings[bath.Place.Value]],
                TopUps = [.. topUps[bath.Place.Value]],
                FilledOn = bath.WorkedWeighted >= bath.TotalCapacity ? FilledOn(bath, day) : null,
            }),
        ];
    }

    /// <summary>
    /// The fresh clearing time of a film: as measured in that bath, else the last one in a bath of the same item.
    /// </summary>
    public int? FreshClearing(string film, long bath) => snapshot.Connection.QueryFirstOrDefault<int?>(
        """
        SELECT t.tenths FROM clearing_test t CROSS JOIN standing_entry e ON e.id = t.entry_id
            JOIN bath b ON b.place_id = t.place_id
        JOIN item f ON f.id = t.item_id
        WHERE t.is_fresh = 1 AND f.code = @film AND b.item_id = (SELECT item_id FROM bath WHERE place_id = @bath)
        ORDER BY t.place_id = @bath DESC, e.date DESC, e.ord DESC LIMIT 1
        """,
        new { film, bath });

    private IEnumerable<TestRow> Tests(string places, string day) => snapshot.Connection.Query<TestRow>(
        """
        SELECT t.place_id AS PlaceId, e.date AS Date, f.code AS Film, t.tenths AS Tenths, t.is_fresh AS IsFresh,
            coalesce((SELECT sum(w.weighted) FROM bath_work w CROSS JOIN standing_entry we ON we.id = w.entry_id
                WHERE w.place_id = t.place_id AND w.is_first = 1 AND (we.date, we.id) < (e.date, e.ord)), 0) AS Worked,
            iif(t.is_fresh = 1, t.tenths,
                (SELECT tenths FROM (
                    SELECT n.tenths, n.place_id = t.place_id AS is_own, ne.date, ne.ord
                    FROM clearing_test n CROSS JOIN standing_entry ne ON ne.id = n.entry_id
                        JOIN bath nb ON nb.place_id = n.place_id
                    WHERE n.is_fresh = 1 AND n.item_id = t.item_id AND nb.item_id = b.item_id AND ne.date <= @day)
                ORDER BY is_own DESC, date DESC, ord DESC LIMIT 1)) AS Fresh
        FROM json_each(@places) j JOIN clearing_test t ON t.place_id = j.value
            CROSS JOIN standing_entry e ON e.id = t.entry_id
        JOIN item f ON f.id = t.item_id JOIN bath b ON b.place_id = t.place_id
        WHERE e.date <= @day ORDER BY e.date, e.ord
        """,
        new { places, day });

    private IEnumerable<SignRow> Observations(string places, string day) => snapshot.Connection.Query<SignRow>(
        """
        SELECT o.place_id AS PlaceId, e.date AS Date, o.sign AS Sign, o.ends_use AS EndsUse
        FROM json_each(@places) j JOIN bath_observation o ON o.place_id = j.value
            CROSS JOIN standing_entry e ON e.id = o.entry_id
        WHERE e.date <= @day ORDER BY e.date, e.ord
        """,
        new { places, day });

    private IEnumerable<SilverRow> Silver(string places, string day) => snapshot.Connection.Query<SilverRow>(
        """
        SELECT s.place_id AS PlaceId, e.date AS Date, s.milligrams_per_litre AS Milligrams
        FROM json_each(@places) j JOIN silver_test s ON s.place_id = j.value
            CROSS JOIN standing_entry e ON e.id = s.entry_id
        WHERE e.date <= @day ORDER BY e.date, e.ord
        """,
        new { places, day });

    private IEnumerable<ResidualRow> Residual(string places, string day) => snapshot.Connection.Query<ResidualRow>(
        """
        SELECT r.place_id AS PlaceId, e.date AS Date, r.kind AS Kind, r.result AS Result, r.has_passed AS HasPassed,
            r.session AS Session
        FROM json_each(@places) j JOIN residual_test r ON r.place_id = j.value
            CROSS JOIN standing_entry e ON e.id = r.entry_id
        WHERE e.date <= @day ORDER BY e.date, e.ord
        """,
        new { places, day });

    private IEnumerable<StripRow> Strips(string places, string day) => snapshot.Connection.Query<StripRow>(
        """
        SELECT s.place_id AS PlaceId, e.date AS Date, s.result AS Result, s.is_within AS IsWithin
        FROM json_each(@places) j JOIN control_strip s ON s.place_id = j.value
            CROSS JOIN standing_entry e ON e.id = s.entry_id
        WHERE e.date <= @day ORDER BY e.date, e.ord
        """,
        new { places, day });

    private IEnumerable<StandingRow> Standings(string places, string day) => snapshot.Connection.Query<StandingRow>(
        """
        SELECT s.place_id AS PlaceId, e.date AS Date, s.container AS Container
        FROM json_each(@places) j JOIN bath_standing s ON s.place_id = j.value
            CROSS JOIN standing_entry e ON e.id = s.entry_id
        WHERE e.date <= @day ORDER BY e.date, e.ord
        """,
        new { places, day });

    private IEnumerable<TopUpRow> TopUps(string places, string day) => snapshot.Connection.Query<TopUpRow>(
        """
        SELECT t.place_id AS PlaceId, e.date AS Date, t.added AS Added, t.bled AS Bled,
            coalesce((SELECT sum(w.weighted) FROM bath_work w CROSS JOIN standing_entry we ON we.id = w.entry_id
                WHERE w.place_id = t.place_id AND w.is_first = 1 AND (we.date, we.id) < (e.date, e.ord)), 0) AS Worked
        FROM json_each(@places) j JOIN bath_top_up t ON t.place_id = j.value
            CROSS JOIN standing_entry e ON e.id = t.entry_id
        WHERE e.date <= @day ORDER BY e.date, e.ord
        """,
        new { places, day });

    /// <summary>The day on which its capacity was reached; no further than that is read.</summary>
    private LocalDate? FilledOn(Bath bath, string day)
    {
        var worked = Area.Zero;
        foreach (var row in snapshot.Connection.Query<FillingRow>(
            """
            SELECT e.date AS Date, w.weighted AS Weighted
            FROM standing_entry e CROSS JOIN bath_work w
                ON w.entry_id = e.id AND w.place_id = @Place AND w.is_first = 1
            WHERE e.date BETWEEN @from AND @day ORDER BY e.date, e.ord
            """,
            new { Place = bath.Place.Value, from = Dates.Text(bath.MixedOn), day }, buffered: false))
        {
            worked += Area.FromHundredths(row.Weighted);
            if (worked >= bath.TotalCapacity)
                return Days.Read(row.Date);
        }

        return null;
    }

    private static ClearingTime ToTest(TestRow row) => new(
        Days.Read(row.Date), row.Film, row.Tenths, row.IsFresh == 1, Area.FromHundredths(row.Worked), row.Fresh);

    private static WorkingContainer Container(string name) =>
        (WorkingContainer)WorkingContainers.Names.ToList().IndexOf(name);

    internal sealed record TestRow(long PlaceId, string Date, string Film, int Tenths, long IsFresh,
        long Worked, int? Fresh);

    internal sealed record FillingRow(string Date, long Weighted);

    internal sealed record SignRow(long PlaceId, string Date, string Sign, long EndsUse);

    internal sealed record SilverRow(long PlaceId, string Date, int Milligrams);

    internal sealed record ResidualRow(long PlaceId, string Date, string Kind, string Result,
        long HasPassed, string? Session);

    internal sealed record StripRow(long PlaceId, string Date, string Result, long IsWithin);

    internal sealed record StandingRow(long PlaceId, string Date, string Container);

    internal sealed record TopUpRow(long PlaceId, string Date, long Added, long Bled, long Worked);
}
