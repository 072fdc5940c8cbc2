using System.Runtime.InteropServices;
using Ledger.Storage.Files;

namespace Ledger.Storage.Reading;

/// <summary>Reads what the sessions of a part of a period used.</summary>
/// <param name="snapshot">The state that is read.</param>
/// <param name="unpriced">The sessions that used something that came without a price.</param>
/// <param name="fatesOn">The day whose fates count.</param>
/// <param name="lots">The lots that were used.</param>
internal sealed class SessionUseReader(Snapshot snapshot, HashSet<long> unpriced, string fatesOn, LotsUsed lots)
{
    private static readonly Dictionary<long, SheetName> _noNames = [];
    private readonly FilmUseReader _films = new(snapshot, lots);
    private readonly SharedTexts _texts = new();
    private readonly Dictionary<long, string> _baths = [];

    /// <summary>The sessions in order.</summary>
    /// <param name="part">The part of the period.</param>
    /// <param name="work">What was done in baths in it.</param>
    public IEnumerable<SessionUse> Read((string From, string To) part, Dictionary<long, Worked> work)
    {
        var (used, lines, names) = (Used(part), _films.Read(part, fatesOn), _films.Names(part));
        foreach (var row in snapshot.Connection.Query<SessionRow>(
            """
            SELECT s.entry_id AS Number, s.code AS Session, e.date AS Date, s.process AS Process,
                coalesce(s.bath_id, 0) AS Bath
            FROM standing_entry e CROSS JOIN session s ON s.entry_id = e.id
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
                Bath = row.Bath == 0 ? "" : NameOf(row.Bath),
                Developing = _texts.Of(poured.Item ?? worked.Developing ?? ""),
                IsPriced = !unpriced.Contains(row.Number),
                Sheets = names.GetValueOrDefault(row.Number, _noNames),
            };
        }
    }

    private string NameOf(long bath) => _baths.TryGetValue(bath, out var known) ? known
        : _baths[bath] = snapshot.Connection.QuerySingle<string>(
            "SELECT code FROM place WHERE id = @bath", new { bath });

    /// <summary>What each session took from the shelf: developer and which was poured first, other chemistry,
    /// supplies.</summary>
    private Dictionary<long, Poured> Used((string From, string To) part)
    {
        var used = new Dictionary<long, Poured>();
        foreach (var row in snapshot.Connection.Query<UsedRow>(
            $"""
            SELECT e.id AS Number, m.id AS Movement, m.lot_id AS Lot, m.value AS Value
            FROM standing_entry e CROSS JOIN session s ON s.entry_id = e.id
                CROSS JOIN movement m ON m.entry_id = e.id AND m.to_place = {InSql.UsedUp}
            WHERE e.date BETWEEN @From AND @To
            """,
            new { part.From, part.To }, buffered: false))
        {
            ref var poured = ref CollectionsMarshal.GetValueRefOrAddDefault(used, row.Number, out _);
            poured = poured.With(row, lots.Of(row.Lot));
        }

        return used;
    }

    /// <param name="Developer">What the developer cost, in millionths.</param>
    /// <param name="Chemistry">What other chemistry cost.</param>
    /// <param name="Supplies">What supplies cost.</param>
    /// <param name="First">The movement of the developer that was poured first; 0 for none.</param>
    /// <param name="Item">Which that was.</param>
    private readonly record struct Poured(long Developer, long Chemistry, long Supplies, long First, string? Item)
    {
        public Poured With(UsedRow row, LotsUsed.LotRow lot)
        {
            var with = !lot.IsChemical ? this with { Supplies = Supplies + row.Value }
                : lot.IsDeveloper ? this with { Developer = Developer + row.Value }
                : this with { Chemistry = Chemistry + row.Value };
            return lot.IsDeveloper && (First == 0 || row.Movement < First)
                ? with with { First = row.Movement, Item = lot.Item }
                : with;
        }
    }

    internal sealed record SessionRow(long Number, string Session, string Date, string Process, long Bath);

    internal sealed record UsedRow(long Number, long Movement, long Lot, long Value);
}
