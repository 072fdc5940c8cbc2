namespace Ledger.App.Commands.Show;

/// <summary>show sheet X: one sheet's whole story.</summary>
internal sealed class ShowSheet : ShowCommand<SheetStory>
{
    private static readonly Shape<SheetStory> _shape = new Shape<SheetStory>()
        .AsOf()
        .Text("sheet", story => story.Id.ToString())
        .Text("item", story => story.Item)
        .Text("batch", story => story.Batch, "the film's emulsion number")
        .Text("box", story => story.Box)
        .Text("place", story => story.Place)
        .Money("film", story => story.IsPriced ? story.Film : null)
        .Word("side", story => story.Side)
        .Date("loadedOn", story => story.LoadedOn)
        .Date("exposedOn", story => story.Exposure?.Date)
        .Word("group", story => story.Exposure?.Group ?? story.Development?.Group)
        .Word("subject", story => story.Exposure?.Subject)
        .Word("session", story => story.Development?.Session)
        .Date("developedOn", story => story.Development?.Date)
        .Word("fate", story => story.Development?.Fate.Name())
        .Word("cause", story => story.Development?.Cause?.Name())
        .Word("negative", story => story.Development?.Negative)
        .Money("total", story => story.Development?.Cost?.Total)
        .Flag("isComplete", story => story.Development?.Cost?.IsComplete ?? story.IsPriced)
        .Texts("trayMates", story => story.Development?.TrayMates ?? [])
        .Word("filedIn", story => story.FiledIn)
        .Table("findings", (story, _) => story.Findings, new Shape<SheetFinding>()
            .Whole("entry", finding => finding.Entry)
            .Date("date", finding => finding.Date)
            .Text("what", finding => finding.What.Name())
            .Word("result", finding => finding.Result)
            .Flag("passed", finding => finding.HasPassed))
        .Table("steps", (story, _) => story.Steps, new Shape<SheetStep>()
            .Whole("entry", step => step.Entry)
            .Date("date", step => step.Date)
            .Text("summary", step => step.Summary))
        .Leading("steps");

    private readonly Argument<string> _sheet = Typed.Argument(
        "sheet", Text.NotEmpty,
        "a negative's number such as 2025-014, a sheet's such as #12, or a holder side for the last sheet in it")
        .Offered(Offers.Sheets);

    public ShowSheet(Workbench bench)
        : base(bench, "sheet",
            "Shows one sheet's story: box, holder, exposure, session, the sheets beside it, cost, negative number.", """
            Example: trayledger show sheet 2025-014
            """, _shape) =>
        Arguments.Add(_sheet);

    protected override SheetStory Read(View view, ParseResult parse)
    {
        var name = parse.GetRequiredValue(_sheet).Trim();
        return view.Ledger.Story(name, view.AsOf) ?? throw new RefusedByCommandException(
            view.Ledger.Former(name)?.Sentence(name)
            ?? $"there is no sheet \"{name}\"; name a negative such as 2025-014, a sheet such as #12, or a holder side "
            + "such as E07-2");
    }

    protected override void WriteText(SheetStory story, View view, TextWriter output)
    {
        output.WriteLine($"{story.Development?.Negative ?? story.Id.ToString()}: a sheet of {story.Item}");
        var table = new TextTable(Column.Left(""), Column.Left(""));
        foreach (var (name, text) in Lines(story, view))
            table.Add("  " + name, text);
        table.WriteTo(output, view.Width);
        output.WriteLine();
        var steps = new TextTable(Column.Left("date"), Column.Right("entry"), Column.Left("what"));
        foreach (var step in story.Steps)
            steps.Add(Dates.Text(step.Date), Scaled.ToText(step.Entry, 0), step.Summary);
        steps.WriteTo(output, view.Width);
    }

    private static IEnumerable<(string Name, string Text)> Lines(SheetStory story, View view)
    {
        yield return ("now in", story.FiledIn is { } filed ? $"{story.Place}, filed in {filed}" : story.Place);
        yield return ("came out of", story.Batch.Length > 0 ? $"{story.Box}, emulsion {story.Batch}" : story.Box);
        if (story.LoadedOn is { } loaded)
            yield return ("loaded", $"{Dates.Text(loaded)} into {story.Side}");
        if (story.Exposure is { } exposure)
            yield return ("exposed", $"{Dates.Text(exposure.Date)} for {exposure.Group}"
                + (exposure.Subject.Length > 0 ? $": {exposure.Subject}" : ""));
        if (story.Development is not { } developed)
        {
            yield return ("cost",
                story.IsPriced ? $"{story.Film.Text(view.Style)} {view.Currency}, the film alone".TrimEnd()
                    : "unknown: its film came without a price");
            yield break;
        }

        yield return ("developed",
            $"{Dates.Text(developed.Date)} in {developed.Session} as {developed.Name}, {developed.Group}");
        yield return ("became", developed.Cause is { } cause
            ? $"{developed.Fate.Name()}: {cause.Name()}"
            : developed.Fate.Name());
        yield return ("in the tray with", developed.TrayMates.Count == 0
            ? "no other sheet"
            : string.Join(", ", developed.TrayMates));
        foreach (var finding in story.Findings)
            yield return (finding.What.IsTest() ? "tested" : "done", $"{Dates.Text(finding.Date)}, {finding.Text}");
        if (developed.Cost is { } cost)
            yield return ("cost", $"{UnpricedStock.Mark(cost.Total, cost.IsComplete, view.Style)} {view.Currency}: "
                + $"film {UnpricedStock.Mark(cost.Film, story.IsPriced, view.Style)}, developer "
                + $"{cost.Developer.Text(view.Style)}, other chemistry {cost.OtherChemistry.Text(view.Style)}, "
                + $"supplies {cost.Supplies.Text(view.Style)}"
                + (cost.IsComplete ? "" : "; something in it came without a price"));
    }
}
