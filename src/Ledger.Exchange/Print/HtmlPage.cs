namespace Ledger.Exchange.Print;

/// <summary>
/// Writes a page as one HTML file that carries its own style and loads nothing: no script, no picture, no font, no
/// address. Its content policy forbids it to.
/// </summary>
public static class HtmlPage
{
    /// <summary>A cell of so many characters is not broken: "3000 sq in".</summary>
    private const int Short = 14;

    /// <summary>A note of more characters has a line of its own, across all columns.</summary>
    private const int Long = 45;

    private const string Head = """
        <!doctype html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
        <meta name="viewport" content="width=device-width">
        """;

    /// <summary>Writes the page.</summary>
    public static void Write(PrintedPage page, TextWriter output)
    {
        var title = PrintedText.Html(page.Title);
        output.WriteLine(Head);
        output.WriteLine($"<title>{title}</title>");
        output.WriteLine($"<style>\n{PageStyle.Css}\n{Own(page)}\n</style>");
        output.WriteLine($"</head>\n<body{(page.IsClose ? " class=\"close\"" : "")}>");
        if (!page.Blocks.All(block => block is Labels))
            output.WriteLine($"<h1>{title}</h1>");
        WriteBlocks(page, output);
        output.WriteLine("</body>\n</html>");
    }

    /// <summary>
    /// What the style says of this page only: where its labels lie, or its title at the head of each sheet of paper.
    /// </summary>
    private static string Own(PrintedPage page) => page.Blocks.OfType<Labels>().FirstOrDefault() is { } labels
        ? PageStyle.Of(labels.Sheet, LabelType.Of(labels.Items, labels.Sheet)
            ?? throw new ArgumentException(LabelType.Refusal(labels.Items, labels.Sheet), nameof(page)))
        : PageStyle.Running(page.Title);

    /// <summary>A heading and what stands below it stay on one sheet of paper where there is room.</summary>
    private static void WriteBlocks(PrintedPage page, TextWriter output)
    {
        var isInPart = false;
        foreach (var block in page.Blocks)
        {
            if (block is Heading or Blanks or Points { AreCautions: true })
            {
                output.Write(isInPart ? "</div>\n" : "");
                output.Write((isInPart = block is Heading) ? "<div class=\"part\">\n" : "");
            }

            Write(block, output);
        }

        output.Write(isInPart ? "</div>\n" : "");
    }

    private static void Write(PageBlock block, TextWriter output)
    {
        switch (block)
        {
            case Heading heading: output.WriteLine($"<h2>{PrintedText.Html(heading.Text)}</h2>"); break;
            case Paragraph words: output.WriteLine($"<p>{PrintedText.Html(words.Text)}</p>"); break;
            case Points points: List(points.AreCautions ? "cautions" : "points", points.Items, output); break;
            case LargeFigures figures: Write(figures, output); break;
            case Stations stations: Write(stations, output); break;
            case Grid grid: Write(grid, output); break;
            case Ticks ticks: List("ticks", ticks.Items, output); break;
            case PencilBoxes boxes: Write(boxes, output); break;
            case Blanks blanks: List("blanks", blanks.Items, output); break;
            case ColumnChart chart: output.WriteLine(SvgCharts.Of(chart)); break;
            case ShareChart chart: output.WriteLine(SvgCharts.Of(chart)); break;
            case StepChart chart: output.WriteLine(SvgCharts.Of(chart)); break;
            case Labels labels: Write(labels, output); break;
            default: throw new ArgumentException($"no markup shows a {block.GetType().Name}", nameof(block));
        }
    }

    private static void List(string name, IEnumerable<string> items, TextWriter output)
    {
        output.WriteLine($"<ul class=\"{name}\">");
        foreach (var item in items)
            output.WriteLine($"<li>{PrintedText.Html(item)}</li>");
        output.WriteLine("</ul>");
    }

    private static void Write(LargeFigures figures, TextWriter output)
    {
        output.WriteLine("<div class=\"figures\">");
        foreach (var figure in figures.Items)
        {
            var beside = figure.Beside.Length == 0 ? "" : $" <small>{PrintedText.Html(figure.Beside)}</small>";
            output.WriteLine(
                $"<div><b>{PrintedText.Html(figure.Value)}</b><span>{PrintedText.Html(figure.Label)}"
                    + $"{beside}</span></div>");
        }

        output.WriteLine("</div>");
    }

    private static void Write(Stations stations, TextWriter output)
    {
        foreach (var station in stations.Items)
        {
            output.WriteLine($"<div class=\"station{(station.IsWithin ? " within" : "")}\">");
            output.WriteLine(Cell("name", station.Name, station.Note.Length > Long ? "" : station.Note));
            output.WriteLine($"<div class=\"amounts\">{string.Concat(station.Figures.Select(Stacked))}</div>");
            output.WriteLine(station.Time is { } time ? Cell("time", time.Value, time.Label) : "<div></div>");
            if (station.Note.Length > Long)
                output.WriteLine($"<small class=\"note\">{PrintedText.Html(station.Note)}</small>");
            if (station.Ticks.Count > 0)
                List("ticks", station.Ticks, output);
            output.WriteLine("</div>");
        }
    }

    private static string Stacked(Figure figure) =>
        Cell("amount", figure.Value, figure.Beside.Length == 0 ? figure.Label : $"{figure.Label}, {figure.Beside}");

    private static string Cell(string name, string large, string small) =>
        $"<div class=\"{name}\"><b>{PrintedText.Html(large)}</b>"
        + $"{(small.Length > 0 ? $"<small>{PrintedText.Html(small)}</small>" : "")}</div>";

    private static void Write(Grid grid, TextWriter output)
    {
        output.WriteLine(grid.IsSums ? "<table class=\"sums\">" : "<table>");
        Row("th", grid.Titles);
        foreach (var row in grid.Rows)
            Row("td", row);
        output.WriteLine("</table>");

        void Row(string tag, IEnumerable<string> cells) =>
            output.WriteLine($"<tr>{string.Concat(cells.Select((cell, i) =>
                $"<{tag}{(grid.IsFigure(i) ? " class=\"figure\""
                    : cell.Length <= Short ? " class=\"short\"" : "")}>{PrintedText.Html(cell)}</{tag}>"))}</tr>");
    }

    private static void Write(PencilBoxes boxes, TextWriter output)
    {
        output.WriteLine("<div class=\"boxes\">");
        for (var i = 1; i <= boxes.Count; i++)
            output.WriteLine(
                $"<i>{(i % 10 == 0 ? i.ToString(System.Globalization.CultureInfo.InvariantCulture) : "")}</i>");
        output.WriteLine("</div>");
    }

    /// <summary>Sheet after sheet of labels; the places that are used up on the first one stay empty.</summary>
    private static void Write(Labels labels, TextWriter output)
    {
        var sheet = labels.Sheet;
        var type = LabelType.Of(labels.Items, sheet)!;
        foreach (var onSheet in Enumerable.Repeat<Label?>(null, sheet.Used).Concat(labels.Items).Chunk(sheet.PerSheet))
        {
            output.WriteLine($"<div class=\"sheet{(sheet.HasCuttingLines ? " cut" : "")}\">");
            foreach (var label in onSheet)
                output.WriteLine(label is null ? "<section></section>" : Section(type.Fitted(label, sheet)));
            output.WriteLine("</div>");
        }
    }

    private static string Section((Label Label, LabelType? Own) fitted)
    {
        var (label, own) = fitted;
        var warning = label.Warning.Length == 0 ? "" : $"<strong>{PrintedText.Html(label.Warning)}</strong>";
        var lines = string.Concat(label.Lines.Select(line => $"<p>{PrintedText.Html(line)}</p>"));
        var small = string.Concat(label.SmallPrint.Select(line => $"<small>{PrintedText.Html(line)}</small>"));
        var style = own is null ? "label" : $"label {PageStyle.ClassOf(own)}";
        return $"<section class=\"{style}\">{warning}<h2>{PrintedText.Html(label.Title)}</h2>{lines}<footer>"
            + $"{small}</footer></section>";
    }
}
