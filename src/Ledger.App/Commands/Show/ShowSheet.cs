using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Costing;
using Ledger.Core.Film;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.App.Commands.Show;

/// <summary>show sheet X: one sheet's whole story.</summary>
internal sealed class ShowSheet : ShowCommand<SheetStory>
{
    private readonly Argument<string> _sheet = Typed.Argument(
        "sheet", Text.NotEmpty, "a negative's number such as 2025-014, a sheet's such as #12, or a holder side for the last sheet in it")
        .Offered(Offers.Sheets);

    public ShowSheet(Workbench bench)
        : base(bench, "sheet", "Shows one sheet's story: box, holder, exposure, session, the sheets beside it, cost, negative number.", """
            Example: trayledger show sheet 2025-014
            """) =>
        Arguments.Add(_sheet);

    protected override SheetStory Read(View view, ParseResult parse)
    {
        var name = parse.GetRequiredValue(_sheet).Trim();
        return view.Ledger.Story(name, view.AsOf) ?? throw new RefusedByCommandException(
            view.Ledger.Former(name)?.Sentence(name)
            ?? $"there is no sheet \"{name}\"; name a negative such as 2025-014, a sheet such as #12, or a holder side such as E07-2");
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

    protected override void WriteJson(SheetStory story, View view, Utf8JsonWriter json)
    {
        json.WriteDate("asOf", view.AsOf);
        json.WriteString("sheet", story.Id.ToString());
        json.WriteString("item", story.Item);
        json.WriteString("batch", story.Batch);
        json.WriteString("box", story.Box);
        json.WriteString("place", story.Place);
        json.WriteMoney("film", story.IsPriced ? story.Film : null, view.Currency);
        json.WriteString("side", story.Side);
        json.WriteDate("loadedOn", story.LoadedOn);
        json.WriteDate("exposedOn", story.Exposure?.Date);
        json.WriteString("group", story.Exposure?.Group ?? story.Development?.Group);
        json.WriteString("subject", story.Exposure?.Subject);
        var developed = story.Development;
        json.WriteString("session", developed?.Session);
        json.WriteDate("developedOn", developed?.Date);
        json.WriteString("fate", developed?.Fate.Name());
        json.WriteString("cause", developed?.Cause?.Name());
        json.WriteString("negative", developed?.Negative);
        json.WriteMoney("total", developed?.Cost?.Total, view.Currency);
        json.WriteBoolean("isComplete", developed?.Cost?.IsComplete ?? story.IsPriced);
        json.WriteStartArray("trayMates");
        foreach (var mate in developed?.TrayMates ?? [])
            json.WriteStringValue(mate);
        json.WriteEndArray();
        json.WriteString("filedIn", story.FiledIn);
        json.WriteStartArray("findings");
        foreach (var finding in story.Findings)
        {
            json.WriteStartObject();
            json.WriteNumber("entry", finding.Entry);
            json.WriteDate("date", finding.Date);
            json.WriteString("what", finding.What.Name());
            json.WriteString("result", finding.Result);
            if (finding.HasPassed is { } passed)
                json.WriteBoolean("passed", passed);
            else
                json.WriteNull("passed");
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteSteps(story, json);
    }

    private static void WriteSteps(SheetStory story, Utf8JsonWriter json)
    {
        json.WriteStartArray("steps");
        foreach (var step in story.Steps)
        {
            json.WriteStartObject();
            json.WriteNumber("entry", step.Entry);
            json.WriteDate("date", step.Date);
            json.WriteString("summary", step.Summary);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static IEnumerable<(string Name, string Text)> Lines(SheetStory story, View view)
    {
        yield return ("now in", story.FiledIn is { } filed ? $"{story.Place}, filed in {filed}" : story.Place);
        yield return ("came out of", story.Batch.Length > 0 ? $"{story.Box}, batch {story.Batch}" : story.Box);
        if (story.LoadedOn is { } loaded)
            yield return ("loaded", $"{Dates.Text(loaded)} into {story.Side}");
        if (story.Exposure is { } exposure)
            yield return ("exposed", $"{Dates.Text(exposure.Date)} for {exposure.Group}"
                + (exposure.Subject.Length > 0 ? $": {exposure.Subject}" : ""));
        if (story.Development is not { } developed)
        {
            yield return ("cost", story.IsPriced ? $"{story.Film.Text(view.Style)} {view.Currency}, the film alone".TrimEnd()
                : "unknown: its film came without a price");
            yield break;
        }

        yield return ("developed", $"{Dates.Text(developed.Date)} in {developed.Session} as {developed.Name}, {developed.Group}");
        yield return ("became", developed.Cause is { } cause ? $"{developed.Fate.Name()}: {cause.Name()}" : developed.Fate.Name());
        yield return ("in the tray with", developed.TrayMates.Count == 0 ? "no other sheet" : string.Join(", ", developed.TrayMates));
        foreach (var finding in story.Findings)
            yield return (finding.What.IsTest() ? "tested" : "done", $"{Dates.Text(finding.Date)}, {finding.Text}");
        if (developed.Cost is { } cost)
            yield return ("cost", $"{UnpricedStock.Mark(cost.Total, cost.IsComplete, view.Style)} {view.Currency}: "
                + $"film {UnpricedStock.Mark(cost.Film, story.IsPriced, view.Style)}, developer {cost.Developer.Text(view.Style)}, "
                + $"other chemistry {cost.OtherChemistry.Text(view.Style)}, supplies {cost.Supplies.Text(view.Style)}"
                + (cost.IsComplete ? "" : "; something in it came without a price"));
    }
}
