using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Costing;

/// <summary>Divides the costs of a period, so that nothing of it is left out.</summary>
public static class CostSlices
{
    /// <summary>
    /// Where what belongs to no film or session stands: stock that was discarded, baths that were discarded.
    /// </summary>
    public const string Elsewhere = "other stock";

    /// <summary>
    /// Where print sessions stand among films, and what stands before a print session's name among sessions.
    /// </summary>
    public const string Printing = "prints";

    /// <summary>Below so many sheets a comparison per sheet says little: a rule of the program's own.</summary>
    public const int FewSheets = 20;

    private static readonly Key Nowhere = new(Elsewhere) { IsLast = true };

    /// <summary>film, session, month, year, process, developer, bath, number.</summary>
    public static IReadOnlyList<string> Groupings { get; } = ["film", "session", "month", "year", "process",
        "developer", "bath", "number"];

    /// <summary>
    /// The parts of a period: films by name, months in order, sessions and print sessions together by date; what
    /// belongs to none of them comes last.
    /// </summary>
    public static IReadOnlyList<CostSlice> Of(CostReading reading, CostGrouping grouping) =>
        Of(reading, grouping, null);

    /// <summary>The parts of what one film cost; what belongs to no film is in none of them.</summary>
    /// <param name="reading">The costs of the period.</param>
    /// <param name="grouping">What it is divided by.</param>
    /// <param name="film">The film's or paper's account; null for everything.</param>
    public static IReadOnlyList<CostSlice> Of(CostReading reading, CostGrouping grouping, FilmAccount? film)
    {
        bool IsAsked(string item) => film is null || item.Equals(film.Item, StringComparison.OrdinalIgnoreCase);
        var parts = new Dictionary<Key, Part>();
        foreach (var sheet in reading.Sheets.Where(sheet => IsAsked(sheet.Item)))
            In(grouping switch
            {
                CostGrouping.Film => new(sheet.Item),
                CostGrouping.Session => new(sheet.Session, sheet.Date, sheet.Entry),
                CostGrouping.Process => Named(sheet.Process, "no process"),
                CostGrouping.Developer => Named(sheet.Developing, "no developer"),
                CostGrouping.Bath => Named(sheet.Bath, "no bath"),
                CostGrouping.Number =>
                    new($"{sheet.Item} {(sheet.Number.Length > 0 ? sheet.Number : "without a number")}"),
                _ => Time(sheet.Date, grouping),
            }).Sheets.Add(sheet);
        foreach (var (entry, date, cost) in film?.PrintsBySession
            ?? [.. reading.Facts.Prints.Select(print => (print.Entry, print.Date, print.Total))])
            In(grouping switch
            {
                CostGrouping.Film => film is null ? new(Printing) { IsLast = true } : new(film.Item),
                CostGrouping.Process or CostGrouping.Developer or CostGrouping.Number =>
                    new(Printing) { IsLast = true },
                CostGrouping.Bath => Named(Print(entry) is { Baths: [var first, ..] } ? first.Share.Bath : "",
                    "no bath"),
                CostGrouping.Session => new($"{Printing} {Print(entry)?.Session}", date, entry),
                _ => Time(date, grouping),
            }).Prints += cost;
        foreach (var loss in reading.Facts.Losses.Where(loss => IsAsked(loss.Item)))
            In(grouping switch
            {
                CostGrouping.Film when loss.Kind == ItemKind.Film => new(loss.Item),
                CostGrouping.Month or CostGrouping.Year => Time(loss.Date, grouping),
                _ => Nowhere,
            }).Losses.Add(loss);
        foreach (var bath in reading.Facts.Baths.Where(bath => bath.HasEnded && film is null))
            In(grouping switch
                {
                    CostGrouping.Month or CostGrouping.Year => Time(bath.EndedOn ?? reading.Facts.To, grouping),
                    CostGrouping.Bath => new(bath.Share.Bath),
                    _ => Nowhere,
                })
                .NeverUsed += bath.NeverUsed;
        return
        [
            .. parts.OrderBy(part => part.Key.IsLast).ThenBy(part => part.Key.Date).ThenBy(part => part.Key.Entry)
                .ThenBy(part => part.Key.Name, StringComparer.OrdinalIgnoreCase)
                .Select(part => part.Value.ToSlice(part.Key.Name, reading))
                .Where(slice => slice.Used != Money.Zero || slice.PerSheet.SheetsUsed != 0),
        ];

        Part In(Key key) => parts.TryGetValue(key, out var part) ? part : parts[key] = new();

        PrintUse? Print(long entry) => reading.Facts.Prints.FirstOrDefault(print => print.Entry == entry);
    }

    private static Key Named(string name, string otherwise) => name.Length > 0 ? new(name)
        : new(otherwise) { IsLast = true };

    private static Key Time(LocalDate date, CostGrouping grouping) => new(grouping == CostGrouping.Year
        ? date.Year.ToString("0000", CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{date.Year:0000}-{date.Month:00}"));

    /// <summary>
    /// What tells a part from the others, and where it stands among them. A session is known by its entry: a print
    /// session may have its name.
    /// </summary>
    private readonly record struct Key(string Name, LocalDate Date = default, long Entry = 0)
    {
        public bool IsLast { get; init; }
    }

    private sealed class Part
    {
        public List<SheetCost> Sheets { get; } = [];

        public List<StockLoss> Losses { get; } = [];

        public Money NeverUsed { get; set; }

        public Money Prints { get; set; }

        public CostSlice ToSlice(string name, CostReading reading) => new(
            name,
            FilmCost.Of(
                name, Sheets.Where(reading.Counts),
                Losses.Where(loss => loss.Kind == ItemKind.Film)
                    .Select(loss => new FilmLoss(loss.Item, loss.Quantity, loss.Cost)
                    {
                        Unpriced = loss.Unpriced,
                    })),
            new(Sheets.Where(sheet => sheet.Fate.IsNegative()).Sum(sheet => sheet.Film.Millionths)),
            new(Sheets.Sum(sheet => sheet.Chemistry.Millionths)),
            new(Sheets.Sum(sheet => sheet.Supplies.Millionths)),
            new(Sheets.Where(sheet => !sheet.Fate.IsNegative()).Sum(sheet => sheet.Film.Millionths)
                + Losses.Sum(loss => loss.Cost.Millionths) + NeverUsed.Millionths)) { Prints = Prints };
    }
}
