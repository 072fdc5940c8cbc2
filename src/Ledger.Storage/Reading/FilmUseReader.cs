using Dapper;
using Ledger.Core.Costing;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Storage.Reading;

/// <summary>Reads the film that the sessions of a period developed, with what became of it by the end of the period.</summary>
internal sealed class FilmUseReader(Snapshot snapshot)
{
    /// <summary>The sheets of each session, by the number of its entry.</summary>
    public ILookup<long, FilmUse> Read((string From, string To) period)
    {
        var keepers = Keepers(period);
        return snapshot.Connection.Query<LineRow>(
            """
            SELECT s.entry_id AS Number, i.code AS Item, s.lot_id AS Lot, s.sheets AS Sheets, s.area AS Area, s.cost AS Cost, s.fate AS Fate,
                i.fixer_factor AS Factor, l.is_priced AS IsPriced,
                sum(s.sheets) OVER (PARTITION BY s.entry_id ORDER BY s.number) AS Last
            FROM standing_entry e CROSS JOIN session_sheets s ON s.entry_id = e.id CROSS JOIN lot l ON l.id = s.lot_id
                CROSS JOIN item i ON i.id = l.item_id
            WHERE e.date BETWEEN @From AND @To ORDER BY s.entry_id, s.number
            """,
            new { period.From, period.To })
            .SelectMany(row => FilmOf(row, keepers), (row, film) => (row.Number, Film: film))
            .ToLookup(line => line.Number, line => line.Film);
    }

    /// <summary>What the sheets of each session are called, by the number of its entry.</summary>
    public ILookup<long, (long Position, SheetName Name)> Names((string From, string To) period) => snapshot.Connection.Query<NameRow>(
        """
        SELECT f.entry_id AS Session, f.position AS Position, f.sheet_id AS Sheet, f.negative AS Negative
        FROM standing_entry e CROSS JOIN sheet_fate f ON f.entry_id = e.id WHERE e.date BETWEEN @From AND @To
        """,
        new { period.From, period.To }).ToLookup(row => row.Session, row => (row.Position, new SheetName(new(row.Sheet), row.Negative)));

    /// <summary>A line, or its sheets one by one when some of them were named keepers later.</summary>
    private static IEnumerable<FilmUse> FilmOf(LineRow row, HashSet<(long Session, long Position)> keepers)
    {
        var fate = Named.Fate(row.Fate);
        var first = row.Last - row.Sheets + 1;
        if (keepers.Count == 0 || !Enumerable.Range(0, (int)row.Sheets).Any(i => keepers.Contains((row.Number, first + i))))
            return [new FilmUse(row.Item, row.Sheets, Area.FromHundredths(row.Area), new(row.Cost), fate)
                { Lot = new(row.Lot), FixerFactorThousandths = row.Factor, IsPriced = row.IsPriced == 1 }];
        return Share.Split(row.Cost, new long[row.Sheets]).Select((cost, i) => new FilmUse(
            row.Item, 1, Area.FromHundredths(row.Area / row.Sheets), new(cost),
            keepers.Contains((row.Number, first + i)) ? Fate.Keeper : fate)
        {
            Lot = new(row.Lot), FixerFactorThousandths = row.Factor, IsPriced = row.IsPriced == 1,
        });
    }

    /// <summary>The sheets, by their position in a session, that were named keepers by the end of the period.</summary>
    private HashSet<(long Session, long Position)> Keepers((string From, string To) period) => snapshot.Connection.Query<KeeperRow>(
        """
        SELECT f.entry_id AS Session, f.position AS Position
        FROM standing_entry e CROSS JOIN sheet_fate f ON f.entry_id = e.id CROSS JOIN keeper k ON k.sheet_id = f.sheet_id
        CROSS JOIN standing_entry named ON named.id = k.entry_id
        WHERE named.date <= @To AND e.date BETWEEN @From AND @To
        """,
        new { period.From, period.To }).Select(row => (row.Session, row.Position)).ToHashSet();

    internal sealed record LineRow(long Number, string Item, long Lot, long Sheets, long Area, long Cost, string Fate, int Factor, long IsPriced,
        long Last);

    internal sealed record NameRow(long Session, long Position, long Sheet, string? Negative);

    internal sealed record KeeperRow(long Session, long Position);
}
