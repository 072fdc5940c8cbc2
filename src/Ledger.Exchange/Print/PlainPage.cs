namespace Ledger.Exchange.Print;

/// <summary>Writes a page as plain text, 72 columns wide, for any printer.</summary>
public static class PlainPage
{
    private const int Width = 72;

    /// <summary>Writes the page.</summary>
    public static void Write(PrintedPage page, TextWriter output)
    {
        var title = PrintedText.Plain(page.Title);
        foreach (var line in Wrap(title, ""))
            output.WriteLine(line);
        output.WriteLine(new string('=', Math.Min(title.Length, Width)));
        foreach (var block in page.Blocks)
        {
            output.WriteLine();
            foreach (var line in Lines(block))
                output.WriteLine(line.TrimEnd());
        }
    }

    private static IEnumerable<string> Lines(PageBlock block) => block switch
    {
        Heading heading => [.. Wrap(heading.Text, ""),
            new string('-', Math.Min(PrintedText.Plain(heading.Text).Length, Width))],
        Paragraph words => Wrap(words.Text, ""),
        Points points => points.Items.SelectMany(item => Wrap(item, points.AreCautions ? "! " : "- ")),
        LargeFigures figures => Figured(figures),
        Stations stations => stations.Items.SelectMany(Stationed),
        Grid grid => Aligned(grid),
        Ticks ticks => ticks.Items.SelectMany(item => Wrap(item, "[ ] ")),
        PencilBoxes boxes => Boxes(boxes.Count),
        Blanks blanks => blanks.Items.Select(item => $"{PrintedText.Plain(item)}: {new string('_', 24)}"),
        ColumnChart chart => PlainCharts.Of(chart, Width),
        ShareChart chart => PlainCharts.Of(chart, Width),
        StepChart chart => PlainCharts.Of(chart, Width),
        Labels labels => labels.Items.SelectMany(Framed),
        _ => throw new ArgumentException($"no line shows a {block.GetType().Name}", nameof(block)),
    };

    private static IEnumerable<string> Figured(LargeFigures figures)
    {
        var width = figures.Items.Max(figure => PrintedText.Plain(figure.Value).Length);
        return figures.Items.SelectMany(figure =>
        {
            var beside = figure.Beside.Length == 0 ? "" : $"  ({PrintedText.Plain(figure.Beside)})";
            return Wrap(PrintedText.Plain(figure.Label) + beside,
                $"  {PrintedText.Plain(figure.Value).PadLeft(width)}  ");
        });
    }

    private static IEnumerable<string> Stationed(Station station)
    {
        var figures = station.Time is { } time ? [.. station.Figures, time] : station.Figures;
        return
        [
            .. Lines(new Heading(station.Name)),
            .. station.Note.Length > 0 ? Wrap(station.Note, "") : [],
            .. figures.Count > 0 ? Figured(new(figures)) : [],
            .. station.Ticks.SelectMany(tick => Wrap(tick, "[ ] ")),
            "",
        ];
    }

    private static IEnumerable<string> Aligned(Grid grid)
    {
        var rows = grid.Rows.Prepend(grid.Titles).Select(row => row.Select(PrintedText.Plain).ToList()).ToList();
        var widths = Enumerable.Range(0, grid.Titles.Count).Select(i => rows.Max(row => row[i].Length)).ToList();
        return rows.Select(row => string.Join(
            "  ", row.Select((cell, i) => grid.IsFigure(i) ? cell.PadLeft(widths[i]) : cell.PadRight(widths[i]))));
    }

    private static IEnumerable<string> Boxes(int count)
    {
        for (var done = 0; done < count; done += 10)
            yield return $"{done + 1,5}  {string.Join(' ', Enumerable.Repeat("[ ]", Math.Min(10, count - done)))}";
    }

    private static IEnumerable<string> Framed(Label label)
    {
        var rule = $"+{new string('-', Width - 2)}+";
        var lines = new[] { label.Warning.ToUpperInvariant(), label.Title }.Concat(label.Lines)
            .Concat(label.SmallPrint).Where(line => line.Length > 0);
        return [rule, .. lines.SelectMany(line => Wrap(line, "", Width - 4))
            .Select(line => $"| {line.PadRight(Width - 4)} |"), rule, ""];
    }

    private static IEnumerable<string> Wrap(string text, string lead, int width = Width) => Wrapping.Of(
        string.Join(' ', PrintedText.Plain(text).Split(' ', StringSplitOptions.RemoveEmptyEntries)),
        width, lead, new string(' ', lead.Length));
}
