namespace Ledger.App.Commands.Plan;

/// <summary>A plan as a person reads it on the screen, in the light.</summary>
internal sealed class PlanText(SessionPlan plan, View view)
{
    public void WriteTo(TextWriter output)
    {
        output.WriteProse(
            $"{plan.Process.VersionName} on {Dates.Text(plan.Day)}: {Counted.Of(plan.Sheets, "sheet")}, "
                + $"{plan.Area.ToText(view.Style)} in {Counted.Of(plan.Batches.Count, "batch")}; "
            + (!plan.CanRun ? "not everything is there" : plan.IsSure
                ? "everything is there"
                : "what can be judged is there"), view.Width);
        Points("Cautions", plan.Cautions, output);
        output.WriteLine();
        Batches().WriteTo(output, view.Width);
        WriteOrder(output);
        output.WriteLine();
        Trays().WriteTo(output, view.Width);
        output.WriteLine();
        Uses().WriteTo(output, view.Width);
        WriteBaths(output);
        WriteCost(output);
        Points("Before you start", plan.Advice, output);
    }

    private TextTable Batches()
    {
        var table = new TextTable(
            Column.Right("batch"), Column.Left("sheets"), Column.Right("developer"), Column.Right("water"),
            Column.Right("time"), Column.Right("turn at"), Column.Right("shuffle"));
        foreach (var batch in plan.Batches)
            table.Add(
                batch.Number.ToString(CultureInfo.InvariantCulture),
                $"{batch.Sheets.Count} {batch.Film.Code}{(batch.Group.Length > 0 ? " " + batch.Group : "")}"
                    + $"{(batch.HasDummy ? " + dummy" : "")}",
                batch.Developer is { } developer ? Measured(developer) : "-",
                batch.Developer?.Water.ToText(view.Style) ?? "-",
                batch.Minutes is { } minutes ? GroupTimes.Clock(minutes) : "-",
                batch.TurnAtMinutes is { } turn ? GroupTimes.Clock(turn) : "-",
                batch.ShuffleEverySeconds is { } seconds ? $"every {Scaled.ToText(seconds, 1)} s" : "-");
        return table;
    }

    /// <summary>The sheets of which something is known; counted ones need no list.</summary>
    private void WriteOrder(TextWriter output)
    {
        if (plan.Batches.All(batch => batch.Sheets.All(sheet => sheet.ToString().Length == 0)))
            return;
        output.WriteLine();
        output.WriteLine("Sheets, in and out in this order:");
        foreach (var batch in plan.Batches)
            foreach (var sheet in batch.Sheets)
                output.WriteProse($"{batch.Number}. batch  {sheet.Number}  {sheet}".TrimEnd(), view.Width, "  ");
    }

    private string Measured(BatchDeveloper developer)
    {
        var exact = developer.Measured == developer.Need.Concentrate
            ? ""
            : $" ({developer.Need.Concentrate.ToText(view.Style)})";
        return string.Join(" + ", developer.OtherParts.Select(part => $"{part.Measured.ToText(view.Style)} {part.Name}")
            .Prepend(developer.Measured.ToText(view.Style) + exact));
    }

    private TextTable Trays()
    {
        var table = new TextTable(Column.Right(""), Column.Left("tray"), Column.Right("time"),
            Column.Right("°C"), Column.Left("goes in"));
        foreach (var tray in plan.Trays)
            table.Add(
                tray.Number.ToString(CultureInfo.InvariantCulture), tray.Name,
                tray.Minutes is { } minutes ? GroupTimes.Clock(minutes) : "",
                tray.Celsius is { } celsius ? Scaled.ToText(celsius, 1) : "",
                string.Join(" + ", tray.Parts.Select(part => $"{part.Amount?.ToText(view.Style)} {part.What}".Trim()))
                    + (tray.IsPerBatch ? ", fresh for each batch" : ""));
        return table;
    }

    private TextTable Uses()
    {
        var table = new TextTable(
            Column.Left("needed"), Column.Right(""), Column.Right("usable"), Column.Left(""),
            Column.Left("take it from"));
        var shortages = plan.Shortages.ToDictionary(shortage => shortage.Item.Code);
        foreach (var use in plan.Uses)
            if (shortages.TryGetValue(use.Item.Code, out var shortage))
                Add(table, shortage);
            else
                table.Add(
                    use.Item.Code, use.Needed.ToText(view.Style), use.Usable.ToText(view.Style), "",
                    string.Join(", ", use.SourceTexts(view.Style)));
        return table;
    }

    private void Add(TextTable table, Shortage shortage) => table.Add(
        shortage.Item.Code, shortage.Needed.ToText(view.Style), shortage.Usable.ToText(view.Style),
        $"{shortage.Missing.ToText(view.Style)} short", shortage.Cure);

    private void WriteBaths(TextWriter output)
    {
        if (plan.Baths.Count == 0)
            return;
        output.WriteLine();
        var table = new TextTable(Column.Left("bath"), Column.Right("before"), Column.Left(""),
            Column.Right("after"), Column.Left(""));
        foreach (var bath in plan.Baths)
            table.Add(
                bath.Bath?.Code ?? bath.Item, bath.Before.ToText(view.Style), "->", bath.After.ToText(view.Style),
                bath.Word.Length > 0 ? $"{bath.Word}: {bath.Proposal}" : bath.IsFirst ? "fits" : "second bath");
        table.WriteTo(output, view.Width);
    }

    private void WriteCost(TextWriter output)
    {
        var cost = plan.Cost;
        output.WriteLine();
        output.WriteProse(
            $"It costs {UnpricedStock.Mark(cost.Total, cost.IsComplete, view.Style)} {view.Currency}".TrimEnd()
            + (cost.PerSheet is { } each ? $", {each.Text(view.Style)} a sheet" : "")
            + $": film {cost.Film.Text(view.Style)}, developer {cost.Developer.Text(view.Style)}, "
            + $"other chemistry {(cost.OtherChemistry + cost.Baths).Text(view.Style)}, supplies "
            + $"{cost.Supplies.Text(view.Style)}.", view.Width);
        if (cost.Remark(view.Style) is { Length: > 0 } remark)
            output.WriteProse($"{remark}.", view.Width);
    }

    private void Points(string title, IReadOnlyList<string> sentences, TextWriter output)
    {
        if (sentences.Count == 0)
            return;
        output.WriteLine();
        output.WriteLine($"{title}:");
        foreach (var sentence in sentences)
            output.WriteProse(sentence, view.Width, "  ");
    }
}
