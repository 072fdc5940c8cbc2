namespace Ledger.App.Commands.Show;

/// <summary>The costs of a period as a person reads them: where the money went, then each film by the sheet.</summary>
internal static class CostsText
{
    internal const string Reconciled = "All of it is accounted for.";
    internal const string KnownReconciled = "All of it that has a price is accounted for.";
    internal const string Unreconciled = "It does not add up: run `trayledger check`.";

    public static void Write(CostsShown shown, View view, TextWriter output)
    {
        var costs = shown.Costs;
        var currency = view.Currency.Length == 0 ? "" : $", {view.Currency}";
        output.WriteLine($"{Dates.Text(costs.Facts.From)} to {Dates.Text(costs.Facts.To)}{currency}");
        if ((shown.Account?.Spent ?? costs.Spent) == Money.Zero && shown.Sheets.Count == 0)
        {
            output.WriteLine("Nothing was bought and nothing was used.");
            return;
        }

        output.WriteProse($"By {shown.Formula.Name()}: {shown.Formula.Basis()}.", view.Width);
        if (shown.Account is { } film)
            WriteMoney(film, output, view);
        else
            WriteMoney(costs, output, view);
        foreach (var stock in shown.Unpriced)
            output.WriteProse(stock.Sentence(view.Style), view.Width);
        if (!shown.IsComplete)
            output.WriteProse(UnpricedStock.Legend, view.Width);
        output.WriteLine();
        WriteFilms(shown, output, view);
        CostPartsText.Write(shown, view, output);
    }

    private static void WriteMoney(CostReading costs, TextWriter output, View view)
    {
        var table = new TextTable(Column.Left(""), Column.Right(""), Column.Left(""));
        table.Add(
            "spent", costs.Spent.Text(view.Style),
            $"{costs.Facts.OnHandBefore.Text(view.Style)} on hand before, {costs.Facts.Bought.Text(view.Style)} "
                + "bought");
        table.Add("  film", costs.Film.Text(view.Style), "that became negatives");
        table.Add("  chemistry", costs.Chemistry.Text(view.Style),
            "one-shot, and the baths by the area that passed through");
        table.Add("  supplies", costs.Supplies.Text(view.Style));
        if (costs.Prints != Money.Zero)
            table.Add("  prints", costs.Prints.Text(view.Style), "paper, and its part of the baths");
        table.Add("  waste", costs.Waste.Text(view.Style), costs.WasteText(view.Style));
        table.Add("  on hand", costs.OnHand.Text(view.Style));
        table.Add("  still in baths", costs.StillInBaths.Text(view.Style));
        table.WriteTo(output, view.Width);
        output.WriteProse(
            $"{costs.Opening.Text(view.Style)} there before + {costs.Facts.Bought.Text(view.Style)} bought = "
            + $"{(costs.Used - costs.Waste).Text(view.Style)} used "
            + $"+ {costs.Waste.Text(view.Style)} waste + {costs.Closing.Text(view.Style)} on hand", view.Width);
        output.WriteLine(!costs.Reconciles ? Unreconciled : costs.IsComplete ? Reconciled : KnownReconciled);
    }

    private static void WriteMoney(FilmAccount film, TextWriter output, View view)
    {
        var table = new TextTable(Column.Left(""), Column.Right(""), Column.Left(""));
        table.Add(
            "spent", film.Spent.Text(view.Style),
            $"{film.Opening.Text(view.Style)} of {film.Item} on hand before, {film.Bought.Text(view.Style)} bought, "
                + "and what its sheets used");
        table.Add("  film", film.Film.Text(view.Style), "that became negatives");
        table.Add("  chemistry", film.Chemistry.Text(view.Style), "its share, by area");
        table.Add("  supplies", film.Supplies.Text(view.Style), "its share");
        if (film.Prints != Money.Zero)
            table.Add("  prints", film.Prints.Text(view.Style), "what was printed on");
        table.Add(
            "  waste", film.Waste.Text(view.Style),
            $"spoiled {film.SpoiledFilm.Text(view.Style)}, discarded or lost {film.ThrownOrLost.Text(view.Style)}");
        table.Add("  on hand", film.OnHand.Text(view.Style));
        table.WriteTo(output, view.Width);
        output.WriteLine(!film.Reconciles ? Unreconciled : film.Unpriced.Count == 0 ? Reconciled : KnownReconciled);
    }

    private static void WriteFilms(CostsShown shown, TextWriter output, View view)
    {
        var films = shown.Films.ToList();
        if (films.Count == 0)
        {
            output.WriteLine("No film was used.");
            return;
        }

        var table = new TextTable(
            Column.Left("film"), Column.Right("used"), Column.Right("negatives"), Column.Right("keepers"),
            Column.Right("total"), Column.Right("a sheet"), Column.Right("a negative"), Column.Right("a keeper"));
        foreach (var film in films)
            Add(table, film.Item, film, view);
        if (films.Count > 1)
            Add(table, "all", shown.PerFilm, view);
        table.WriteTo(output, view.Width);
    }

    internal static void Add(TextTable table, string name, FilmCost film, View view) => table.Add(
        name, Count(film.SheetsUsed), Count(film.Negatives), Count(film.Keepers),
        UnpricedStock.Mark(film.Total, film.IsComplete, view.Style),
        UnpricedStock.Mark(film.PerSheetUsed, film.IsComplete, view.Style),
        UnpricedStock.Mark(film.PerNegative, film.IsComplete, view.Style),
        UnpricedStock.Mark(film.PerKeeper, film.IsComplete, view.Style));

    private static string Count(long count) => count.ToString(CultureInfo.InvariantCulture);
}
