using Ledger.App.Output.Documents;
using Ledger.Core.Measures;
using Ledger.Core.Planning;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Plan;

/// <summary>A plan in its document.</summary>
internal static class PlanShape
{
    private static readonly Shape<BatchDeveloper> _developer = new Shape<BatchDeveloper>()
        .Text("item", developer => developer.Item.Code)
        .Word("dilution", developer => developer.Dilution?.Text)
        .Figure("concentrateMl", developer => developer.Measured.Millilitres)
        .Figure("exactMl", developer => developer.Need.Concentrate.Millilitres)
        .Table("otherParts", (developer, _) => developer.OtherParts, new Shape<OtherPart>()
            .Word("item", part => part.Item)
            .Figure("ml", part => part.Measured.Millilitres)
            .Figure("exactMl", part => part.Exact.Millilitres))
        .Figure("waterMl", developer => developer.Water.Millilitres)
        .Figure("workingMl", developer => developer.Need.WorkingVolume.Millilitres)
        .Figure("minimumMl", developer => developer.Need.ByArea.Millilitres)
        .Flag("isEnough", developer => developer.Need.IsEnough);

    private static readonly Shape<PlannedBatch> _batch = new Shape<PlannedBatch>()
        .Whole("number", batch => batch.Number)
        .Text("item", batch => batch.Film.Code)
        .Text("group", batch => batch.Group)
        .Whole("sheets", batch => batch.Sheets.Count)
        .Flag("dummy", batch => batch.HasDummy)
        .Area("areaSqIn", batch => batch.Area)
        .Object("developer", (batch, _) => batch.Developer, _developer)
        .Figure("shuffleEverySeconds", batch => batch.ShuffleEverySeconds)
        .Figure("turnAtMinutes", batch => batch.TurnAtMinutes)
        .Figure("minutes", batch => batch.Minutes)
        .Table("order", (batch, _) => batch.Sheets, new Shape<PlannedSheet>()
            .Whole("number", sheet => sheet.Number)
            .Word("sheet", sheet => sheet.Known?.Id.ToString())
            .Word("subject", sheet => sheet.Subject)
            .Word("holder", sheet => sheet.Holder));

    private static readonly Shape<PlannedTray> _tray = new Shape<PlannedTray>()
        .Whole("number", tray => tray.Number)
        .Text("name", tray => tray.Name)
        .Text("role", tray => tray.Role.Name())
        .Volume("volume", tray => tray.Volume)
        .Figure("minutes", tray => tray.Minutes)
        .Figure("celsius", tray => tray.Celsius)
        .Flag("perBatch", tray => tray.IsPerBatch)
        .Table("parts", (tray, _) => tray.Parts, new Shape<TrayPart>()
            .Text("what", part => part.What)
            .Quantity("amount", part => part.Amount))
        .Word("note", tray => tray.Note);

    private static readonly Shape<PlannedUse> _use = new Shape<PlannedUse>()
        .Text("item", use => use.Item.Code)
        .Quantity("needed", use => use.Needed)
        .Quantity("usable", use => use.Usable)
        .Quantity("expired", use => use.Expired)
        .Table("from", (use, _) => use.Sources.Select(source => (Source: source, use.Item)),
            new Shape<((Container From, Quantity Quantity) Source, Item Item)>()
            .Text("container", row => row.Source.From.Code)
            .Whole("lot", row => row.Source.From.Lot.Id.Value)
            .Text("batch", row => row.Source.From.Lot.Batch)
            .Quantity("quantity", row => row.Source.Quantity)
            .Date("goodUntil", row => row.Source.From.GoodUntil(row.Item.Keeping)?.Date))
        .Money("cost", use => use.Cost);

    private static readonly Shape<PlanCost> _cost = new Shape<PlanCost>()
        .Money("film", cost => cost.Film)
        .Money("developer", cost => cost.Developer)
        .Money("otherChemistry", cost => cost.OtherChemistry)
        .Money("baths", cost => cost.Baths)
        .Money("supplies", cost => cost.Supplies)
        .Money("total", cost => cost.Total)
        .Money("perSheet", cost => cost.PerSheet)
        .Money("short", cost => cost.ShortCost)
        .Texts("atLastPrice", cost => cost.AtLastPrice.Select(known => known.Item1))
        .Texts("unpriced", cost => cost.Unpriced)
        .Flag("isComplete", cost => cost.IsComplete);

    public static Shape<SessionPlan> Of { get; } = new Shape<SessionPlan>()
        .AsOf()
        .Date("day", plan => plan.Day)
        .Text("process", plan => plan.Process.Name)
        .Whole("processVersion", plan => plan.Process.Version)
        .Flag("canRun", plan => plan.CanRun)
        .Whole("sheets", plan => plan.Sheets)
        .Area("areaSqIn", plan => plan.Area)
        .Table("batches", (plan, _) => plan.Batches, _batch)
        .Table("trays", (plan, _) => plan.Trays, _tray)
        .Table("uses", (plan, _) => plan.Uses, _use)
        .Table("shortages", (plan, _) => plan.Shortages, new Shape<Shortage>()
            .Text("item", shortage => shortage.Item.Code)
            .Quantity("needed", shortage => shortage.Needed)
            .Quantity("usable", shortage => shortage.Usable)
            .Quantity("missing", shortage => shortage.Missing)
            .Word("cure", shortage => shortage.Cure))
        .Table("baths", (plan, _) => plan.Baths, new Shape<BathOutlook>()
            .Word("bath", bath => bath.Bath?.Code)
            .Text("item", bath => bath.Item)
            .Flag("isFirst", bath => bath.IsFirst)
            .Area("beforeSqIn", bath => bath.Before)
            .Area("afterSqIn", bath => bath.After)
            .Area("capacitySqIn", bath => bath.Bath?.TotalCapacity)
            .Flag("fits", bath => bath.Fits)
            .Word("reason", bath => bath.Word)
            .Word("proposal", bath => bath.Proposal))
        .Object("cost", (plan, _) => plan.Cost, _cost)
        .Texts("cautions", plan => plan.Advice.Concat(plan.Cautions));
}
