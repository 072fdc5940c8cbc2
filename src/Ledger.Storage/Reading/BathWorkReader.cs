namespace Ledger.Storage.Reading;

/// <summary>What an entry did in baths.</summary>
/// <param name="Parts">
/// Its work on each bath that counts it, from what the bath had taken by then to what it had after.
/// </param>
/// <param name="Developing">The developer that it went through; null where it went through none.</param>
internal readonly record struct Worked(BathPart[] Parts, string? Developing)
{
    /// <summary>It went through no bath.</summary>
    public static Worked Nowhere { get; } = new([], null);
}

/// <summary>Reads the work on baths in the order in which it was done, part after part of a period.</summary>
internal sealed class BathWorkReader
{
    private readonly Snapshot _snapshot;
    private readonly Dictionary<long, Standing> _baths;

    /// <param name="snapshot">The state that is read.</param>
    /// <param name="baths">
    /// Each bath by its place, as it stood when the period began, and what a developer in it is called.
    /// </param>
    public BathWorkReader(Snapshot snapshot, IEnumerable<(long Place, BathUse Use, string? Developing)> baths)
    {
        _snapshot = snapshot;
        _baths = baths.ToDictionary(bath => bath.Place, bath => new Standing(bath.Use.Share, bath.Developing)
        {
            Taken = bath.Use.WorkedBefore,
        });
    }

    /// <summary>The work of the next part of the period, by the entry that did it.</summary>
    public Dictionary<long, Worked> Next((string From, string To) part)
    {
        var worked = new Dictionary<long, Worked>();
        foreach (var row in _snapshot.Connection.Query<WorkRow>(
            """
            SELECT w.entry_id AS Number, w.place_id AS PlaceId, w.weighted AS Weighted, w.is_first AS IsFirst
            FROM standing_entry e CROSS JOIN bath_work w ON w.entry_id = e.id
            WHERE e.date BETWEEN @From AND @To ORDER BY e.date, e.ord, w.place_id
            """,
            new { part.From, part.To }, buffered: false))
        {
            if (!_baths.TryGetValue(row.PlaceId, out var bath))
                continue;
            var so = worked.GetValueOrDefault(row.Number, Worked.Nowhere);
            worked[row.Number] = new(
                row.IsFirst == 1 ? [.. so.Parts, bath.Take(Area.FromHundredths(row.Weighted))] : so.Parts,
                so.Developing ?? bath.Developing);
        }

        return worked;
    }

    private sealed class Standing(BathShare share, string? developing)
    {
        public string? Developing => developing;

        public Area Taken { get; set; }

        public BathPart Take(Area weighted)
        {
            var before = Taken;
            Taken += weighted;
            return new(share, before, Taken);
        }
    }

    internal sealed record WorkRow(long Number, long PlaceId, long Weighted, long IsFirst);
}
