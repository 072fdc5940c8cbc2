namespace Ledger.Exchange.Export;

/// <summary>
/// The readings of all costs as tables, exact to the millionth of the ledger's currency: by month, year, film, session
/// and sheet, how every year reconciles, and what every delivery cost.
/// </summary>
public static class CostTables
{
    private static readonly string[] Sheets = ["sheets_used", "negatives", "keepers", "unpriced_sheets",
        "per_sheet_used", "per_negative", "per_keeper"];
    private static readonly string[] Uses = ["film_cost", "chemistry", "supplies", "prints", "waste", "used"];

    /// <summary>The tables of a ledger, from its first day to today, by the formula of its settings.</summary>
    public static IReadOnlyList<ExportedTable> Of(ILedger ledger)
    {
        var settings = ledger.HoldingsOn(ledger.Today).Settings;
        var formula = settings.CostFormula;
        var all = new CostReading(ledger.Costs(new(1900, 1, 1), ledger.Today, formula));
        return
        [
            .. new[]
            {
                CostGrouping.Month, CostGrouping.Year, CostGrouping.Film, CostGrouping.Session, CostGrouping.Process,
                    CostGrouping.Developer,
                CostGrouping.Bath, CostGrouping.Number,
            }.Select(grouping => By(grouping, all)),
            EachSheet(all), Years(ledger, formula, all), Prices(ledger, settings.Currency),
        ];
    }

    private static ExportedTable By(CostGrouping grouping, CostReading all)
    {
        var name = CostSlices.Groupings[(int)grouping];
        return new(
            $"cost_by_{name}", [name, .. Sheets, .. Uses],
            CostSlices.Of(all, grouping).Select(slice => (IReadOnlyList<string?>)
            [
                slice.Name, .. Figures(slice.PerSheet),
                .. Texts(slice.Film, slice.Chemistry, slice.Supplies, slice.Prints, slice.Waste, slice.Used),
            ]));
    }

    private static ExportedTable EachSheet(CostReading all) => new(
        "cost_by_sheet",
        ["sheet", "negative", "session", "date", "film", "fate", "film_cost", "developer",
            "other_chemistry", "supplies", "total", "is_complete"],
        all.Sheets.Select(sheet => (IReadOnlyList<string?>)
        [
            sheet.Sheet, sheet.Negative, sheet.Session, Dates.Text(sheet.Date), sheet.Item,
            Core.Sessions.Fates.Name(sheet.Fate),
            .. Texts(sheet.Film, sheet.Developer, sheet.OtherChemistry, sheet.Supplies, sheet.Total),
            sheet.IsComplete ? "yes" : "no",
        ]));

    /// <summary>
    /// Opening + bought = film_cost + chemistry + supplies + prints + waste + on hand + in baths, in every row.
    /// </summary>
    private static ExportedTable Years(ILedger ledger, CostFormula formula, CostReading all)
    {
        var first = all.Sheets.Select(sheet => sheet.Date)
            .Concat(ledger.Prices(ledger.Today).Select(price => price.Date))
            .DefaultIfEmpty(ledger.Today).Min().Year;
        return new(
            "cost_reconciled", ["year", "opening", "bought", "film_cost", "chemistry", "supplies",
                "prints", "waste", "on_hand", "in_baths"],
            Enumerable.Range(first, ledger.Today.Year - first + 1).Select(year => Year(ledger, formula, year)));
    }

    private static IReadOnlyList<string?> Year(ILedger ledger, CostFormula formula, int year)
    {
        var last = LocalDate.Min(new(year, 12, 31), ledger.Today);
        var costs = new CostReading(ledger.Costs(new(year, 1, 1), last, formula, ledger.Today));
        return
        [
            Scaled.ToText(year, 0),
            .. Texts(
                costs.Opening, costs.Facts.Bought, costs.Film, costs.Chemistry, costs.Supplies,
                costs.Prints, costs.Waste, costs.OnHand, costs.StillInBaths),
        ];
    }

    private static ExportedTable Prices(ILedger ledger, string currency) => new(
        "price_history", ["item", "date", "lot", "quantity", "unit", "cost", "per_unit", "paid_in"],
        ledger.Prices(ledger.Today).Select(price => (IReadOnlyList<string?>)
        [
            price.Item, Dates.Text(price.Date), Scaled.ToText(price.Lot.Value, 0),
            Scaled.ToText(price.Quantity.Value, 6), price.Quantity.Unit.Name(),
            .. price.IsPriced ? Texts(price.Cost, price.PerUnit) : [null, null], price.Currency ?? currency,
        ]));

    private static IEnumerable<string?> Figures(FilmCost cost) =>
    [
        Scaled.ToText(cost.SheetsUsed, 0), Scaled.ToText(cost.Negatives, 0), Scaled.ToText(cost.Keepers, 0),
        Scaled.ToText(cost.Unpriced, 0), cost.PerSheetUsed?.ToString(),
        cost.PerNegative?.ToString(), cost.PerKeeper?.ToString(),
    ];

    private static IEnumerable<string?> Texts(params Money[] amounts) => amounts.Select(amount => amount.ToString());
}
