namespace Ledger.Terminal.Blocks;

/// <summary>Holders, sides and sheets in the details pane.</summary>
internal static class HolderBlocks
{
    /// <summary>A side in a table's cell: "1 exposed N-1, 3 d".</summary>
    public static string Short(SideReading side, FilmSettings limits)
    {
        var what = side.State.ToString().ToLowerInvariant();
        var state = side.Side.OutOfService is null ? what : side.Sheet is null ? "out" : $"out, {what}";
        var group = side.Sheet?.Exposure is { } exposure ? $" {exposure.Group}" : "";
        var days = side.Days is { } number ? $", {number} d{(side.IsOverdue(limits) ? "!" : "")}" : "";
        return $"{side.Side.Name} {state}{group}{days}";
    }

    /// <summary>A holder with its sides.</summary>
    public static Block Facts(Holder holder, Holdings holdings) =>
        Block.Facts($"Holder {holder.Code}, {holder.Format}", [
            .. holder.Sides.Select(
                side => ($"Side {side.Name}", (string?)Long(holdings.Film.Read(side, holdings.AsOf), holdings))),
            ("Cleaned", holder.CleanedOn is { } day
                ? $"{Dates.Text(day)}{(holder.IsBagged ? ", bagged" : "")}"
                : "never"),
            ("To do", holder.CleanBeforeLoad is { } dirty ? $"clean before you load: {dirty}" : null),
            ("Notch", holder.Notch),
            ("Bought", holder.BoughtOn is { } bought ? Dates.Text(bought) : null),
            ("Slides", holdings.Settings.Film.SlideConvention),
        ]);

    /// <summary>A box of exposed sheets.</summary>
    public static Block Facts(ExposedBox box, Holdings holdings) => Block.Facts($"Exposed sheets \"{box.Code}\"", [
        ("Sheets", Counted.Of(holdings.Film.At(box.Place).Count(), "sheet")),
        .. holdings.Film.At(box.Place).Select(sheet =>
            (sheet.SideCode, (string?)$"{Dates.Text(sheet.Exposure!.Date)} {sheet.Exposure.Subject}".TrimEnd())),
    ]);

    /// <summary>A sheet's story.</summary>
    public static IEnumerable<Block> Story(SheetStory story, Settings settings)
    {
        var developed = story.Development;
        yield return Block.Facts($"{developed?.Negative ?? story.Id.ToString()}: a sheet of {story.Item}", [
            ("Now in", story.Place),
            ("Filed in", story.FiledIn),
            ("Came out of", story.Batch.Length > 0 ? $"{story.Box}, {story.Batch}" : story.Box),
            ("Loaded", story.LoadedOn is { } loaded ? $"{Dates.Text(loaded)} into {story.Side}" : null),
            ("Exposed", story.Exposure is { } exposure ? $"{Dates.Text(exposure.Date)} for {exposure.Group}" : null),
            ("Subject", story.Exposure?.Subject),
            ("Developed", developed is null ? null
                : $"{Dates.Text(developed.Date)} in {developed.Session} as {developed.Name}, {developed.Group}"),
            ("Became",
                developed is null ? null : developed.Cause is { } cause ? $"{developed.Fate.Name()}: {cause.Name()}"
                    : developed.Fate.Name()),
            ("Beside", developed is null ? null : developed.TrayMates.Count == 0 ? "no other sheet"
                : string.Join(", ", developed.TrayMates)),
            .. story.Findings.Select(finding => (finding.What.IsTest() ? "Tested" : "Done",
                (string?)$"{Dates.Text(finding.Date)}: {finding.Text}")),
            ("Cost", developed?.Cost is { } cost
                ? cost.Total.Text(settings)
                : $"{story.Film.Text(settings)}, the film alone"),
        ]);
        yield return Block.Of("What happened to it",
            story.Steps.Select(step => $"{Dates.Text(step.Date)}  {step.Summary}"));
    }

    private static string Long(SideReading side, Holdings holdings)
    {
        var parts = new List<string> { side.StateName };
        if (side.Sheet is { } sheet)
            parts.Add($"{string.Join(", ", sheet.Marks.Prepend(sheet.Item))}, loaded {Dates.Text(sheet.LoadedOn)}");
        if (side.Sheet?.Exposure is { } exposure)
            parts.Add($"exposed {Dates.Text(exposure.Date)} for {exposure.Group} {exposure.Subject}".TrimEnd());
        if (side.IsOverdue(holdings.Settings.Film))
            parts.Add($"{Counted.Of(side.Days ?? 0, "day")}, longer than your limit");
        if (side.Side.OutOfService is { } reason)
            parts.Add(reason);
        if (side.Side.Faults.Count > 0)
            parts.Add(
                $"spoiled {string.Join(", ", side.Side.Faults
                    .Select(fault => $"{fault.Sheets} {fault.Cause.Name()}"))}");
        return string.Join("; ", parts);
    }
}
