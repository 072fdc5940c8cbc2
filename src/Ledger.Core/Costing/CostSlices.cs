using System.Globalization;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;
using NodaTime;

namespace Ledger.Core.Costing;

/// <summary>Divides the costs of a period, so that nothing of it is left out.</summary>
public static class CostSlices
{
    /// <summary>Where what belongs to no film or session stands: stock that was thrown away, baths that were poured out.</summary>
    public const string Elsewhere = "other stock";

    /// <summary>Where print sessions stand among films.</summary>
    public const string Printing = "prints";

    /// <summary>film, session, month, year.</summary>
    public static IReadOnlyList<string> Groupings { get; } = ["film", "session", "month", "year"];

    /// <summary>The parts of a period: films by name, sessions and months in order; what belongs to none of them comes last.</summary>
    public static IReadOnlyList<CostSlice> Of(CostReading reading, CostGrouping grouping)
    {
        var parts = new Dictionary<string, Part>(StringComparer.OrdinalIgnoreCase);
        foreach (var sheet in reading.Sheets)
            In(grouping switch
            {
                CostGrouping.Film => sheet.Item,
                CostGrouping.Session => sheet.Session,
                _ => Time(sheet.Date, grouping),
            }).Sheets.Add(sheet);
        foreach (var print in reading.Facts.Prints)
            In(grouping switch
            {
                CostGrouping.Film => Printing,
                CostGrouping.Session => print.Session,
                _ => Time(print.Date, grouping),
            }).Prints += print.Total;
        foreach (var loss in reading.Facts.Losses)
            In(grouping switch
            {
                CostGrouping.Film => loss.Kind == ItemKind.Film ? loss.Item : Elsewhere,
                CostGrouping.Session => Elsewhere,
                _ => Time(loss.Date, grouping),
            }).Losses.Add(loss);
        foreach (var bath in reading.Facts.Baths.Where(bath => bath.HasEnded))
            In(grouping is CostGrouping.Film or CostGrouping.Session ? Elsewhere : Time(bath.EndedOn ?? reading.Facts.To, grouping))
                .NeverUsed += bath.NeverUsed;
        var slices = parts.Select(part => part.Value.ToSlice(part.Key, reading))
            .Where(slice => slice.Used != Money.Zero || slice.PerSheet.SheetsUsed != 0);
        return grouping == CostGrouping.Session
            ? [.. slices.OrderBy(slice => slice.Name is Printing or Elsewhere)]
            : [.. slices.OrderBy(slice => slice.Name is Printing or Elsewhere).ThenBy(slice => slice.Name, StringComparer.OrdinalIgnoreCase)];

        Part In(string name) => parts.TryGetValue(name, out var part) ? part : parts[name] = new();
    }

    private static string Time(LocalDate date, CostGrouping grouping) => grouping == CostGrouping.Year
        ? date.Year.ToString("0000", CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{date.Year:0000}-{date.Month:00}");

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
                Losses.Where(loss => loss.Kind == ItemKind.Film).Select(loss => new FilmLoss(loss.Item, loss.Quantity, loss.Cost))),
            new(Sheets.Where(sheet => sheet.Fate.IsNegative()).Sum(sheet => sheet.Film.Millionths)),
            new(Sheets.Sum(sheet => sheet.Chemistry.Millionths)),
            new(Sheets.Sum(sheet => sheet.Supplies.Millionths)),
            new(Sheets.Where(sheet => !sheet.Fate.IsNegative()).Sum(sheet => sheet.Film.Millionths)
                + Losses.Sum(loss => loss.Cost.Millionths) + NeverUsed.Millionths)) { Prints = Prints };
    }
}
