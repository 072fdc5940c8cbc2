namespace Ledger.Exchange.Print;

/// <summary>The charts of a page in plain characters: lying bars with the exact figure behind them.</summary>
internal static class PlainCharts
{
    public static IEnumerable<string> Of(ColumnChart chart, int width) =>
        [chart.Caption, .. Bars([.. chart.Bars.Select(bar => (bar.Label, bar.Length, bar.Figure))], width)];

    public static IEnumerable<string> Of(ShareChart chart, int width) =>
        [chart.Caption, .. Bars([.. chart.Bars.Select(bar => (bar.Label, bar.Value, bar.Figure))], width)];

    public static IEnumerable<string> Of(StepChart chart, int width) =>
        [chart.Caption,
            .. Bars([.. chart.Points.Select(point => (Dates.Text(point.Date), point.Value, point.Figure))], width)];

    private static IEnumerable<string> Bars(List<(string Label, decimal Value, string Figure)> bars, int width)
    {
        var labels = bars.Max(bar => PrintedText.Plain(bar.Label).Length);
        var figures = bars.Max(bar => bar.Figure.Length);
        var room = Math.Max(8, width - labels - figures - 4);
        var most = Math.Max(bars.Max(bar => bar.Value), 0.000_001m);
        return bars.Select(bar =>
            $"{PrintedText.Plain(bar.Label).PadRight(labels)}  "
                + $"{new string('#', Length(bar.Value, most, room)).PadRight(room)}  "
            + bar.Figure.PadLeft(figures));
    }

    /// <summary>In proportion, but a value above nothing is always seen.</summary>
    private static int Length(decimal value, decimal most, int room) =>
        value <= 0 ? 0 : Math.Max(1, (int)decimal.Floor(value * room / most));
}
