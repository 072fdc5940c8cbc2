using System.Globalization;
using Ledger.App.Output;
using Ledger.Core.Costing;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Show;

/// <summary>The costs of a period as a person reads them: where the money went, then each film by the sheet.</summary>
internal static class CostsText
{
    internal const string Reconciled = "All of it is accounted for.";
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
        output.WriteLine();
        WriteFilms(shown, output, view);
        CostPartsText.Write(shown, view, output);
    }

    private static void WriteMoney(CostReading costs, TextWriter output, View view)
    {
        var table = new TextTable(Column.Left(""), Column.Right(""), Column.Left(""));
        table.Add(
            "spent", costs.Spent.Rounded(), $"{costs.Facts.OnHandBefore.Rounded()} on hand before, {costs.Facts.Bought.Rounded()} bought");
        table.Add("  film", costs.Film.Rounded(), "that became negatives");
        table.Add("  chemistry", costs.Chemistry.Rounded(), "one-shot, and the baths by the area that passed through");
        table.Add("  supplies", costs.Supplies.Rounded());
        if (costs.Prints != Money.Zero)
            table.Add("  prints", costs.Prints.Rounded(), "paper, and its part of the baths");
        table.Add("  waste", costs.Waste.Rounded(), costs.WasteText);
        table.Add("  on hand", costs.OnHand.Rounded());
        table.Add("  still in baths", costs.StillInBaths.Rounded());
        table.WriteTo(output, view.Width);
        output.WriteProse(
            $"{costs.Opening.Rounded()} there before + {costs.Facts.Bought.Rounded()} bought = {(costs.Used - costs.Waste).Rounded()} used "
            + $"+ {costs.Waste.Rounded()} waste + {costs.Closing.Rounded()} on hand", view.Width);
        output.WriteLine(costs.Reconciles ? Reconciled : Unreconciled);
    }

    private static void WriteMoney(FilmAccount film, TextWriter output, View view)
    {
        var table = new TextTable(Column.Left(""), Column.Right(""), Column.Left(""));
        table.Add(
            "spent", film.Spent.Rounded(),
            $"{film.Opening.Rounded()} of {film.Item} on hand before, {film.Bought.Rounded()} bought, and what its sheets used");
        table.Add("  film", film.Film.Rounded(), "that became negatives");
        table.Add("  chemistry", film.Chemistry.Rounded(), "its share, by area");
        table.Add("  supplies", film.Supplies.Rounded(), "its share");
        if (film.Prints != Money.Zero)
            table.Add("  prints", film.Prints.Rounded(), "what was printed on");
        table.Add("  waste", film.Waste.Rounded(), $"spoiled {film.SpoiledFilm.Rounded()}, discarded or lost {film.ThrownOrLost.Rounded()}");
        table.Add("  on hand", film.OnHand.Rounded());
        table.WriteTo(output, view.Width);
        output.WriteLine(film.Reconciles ? Reconciled : Unreconciled);
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
            Add(table, film.Item, film);
        if (films.Count > 1)
            Add(table, "all", shown.PerFilm);
        table.WriteTo(output, view.Width);
    }

    internal static void Add(TextTable table, string name, FilmCost film) => table.Add(
        name, Count(film.SheetsUsed), Count(film.Negatives), Count(film.Keepers), film.Total.Rounded(),
        film.PerSheetUsed?.Rounded() ?? "-", film.PerNegative?.Rounded() ?? "-", film.PerKeeper?.Rounded() ?? "-");

    private static string Count(long count) => count.ToString(CultureInfo.InvariantCulture);
}
