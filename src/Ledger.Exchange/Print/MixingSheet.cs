using Ledger.Core.Measures;
using Ledger.Core.Planning;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Exchange.Print;

/// <summary>The plan of a session, made in the light to be read before lights-out: what is measured, in which order, and boxes for the pencil.</summary>
public static class MixingSheet
{
    /// <summary>The sheet of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="name">The session's name; may be empty.</param>
    /// <param name="style">The units of the user.</param>
    public static PrintedPage Of(SessionPlan plan, string name, MeasureStyle style) => new(
        $"{(plan.CanRun ? "" : "CANNOT RUN YET. ")}Mixing sheet{(name.Length > 0 ? $": {name}" : "")}, {Dates.Text(plan.Day)}",
        [
            new Paragraph($"{plan.Process.VersionName}: {Films(plan)}, {plan.Area.ToText(style)} in {Counted.Of(plan.Batches.Count, "batch")}"),
            new Points(plan.Cautions, AreCautions: true),
            .. Before(plan, style),
            .. plan.Trays.SelectMany(tray => Tray(tray, plan, style)),
            new Heading("Batches"),
            new Paragraph("Sheets go in and come out in the order of the list. A shuffle moves the lowest sheet of the stack to the top."),
            .. plan.Batches.SelectMany(batch => Batch(batch, style)),
            .. Supplies(plan, style),
            new Blanks(["temperature", "began", "ended", "remarks"]),
        ]);

    private static string Films(SessionPlan plan) => string.Join(", ", plan.Batches.GroupBy(batch => batch.Film.Code)
        .Select(film => $"{film.First().Film.Of(film.Sum(batch => (long)batch.Sheets.Count))} of {film.First().Film.Name}"));

    private static IEnumerable<PageBlock> Before(SessionPlan plan, MeasureStyle style)
    {
        var words = plan.Shortages
            .Select(shortage => $"{shortage.Item.Code}: {shortage.Missing.ToText(style)} short; {shortage.Cure}")
            .Concat(plan.Advice).ToList();
        if (!plan.CanRun)
        {
            yield return new Heading("This session cannot run as it stands: not everything is there");
            yield return new Points(words);
        }
        else if (words.Count > 0)
        {
            yield return new Heading("Before you start");
            yield return new Points(words);
        }
    }

    private static IEnumerable<PageBlock> Tray(PlannedTray tray, SessionPlan plan, MeasureStyle style)
    {
        var facts = new[]
        {
            tray.Minutes is { } minutes ? GroupTimes.Clock(minutes) : "",
            tray.Celsius is { } celsius ? $"{Scaled.ToText(celsius, 1)} °C" : "",
            tray.IsPerBatch ? "fresh for each batch" : "",
        };
        yield return new Heading(string.Join(", ", facts.Where(fact => fact.Length > 0).Prepend($"{tray.Number}. {tray.Name}")));
        if (tray.Role == ItemRole.Developer && plan.Batches.DistinctBy(batch => (batch.Developer?.Measured, batch.Developer?.Need.WorkingVolume)).Count() > 1)
            yield return new Paragraph("Each batch has its own figures below.");
        else if (tray.Parts.Count > 0)
            yield return new LargeFigures([.. tray.Parts.Select(part => Part(part, style))]);
        if (tray.Note.Length > 0)
            yield return new Paragraph(tray.Note);
    }

    private static Figure Part(TrayPart part, MeasureStyle style) => new(
        part.Amount?.ToText(style) ?? "fill", part.What, part.Exact is { } exact ? $"exactly {exact.ToText(style)}" : "");

    private static IEnumerable<PageBlock> Batch(PlannedBatch batch, MeasureStyle style)
    {
        var group = batch.Group.Length > 0 ? $", {batch.Group}" : "";
        yield return new Heading($"Batch {batch.Number}: {batch.Film.Of(batch.Sheets.Count)} of {batch.Film.Name}{group}");
        var figures = new List<Figure>();
        if (batch.Developer is { } developer)
        {
            figures.Add(Measured(developer.Item.Code, developer.Measured, developer.Need.Concentrate, style));
            figures.AddRange(developer.OtherParts.Select(part => Measured(part.Name, part.Measured, part.Exact, style)));
            figures.Add(new(developer.Water.ToText(style), $"water, to make {developer.Need.WorkingVolume.ToText(style)}"));
        }

        if (batch.Minutes is { } minutes)
            figures.Add(new(GroupTimes.Clock(minutes), "develop"));
        if (batch.TurnAtMinutes is { } turn)
            figures.Add(new(GroupTimes.Clock(turn), "turn the stack"));
        if (batch.ShuffleEverySeconds is { } seconds)
            figures.Add(new($"{Scaled.ToText(seconds, 1)} s", batch.InTray == 1 ? "shuffle the sheet" : "shuffle a sheet"));
        if (figures.Count > 0)
            yield return new LargeFigures(figures);
        yield return new Ticks([.. batch.Sheets.Select(Sheet), .. batch.HasDummy ? ["a dummy: a rejected sheet beside the lone one"] : Array.Empty<string>()]);
    }

    private static Figure Measured(string what, Volume measured, Volume exact, MeasureStyle style) =>
        new(measured.ToText(style), what, measured == exact ? "" : $"exactly {exact.ToText(style)}");

    private static string Sheet(PlannedSheet sheet) => $"{sheet.Number}. {sheet}".TrimEnd().TrimEnd('.') + (sheet.ToString().Length == 0 ? "." : "");

    /// <summary>Where everything is taken from, first expired first out.</summary>
    private static IEnumerable<PageBlock> Supplies(SessionPlan plan, MeasureStyle style)
    {
        var draws = plan.Uses.SelectMany(use => use.SourceTexts(style)).ToList();
        if (draws.Count == 0)
            yield break;
        yield return new Heading("Take out");
        yield return new Ticks(draws);
    }
}
