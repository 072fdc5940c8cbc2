namespace Ledger.App.Commands.Show;

/// <summary>show holders: every holder with its sides, and the boxes of exposed sheets.</summary>
internal sealed class ShowHolders(Workbench bench)
    : ShowCommand<FilmRegister>(bench, "holders",
        "Shows the film holders: what is in each side and for how long, and the boxes of exposed sheets.",
        "Example: trayledger show holders", HoldersShape.Of)
{
    protected override FilmRegister Read(View view, ParseResult parse) => view.Holdings.Film;

    protected override void WriteText(FilmRegister film, View view, TextWriter output)
    {
        if (!film.Holders.Any())
            output.WriteLine("No holder is registered: record one with `trayledger record holder`.");
        else
            output.WriteProse($"Slides: {view.Holdings.Settings.Film.SlideConvention}", view.Width);
        var table = new TextTable(Column.Left("holder"), Column.Left("format"), Column.Left("sides"), Column.Left(""),
            Column.Left("cleaned"));
        foreach (var holder in film.Holders)
            Add(table, holder, [.. holder.Sides.Select(side => film.Read(side, view.AsOf))]);
        table.WriteTo(output, view.Width);
        WriteRemarks(film, view, output);
        WriteBoxes(film, view, output);
    }

    /// <summary>Two sides a line, so that a holder reads like its two faces.</summary>
    private static void Add(TextTable table, Holder holder, SideReading[] sides)
    {
        for (var i = 0; i < sides.Length; i += 2)
            table.Add(
                i == 0 ? holder.Code : "",
                i == 0 ? holder.Format.Code : "",
                Cell(sides[i]),
                i + 1 < sides.Length ? Cell(sides[i + 1]) : "",
                i == 0 && holder.CleanedOn is { } cleaned ? Dates.Text(cleaned) : "");
    }

    private static string Cell(SideReading side)
    {
        var (state, isOut) = (side.State.ToString().ToLowerInvariant(), side.Side.OutOfService is not null);
        if (side.Sheet is not { } sheet)
            return $"{side.Side.Name} {(isOut ? "out" : state)}";
        var group = sheet.Exposure is { } exposure ? $" {exposure.Group}" : "";
        return $"{side.Side.Name} {(isOut ? "out, " : "")}{state} {sheet.Item}{group} {side.Days} d";
    }

    private static void WriteRemarks(FilmRegister film, View view, TextWriter output)
    {
        var table = new TextTable(Column.Left("side"), Column.Left("remarks"));
        foreach (var side in film.Holders.SelectMany(holder => holder.Sides))
            if (string.Join("; ", Remarks(film.Read(side, view.AsOf), view)) is { Length: > 0 } remarks)
                table.Add(side.Code, remarks);
        if (table.IsEmpty)
            return;
        output.WriteLine();
        table.WriteTo(output, view.Width);
    }

    private static IEnumerable<string> Remarks(SideReading side, View view)
    {
        var limits = view.Holdings.Settings.Film;
        if (side.IsOverdue(limits))
            yield return side.State == SideState.Loaded ? $"longer than {Counted.Of(limits.LoadedDays, "day")}"
                : $"longer than {Counted.Of(limits.ExposedDays, "day")}";
        if (side.Side.OutOfService is { } reason)
            yield return reason;
        if (side.Side.Faults.Count > 0)
            yield return "spoiled "
                + $"{string.Join(", ", side.Side.Faults.Select(fault => $"{fault.Sheets} {fault.Cause.Name()}"))}";
        if (side.Sheet is { } sheet)
            yield return string.Join(", ", sheet.Marks);
        if (side.Sheet?.Exposure is { Subject.Length: > 0 } exposure)
            yield return exposure.Subject;
    }

    private static void WriteBoxes(FilmRegister film, View view, TextWriter output)
    {
        var boxes = new TextTable(Column.Left("exposed box"), Column.Right("sheets"), Column.Left("oldest exposure"));
        foreach (var box in film.ExposedBoxes)
        {
            var sheets = film.At(box.Place).ToList();
            boxes.Add(box.Code, Scaled.ToText(sheets.Count, 0), Dates.Text(sheets.Min(sheet => sheet.Exposure!.Date)));
        }

        if (boxes.IsEmpty)
            return;
        output.WriteLine();
        boxes.WriteTo(output, view.Width);
    }
}
