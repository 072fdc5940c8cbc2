namespace Ledger.Exchange.Print;

/// <summary>
/// What a period cost, on paper: a negative month by month, where the money went, the prices, and that it all adds up.
/// </summary>
public static class CostReport
{
    private const int MostMonths = 24;

    /// <summary>The report of a period.</summary>
    /// <param name="costs">The costs.</param>
    /// <param name="formula">How they are costed.</param>
    /// <param name="prices">What every delivery cost, the first first.</param>
    /// <param name="settings">The settings of the ledger.</param>
    /// <param name="ahead">What lies ahead, a sentence each: the next session, the budget, prices that will
    /// rise.</param>
    public static PrintedPage Of(
        CostReading costs, CostFormula formula, IReadOnlyList<LotPrice> prices, Settings settings,
        IReadOnlyList<string> ahead)
    {
        var (currency, style) = (settings.Currency, settings.Style);
        return new(
            $"Costs, {Dates.Text(costs.Facts.From)} to {Dates.Text(costs.Facts.To)}"
                + $"{(currency.Length == 0 ? "" : $", {currency}")}",
            [
                .. Headline(costs, style),
                new Paragraph($"By {formula.Name()}: {formula.Basis()}."),
                .. PerNegative(costs, currency, style),
                .. WhereItWent(costs, currency, style),
                .. ByFilm(costs, style),
                .. PriceHistory.Of(prices, costs.Facts.From, costs.Facts.To, settings),
                .. ahead.Count == 0 ? [] : new PageBlock[] { new Heading("Ahead"), new Points(ahead) },
                .. AddsUp(costs),
            ]);
    }

    private static IEnumerable<PageBlock> Headline(CostReading costs, MeasureStyle style)
    {
        var all = costs.AllFilms;
        if (all.SheetsUsed == 0)
        {
            yield return new Paragraph("No film was used.");
            yield break;
        }

        yield return new LargeFigures(
        [
            Each(all.PerNegative, "a negative", all.Negatives), Each(all.PerSheetUsed, "a sheet used", all.SheetsUsed),
            Each(all.PerKeeper, "a keeper", all.Keepers),
        ]);
        foreach (var stock in costs.Facts.Unpriced)
            yield return new Paragraph(stock.Sentence(style));
        if (costs is { CountsPractice: false, Practice: { SheetsUsed: > 0 } practice })
            yield return new Paragraph(
                $"{practice.SheetsUsed} for practice, {practice.Total.Text(style)}, are left out of these figures.");

        Figure Each(Money? cost, string label, long count) =>
            new(UnpricedStock.Mark(cost, all.IsComplete, style), label, $"of {Scaled.ToText(count, 0)}");
    }

    /// <summary>Months, or years when there are too many months for the width of a page.</summary>
    private static IEnumerable<PageBlock> PerNegative(CostReading costs, string currency, MeasureStyle style)
    {
        var months = CostSlices.Of(costs, CostGrouping.Month);
        var (slices, name) = months.Count <= MostMonths
            ? (months, "month")
            : (CostSlices.Of(costs, CostGrouping.Year), "year");
        List<(CostSlice Slice, NegativeParts Parts)> known =
            [.. slices.Where(slice => slice.PerSheet.Negatives > 0)
                .Select(slice => (slice, NegativeParts.Of(slice.PerSheet)!))];
        if (known.Count == 0)
            yield break;
        yield return new Heading($"What a negative cost, by {name}");
        if (CostChange.Latest(slices) is { } change)
            yield return new Paragraph(change.Sentence(style));
        yield return new ColumnChart(
            In("a negative", currency), NegativeParts.Names,
            [
                .. known.Select(month => new ColumnBar(
                    month.Slice.Name, [.. month.Parts.All.Select(part => part.Amount)], month.Parts.Total.Text(style))),
            ]);
        yield return new Grid(
            [name, "negatives", .. NegativeParts.Names, "a negative"],
            [
                .. known.Select(month => (IReadOnlyList<string>)
                [
                    month.Slice.Name, Scaled.ToText(month.Slice.PerSheet.Negatives, 0),
                    .. month.Parts.All.Select(part => part.Text(style)), month.Parts.Total.Text(style),
                ]),
            ]) { FiguresFrom = 1 };
    }

    private static IEnumerable<PageBlock> WhereItWent(CostReading costs, string currency, MeasureStyle style)
    {
        if (costs.Used <= Money.Zero)
            yield break;
        (string Name, Money Part)[] parts =
        [
            ("film that became negatives", costs.Film), ("chemistry", costs.Chemistry), ("supplies", costs.Supplies),
            ("prints", costs.Prints), ("waste", costs.Waste),
        ];
        yield return new Heading("What it went for");
        yield return new ShareChart(
            In("used", currency),
            [
                .. parts.Where(part => part.Part != Money.Zero).Select(part => new ShareBar(
                    part.Name, part.Part.Amount,
                    $"{part.Part.Text(style)}, {Scaled.ToText(part.Part.PercentOf(costs.Used, 1) ?? 0, 1)} %")),
            ]);
        yield return new Paragraph($"{costs.Used.Text(style)} were used. The waste: {costs.WasteText(style)}.");
    }

    private static IEnumerable<PageBlock> ByFilm(CostReading costs, MeasureStyle style)
    {
        var films = costs.ByFilm.ToList();
        if (films.Count == 0)
            yield break;
        yield return new Heading("Film by film");
        yield return new Grid(
            ["film", "used", "neg.", "keepers", "total", "a sheet", "a negative", "a keeper"],
            [
                .. films.Select(film => Row(film.Item, film, style)),
                .. films.Count > 1 ? [Row("all", costs.AllFilms, style)] : Array.Empty<IReadOnlyList<string>>(),
            ])
        {
            FiguresFrom = 1,
        };
    }

    private static IReadOnlyList<string> Row(string name, FilmCost film, MeasureStyle style) =>
    [
        name, Scaled.ToText(film.SheetsUsed, 0), Scaled.ToText(film.Negatives, 0), Scaled.ToText(film.Keepers, 0),
        UnpricedStock.Mark(film.Total, film.IsComplete, style),
        UnpricedStock.Mark(film.PerSheetUsed, film.IsComplete, style),
        UnpricedStock.Mark(film.PerNegative, film.IsComplete, style),
        UnpricedStock.Mark(film.PerKeeper, film.IsComplete, style),
    ];

    /// <summary>Exact to the millionth, so that it can be checked with a pencil.</summary>
    private static IEnumerable<PageBlock> AddsUp(CostReading costs)
    {
        yield return new Heading("It adds up");
        yield return new Grid(
            ["what", "amount"],
            [
                ["on hand and in baths before", costs.Opening.ToString()], ["+ bought", costs.Facts.Bought.ToString()],
                ["= film that became negatives", costs.Film.ToString()], ["+ chemistry", costs.Chemistry.ToString()],
                ["+ supplies", costs.Supplies.ToString()],
                .. costs.Prints == Money.Zero ? Array.Empty<IReadOnlyList<string>>()
                    : [["+ prints", costs.Prints.ToString()]],
                ["+ waste", costs.Waste.ToString()], ["+ on hand now", costs.OnHand.ToString()],
                ["+ still in baths", costs.StillInBaths.ToString()],
            ]) { FiguresFrom = 1 };
        yield return new Paragraph(costs.Reconciles
            ? $"Both sides are {costs.Spent}{(costs.IsComplete ? "." : ", as far as there are prices.")}"
            : "It does not reconcile: run `trayledger check`.");
    }

    private static string In(string what, string currency) => currency.Length == 0 ? what : $"{what}, {currency}";
}
