using Ledger.App.Output.Documents;

namespace Ledger.App.Commands.Show;

/// <summary>The costs of a period in their document.</summary>
internal static class CostsShape
{
    private static readonly Shape<CostReading> _all = new Shape<CostReading>()
        .Money("film", costs => costs.Film)
        .Money("chemistry", costs => costs.Chemistry)
        .Money("supplies", costs => costs.Supplies)
        .Money("prints", costs => costs.Prints)
        .Money("waste", costs => costs.Waste)
        .Money("spoiledFilm", costs => costs.SpoiledFilm)
        .Money("neverUsedInBaths", costs => (Money?)costs.NeverUsedInBaths)
        .Money("spent", costs => costs.Spent, "what was there before and what was bought")
        .Money("onHand", costs => costs.OnHand)
        .Money("stillInBaths", costs => (Money?)costs.StillInBaths)
        .Money("opening", costs => costs.Opening)
        .Money("bought", costs => costs.Facts.Bought)
        .Flag("reconciles", costs => costs.Reconciles, "whether all of it is accounted for");

    /// <summary>Of one film; what is left in baths belongs to none.</summary>
    private static readonly Shape<FilmAccount> _film = new Shape<FilmAccount>()
        .Money("film", film => film.Film)
        .Money("chemistry", film => film.Chemistry)
        .Money("supplies", film => film.Supplies)
        .Money("prints", film => film.Prints)
        .Money("waste", film => film.Waste)
        .Money("spoiledFilm", film => film.SpoiledFilm)
        .Money("neverUsedInBaths", _ => (Money?)null)
        .Money("spent", film => film.Spent)
        .Money("onHand", film => film.OnHand)
        .Money("stillInBaths", _ => (Money?)null)
        .Money("opening", film => film.Opening)
        .Money("bought", film => film.Bought)
        .Flag("reconciles", film => film.Reconciles);

    /// <summary>What a sheet, a negative and a keeper cost.</summary>
    public static Shape<FilmCost> PerSheet { get; } = new Shape<FilmCost>()
        .Whole("sheetsUsed", film => film.SheetsUsed)
        .Whole("negatives", film => film.Negatives)
        .Whole("keepers", film => film.Keepers)
        .Whole("unpricedSheets", film => film.Unpriced)
        .Money("perSheetUsed", film => film.PerSheetUsed)
        .Money("perNegative", film => film.PerNegative)
        .Money("perKeeper", film => film.PerKeeper);

    public static Shape<CostsShown> Of { get; } = new Shape<CostsShown>()
        .Date("from", shown => shown.Costs.Facts.From)
        .Date("to", shown => shown.Costs.Facts.To)
        .Text("fates", shown => shown.CountsThen ? "then" : "now")
        .Word("item", shown => shown.Film)
        .With((shown, _) => shown.PerFilm, PerSheet)
        .With((shown, _) => shown.Costs, _all, (shown, _) => shown.Account is null)
        .With((shown, _) => shown.Account!, _film, (shown, _) => shown.Account is not null)
        .Flag("isComplete", shown => shown.IsComplete, "whether nothing in the figures is without a price")
        .Table("unpriced", (shown, _) => shown.Unpriced, new Shape<UnpricedStock>()
            .Text("item", stock => stock.Item)
            .Whole("entry", stock => stock.Entry)
            .Quantity("used", stock => stock.Used)
            .Quantity("onHand", stock => stock.OnHand))
        .Table("films", (shown, _) => shown.Films, new Shape<FilmCost>()
            .Text("item", film => film.Item)
            .With((film, _) => film, PerSheet)
            .Money("film", film => film.Film)
            .Money("chemistry", film => film.Chemistry)
            .Money("supplies", film => film.Supplies)
            .Money("total", film => film.Total))
        .With((shown, _) => shown, CostPartsShape.Of)
        .Table("sheets", (shown, _) => shown.Sheets, new Shape<SheetCost>()
            .Text("sheet", sheet => sheet.Sheet)
            .Word("negative", sheet => sheet.Negative)
            .Text("session", sheet => sheet.Session)
            .Text("item", sheet => sheet.Item)
            .Date("date", sheet => sheet.Date)
            .Text("fate", sheet => sheet.Fate.Name())
            .Money("film", sheet => sheet.Film)
            .Money("developer", sheet => sheet.Developer)
            .Money("otherChemistry", sheet => sheet.OtherChemistry)
            .Money("supplies", sheet => sheet.Supplies)
            .Money("total", sheet => sheet.Total)
            .Flag("isComplete", sheet => sheet.IsComplete))
        .Leading("films");
}
