namespace Ledger.Terminal.Blocks;

/// <summary>A plan as the details pane shows it: can it be run, the batches, the trays, the cost.</summary>
/// <param name="settings">The ledger's settings.</param>
/// <param name="told">A refusal in the words of the screens.</param>
internal sealed class PlanBlocks(Settings settings, Func<Refusal, string> told)
{
    private MeasureStyle Style => settings.Style;

    /// <summary>The blocks of what came of planning.</summary>
    public IReadOnlyList<Block> Of(PlanDecision decision) => decision switch
    {
        Planned planned =>
        [
            CanRun(planned.Plan), Cautions(planned.Plan), Batches(planned.Plan), Trays(planned.Plan),
            Uses(planned.Plan), Costs(planned.Plan.Cost),
        ],
        NotPlanned not => [Block.Of("This cannot be planned", told(not.Refusal))],
        _ => [],
    };

    private Block CanRun(SessionPlan plan) => Block.Of(
        !plan.CanRun ? "Not everything is there" : plan.IsSure ? "Everything is there" : "What can be judged is there",
        [
            .. plan.Shortages.Select(shortage =>
                $"  ! {shortage.Item.Code}: {shortage.Missing.ToText(Style)} short of {shortage.Needed.ToText(Style)}; "
                    + $"{shortage.Cure}"),
            .. plan.Advice.Select(sentence => $"  ! {sentence}"),
            .. plan.Baths.Where(bath => bath is { Fits: true, IsFirst: true })
                .Select(bath =>
                    $"  {bath.Bath!.Code}: {bath.Before.ToText(Style)} -> {bath.After.ToText(Style)}{Capacity(bath)}"),
        ]);

    private string Capacity(BathOutlook bath) =>
        bath.Bath?.TotalCapacity is { } capacity ? $" of {capacity.ToText(Style)}" : "";

    private Block Batches(SessionPlan plan) => Block.Of(
        $"{Counted.Of(plan.Batches.Count, "batch")}, {plan.Area.ToText(Style)}",
        plan.Batches.Select(batch => $"  {batch.Number}. {Batch(batch)}"));

    private string Batch(PlannedBatch batch)
    {
        var sheets = $"{batch.Sheets.Count} {batch.Film.Code}{(batch.Group.Length > 0 ? $" {batch.Group}" : "")}"
            + $"{(batch.HasDummy ? " and a dummy" : "")}";
        var developer = batch.Developer is { } one
            ? $"{string.Join(" + ", one.OtherParts.Select(part => part.Measured).Prepend(one.Measured)
                .Select(part => part.ToText(Style)))}"
                + $"{Exact(one)} in {one.Need.WorkingVolume.ToText(Style)}"
            : "";
        var time = batch.Minutes is { } minutes ? GroupTimes.Clock(minutes) : "";
        var turn = batch.TurnAtMinutes is { } half ? $"turn at {GroupTimes.Clock(half)}" : "";
        var move = batch.ShuffleEverySeconds is { } seconds ? $"shuffle every {Scaled.ToText(seconds, 1)} s" : "";
        var known = string.Join("; ", batch.Sheets.Select(sheet => sheet.ToString()).Where(text => text.Length > 0));
        return string.Join(", ", new[] { sheets, developer, time, turn, move, known }.Where(text => text.Length > 0));
    }

    private string Exact(BatchDeveloper developer) =>
        developer.Measured == developer.Need.Concentrate
            ? ""
            : $" (exactly {developer.Need.Concentrate.ToText(Style)})";

    private Block Trays(SessionPlan plan) =>
        Block.Facts("Trays", plan.Trays.Select(tray => ($"  {tray.Number} {tray.Name}", (string?)Tray(tray))));

    private string Tray(PlannedTray tray) => string.Join(", ", new[]
    {
        string.Join(" + ", tray.Parts.Select(part => $"{part.Amount?.ToText(Style)} {part.What}".Trim())),
        tray.Minutes is { } minutes ? GroupTimes.Clock(minutes) : "",
        tray.Celsius is { } celsius ? $"{Scaled.ToText(celsius, 1)} °C" : "",
    }.Where(text => text.Length > 0));

    private Block Uses(SessionPlan plan) =>
        Block.Facts("Take it from", plan.Uses.Where(use => use.Draws.Count > 0).Select(use => (
            $"  {use.Item.Code}", (string?)string.Join(", ", use.SourceTexts(Style)))));

    private Block Costs(PlanCost cost) => Block.Facts("What it costs", [
        ("  In all", cost.PerSheet is { } each ? $"{cost.Total.Text(settings)}, {each.Text(settings)} a sheet"
            : $"{UnpricedStock.Mark(cost.Total, cost.IsComplete, Style)}; no figure a sheet"),
        ("  Prices", cost.Remark(Style) is { Length: > 0 } remark ? remark : null),
        ("  Film", cost.Film.Text(Style)),
        ("  Chemistry", (cost.Developer + cost.OtherChemistry + cost.Baths).Text(Style)),
        ("  Supplies", cost.Supplies.Text(Style)),
    ]);

    private static Block Cautions(SessionPlan plan) =>
        Block.Of("Cautions", plan.Cautions.Select(caution => "  " + caution));
}
