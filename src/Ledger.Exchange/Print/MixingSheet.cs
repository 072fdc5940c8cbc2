namespace Ledger.Exchange.Print;

/// <summary>
/// The plan of a session, made in the light to be read before lights-out: what is measured, in which order, and boxes
/// for the pencil.
/// </summary>
public static class MixingSheet
{
    /// <summary>The sheet of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="name">The session's name; may be empty.</param>
    /// <param name="style">The units of the user.</param>
    public static PrintedPage Of(SessionPlan plan, string name, MeasureStyle style) => new(
        $"{(plan.CanRun ? "" : "CANNOT RUN YET. ")}Mixing sheet{(name.Length > 0 ? $": {name}" : "")}, "
            + $"{Dates.Text(plan.Day)}",
        [
            new Paragraph(
                $"{plan.Process.VersionName}: {Films(plan)}, {plan.Area.ToText(style)} in "
                    + $"{Counted.Of(plan.Batches.Count, "batch")}"),
            new Points(plan.Cautions, AreCautions: true),
            .. Before(plan, style),
            new Stations([.. Steps(plan, style)]),
            new Paragraph(
                "Sheets go in and come out in the order of the list. A shuffle moves the lowest sheet to the top."),
            .. Supplies(plan, style),
            new Blanks(["temperature", "began", "ended", "remarks"]),
        ]) { IsClose = true };

    private static string Films(SessionPlan plan) => string.Join(", ", plan.Batches.GroupBy(batch => batch.Film.Code)
        .Select(film =>
            $"{film.First().Film.Of(film.Sum(batch => (long)batch.Sheets.Count))} of {film.First().Film.Name}"));

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

    /// <summary>The trays in order; the batches, each with its own time, stand beside the developer.</summary>
    private static IEnumerable<Station> Steps(SessionPlan plan, MeasureStyle style)
    {
        var differ = plan.Batches
            .DistinctBy(batch => (batch.Developer?.Measured, batch.Developer?.Need.WorkingVolume)).Count() > 1;
        var beside = plan.Trays.FirstOrDefault(tray => tray.Role == ItemRole.Developer);
        foreach (var tray in plan.Trays)
        {
            yield return Tray(tray, tray == beside && differ, style);
            if (tray == beside)
                foreach (var batch in plan.Batches)
                    yield return Batch(batch, differ, style);
        }

        if (beside is null)
            foreach (var batch in plan.Batches)
                yield return Batch(batch, differ, style);
    }

    private static Station Tray(PlannedTray tray, bool isByBatch, MeasureStyle style) => new(
        $"{tray.Number}. {tray.Name}",
        isByBatch ? [] : [.. tray.Parts.Select(part => Part(part, style))],
        string.Join("; ", new[]
        {
            isByBatch ? "each batch has its own figures" : tray.IsPerBatch ? "fresh for each batch" : "", tray.Note,
        }.Where(words => words.Length > 0)))
    {
        Time = (tray.Minutes, tray.Celsius) switch
        {
            ({ } minutes, { } celsius) => new(GroupTimes.Clock(minutes), $"at {Warm(celsius)}"),
            ({ } minutes, null) => new(GroupTimes.Clock(minutes), ""),
            (null, { } celsius) => new(Warm(celsius), ""),
            _ => null,
        },
    };

    private static string Warm(decimal celsius) => $"{Scaled.ToText(celsius, 1)} °C";

    private static Figure Part(TrayPart part, MeasureStyle style) => new(
        part.Amount?.ToText(style) ?? "fill", part.What,
        part.Exact is { } exact ? $"exactly {exact.ToText(style)}" : "");

    private static Station Batch(PlannedBatch batch, bool isByBatch, MeasureStyle style)
    {
        var figures = new List<Figure>();
        if (isByBatch && batch.Developer is { } developer)
        {
            figures.Add(Measured(developer.Item.Code, developer.Measured, developer.Need.Concentrate, style));
            figures.AddRange(
                developer.OtherParts.Select(part => Measured(part.Name, part.Measured, part.Exact, style)));
            figures.Add(new(developer.Water.ToText(style),
                $"water, to make {developer.Need.WorkingVolume.ToText(style)}"));
        }

        if (batch.TurnAtMinutes is { } turn)
            figures.Add(new(GroupTimes.Clock(turn), "turn the stack"));
        if (batch.ShuffleEverySeconds is { } seconds)
            figures.Add(new($"{Scaled.ToText(seconds, 1)} s",
                batch.InTray == 1 ? "shuffle the sheet" : "shuffle a sheet"));
        return new(
            $"batch {batch.Number}", figures,
            $"{batch.Film.Of(batch.Sheets.Count)} of {batch.Film.Name}"
                + $"{(batch.Group.Length > 0 ? $", {batch.Group}" : "")}")
        {
            Time = batch.Minutes is { } minutes ? new(GroupTimes.Clock(minutes), "develop") : null,
            Ticks =
            [
                .. batch.Sheets.Select(Sheet),
                .. batch.HasDummy ? ["a dummy: a rejected sheet beside the lone one"] : Array.Empty<string>(),
            ],
            IsWithin = true,
        };
    }

    private static Figure Measured(string what, Volume measured, Volume exact, MeasureStyle style) =>
        new(measured.ToText(style), what, measured == exact ? "" : $"exactly {exact.ToText(style)}");

    private static string Sheet(PlannedSheet sheet) =>
        $"{sheet.Number}. {sheet}".TrimEnd().TrimEnd('.') + (sheet.ToString().Length == 0 ? "." : "");

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
