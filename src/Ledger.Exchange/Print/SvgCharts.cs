namespace Ledger.Exchange.Print;

/// <summary>
/// Draws the charts of a page. Each has a scale in round steps that begins at nothing, and its figures on it.
/// </summary>
internal static class SvgCharts
{
    private const int Width = 720, Left = 64, Right = 12, Top = 34, Foot = 28, High = 210, Low = 120;
    private const double Letter = 6.6;

    /// <summary>
    /// Columns side by side. Where they stand too close for it, the exact figures are left to the table beside the
    /// chart.
    /// </summary>
    public static Svg Of(ColumnChart chart)
    {
        var svg = new Svg(Width, Top + High + Foot, chart.Caption);
        var scale = new AxisScale(chart.Bars.Max(bar => bar.Length));
        Scale(svg, scale, High);
        svg.Upright(14, Top + High / 2.0, chart.Caption);
        Legend(svg, chart.Parts);
        var room = (double)(Width - Left - Right) / chart.Bars.Count;
        var wide = Math.Min(44, room * 0.62);
        var every = (int)Math.Ceiling(chart.Bars.Max(bar => bar.Label.Length) * Letter / room);
        for (var i = 0; i < chart.Bars.Count; i++)
        {
            var bar = chart.Bars[i];
            var middle = Left + room * (i + 0.5);
            var foot = 0m;
            for (var part = 0; part < bar.Values.Count; part++)
            {
                if (bar.Values[part] <= 0)
                    continue;
                var (low, top) = (Y(foot, scale, High), Y(foot += bar.Values[part], scale, High));
                svg.Shaded(middle - wide / 2, top, wide, low - top, part);
            }

            if (bar.Figure.Length * Letter <= room)
                svg.Words(middle, Y(bar.Length, scale, High) - 4, bar.Figure, "mid");
            if (i % every == 0)
                svg.Words(middle, Top + High + 18, bar.Label, "mid");
        }

        return svg;
    }

    /// <summary>Lying bars.</summary>
    public static Svg Of(ShareChart chart)
    {
        const int row = 26;
        var svg = new Svg(Width, chart.Bars.Count * row + 6, chart.Caption);
        var names = 12 + chart.Bars.Max(bar => bar.Label.Length) * Letter;
        var room = Width - names - 16 - chart.Bars.Max(bar => bar.Figure.Length) * Letter;
        var most = Math.Max(chart.Bars.Max(bar => bar.Value), 0.000_001m);
        for (var i = 0; i < chart.Bars.Count; i++)
        {
            var bar = chart.Bars[i];
            var length = Math.Max(0, (double)(bar.Value / most) * room);
            svg.Words(names - 8, i * row + 18, bar.Label, "end");
            svg.Box(names, i * row + 5, length, row - 10, "s0");
            svg.Words(names + length + 6, i * row + 18, bar.Figure);
        }

        svg.Line(names, 2, names, chart.Bars.Count * row + 4, "axis");
        return svg;
    }

    /// <summary>A line that goes in steps.</summary>
    public static Svg Of(StepChart chart)
    {
        var svg = new Svg(Width, Top + Low + Foot, chart.Caption);
        var scale = new AxisScale(chart.Points.Max(point => point.Value));
        Scale(svg, scale, Low);
        svg.Words(Left - 6, 14, chart.Caption);
        var months = new MonthAxis(chart.Points[0].Date, chart.Until);
        foreach (var (day, text) in months.Marks)
        {
            svg.Line(X(months.At(day)), Top + Low, X(months.At(day)), Top + Low + 5, "axis");
            svg.Words(X(months.At(day)), Top + Low + 18, text, "mid");
        }

        var free = 0.0;
        for (var i = 0; i < chart.Points.Count; i++)
        {
            var point = chart.Points[i];
            var next = i + 1 < chart.Points.Count ? chart.Points[i + 1] : point with { Date = chart.Until };
            var (x, y, end) = (X(months.At(point.Date)), Y(point.Value, scale, Low), X(months.At(next.Date)));
            svg.Line(x, y, end, y, "step");
            svg.Line(end, y, end, Y(next.Value, scale, Low), "step");
            svg.Dot(x, y);
            if (x < free)
                continue;
            var isLast = x + 8 + point.Figure.Length * Letter > Width;
            svg.Words(isLast ? Width - 2 : x + 5, y - 6, point.Figure, isLast ? "end" : "");
            free = x + 12 + point.Figure.Length * Letter;
        }

        return svg;
    }

    private static void Scale(Svg svg, AxisScale scale, int high)
    {
        foreach (var mark in scale.Marks)
        {
            svg.Line(Left, Y(mark, scale, high), Width - Right, Y(mark, scale, high), mark == 0 ? "axis" : "grid");
            svg.Words(Left - 6, Y(mark, scale, high) + 4, scale.Text(mark), "end");
        }
    }

    private static void Legend(Svg svg, IReadOnlyList<string> parts)
    {
        var x = (double)Left;
        for (var i = 0; i < parts.Count; i++)
        {
            svg.Shaded(x, 3, 14, 12, i);
            svg.Words(x + 20, 13, parts[i]);
            x += 40 + parts[i].Length * Letter;
        }
    }

    private static double X(double at) => Left + at * (Width - Left - Right);

    private static double Y(decimal value, AxisScale scale, int high) => Top + high * (1 - (double)(value / scale.End));
}
