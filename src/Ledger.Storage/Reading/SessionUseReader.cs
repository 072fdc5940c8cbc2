using Ledger.Storage.Files;

namespace Ledger.Storage.Reading;

/// <summary>Reads what the sessions of a part of a period used.</summary>
/// <param name="snapshot">The state that is read.</param>
/// <param name="unpriced">The sessions that used something that came without a price.</param>
/// <param name="fatesOn">The day whose fates count.</param>
internal sealed class SessionUseReader(Snapshot snapshot, HashSet<long> unpriced, string fatesOn)
{
    private static readonly Dictionary<long, SheetName> _noNames = [];
    private readonly FilmUseReader _films = new(snapshot);
    private readonly SharedTexts _texts = new();

    /// <summary>The sessions in order.</summary>
    /// <param name="part">The part of the period.</param>
    /// <param name="work">What was done in baths in it.</param>
    public IEnumerable<SessionUse> Read((string From, string To) part, Dictionary<long, Worked> work)
    {
        var (used, lines, names) = (Used(part), _films.Read(part, fatesOn), _films.Names(part));
        foreach (var row in snapshot.Connection.Query<SessionRow>(
            """
            SELECT s.entry_id AS Number, s.code AS Session, e.date AS Date, s.process AS Process, p.code AS Bath
            FROM standing_entry e CROSS JOIN session s ON s.entry_id = e.id LEFT JOIN place p ON p.id = s.bath_id
            WHERE e.date BETWEEN @From AND @To ORDER BY e.date, e.ord
            """,
            new { part.From, part.To }, buffered: false))
        {
            var (poured, worked) = (used.GetValueOrDefault(row.Number),
                work.GetValueOrDefault(row.Number, Worked.Nowhere));
            yield return new(
                row.Session, Days.Read(row.Date), new(poured.Developer), new(poured.Chemistry), new(poured.Supplies),
                worked.Parts, lines.GetValueOrDefault(row.Number, []))
            {
                Entry = row.Number,
                Process = _texts.Of(row.Process),
                Bath = _texts.Of(row.Bath ?? ""),
                Developing = _texts.Of(poured.Item ?? worked.Developing ?? ""),
                IsPriced = !unpriced.Contains(row.Number),
                Sheets = names.GetValueOrDefault(row.Number, _noNames),
            };
        }
    }

    /// <summary>
    /// What each session took from the shelf: developer and which was poured first, other chemistry, supplies. The plus
    /// keeps SQLite from walking the whole journal in the order of the numbers.
    /// </summary>
    private Dictionary<long, Poured> Used((string From, string To) part) => snapshot.Connection.Query<UsedRow>(
        $"""
        SELECT e.id AS Number, sum(iif(i.kind = 'chemical' AND i.role IS 'developer', m.value, 0)) AS Developer,
            sum(iif(i.kind = 'chemical' AND i.role IS NOT 'developer', m.value, 0)) AS Chemistry,
            sum(iif(i.kind <> 'chemical', m.value, 0)) AS Supplies,
            min(iif(i.role IS 'developer', m.id, NULL)) AS First, i.code AS Item
        FROM standing_entry e CROSS JOIN session s ON s.entry_id = e.id
            CROSS JOIN movement m ON m.entry_id = e.id AND m.to_place = {InSql.UsedUp}
            CROSS JOIN lot l ON l.id = m.lot_id CROSS JOIN item i ON i.id = l.item_id
        WHERE e.date BETWEEN @From AND @To GROUP BY +e.id
        """,
        new { part.From, part.To }, buffered: false)
    .ToDictionary(row => row.Number, row => new Poured(
        row.Developer, row.Chemistry, row.Supplies, row.First is null ? null : _texts.Of(row.Item)));

    private readonly record struct Poured(long Developer, long Chemistry, long Supplies, string? Item);

    internal sealed record SessionRow(long Number, string Session, string Date, string Process, string? Bath);

    internal sealed record UsedRow(
        long Number, long Developer, long Chemistry, long Supplies, long? First, string Item);
}
