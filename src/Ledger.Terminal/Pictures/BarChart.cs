namespace Ledger.Terminal.Pictures;

/// <summary>Bars, one line each, with the exact figure behind the bar.</summary>
internal static class BarChart
{
    private const int LongestBar = 30;

    /// <summary>
    /// The lines of the chart, no wider than <paramref name="width"/> where the figures leave room for bars.
    /// </summary>
    public static IEnumerable<string> Of(IReadOnlyList<Bar> bars, int width, Signs? signs = null)
    {
        if (bars.Count == 0)
            yield break;
        var labels = bars.Max(bar => bar.Label.Length);
        var figures = bars.Max(bar => bar.Figure.Length);
        var room = Math.Clamp(width - labels - figures - 2, 4, LongestBar);
        var most = bars.Max(bar => bar.Value);
        foreach (var bar in bars)
        {
            // In proportion, but a value above nothing is always seen.
            var line = bar.Value <= 0 || most <= 0
                ? ""
                : (signs ?? Signs.Here).Filled(bar.Value / most, room, least: 1);
            yield return $"{bar.Label.PadRight(labels)} {line.PadRight(room)} {bar.Figure.PadLeft(figures)}";
        }
    }
}

/// <summary>One bar.</summary>
/// <param name="Label">What it stands for.</param>
/// <param name="Value">Its length.</param>
/// <param name="Figure">The exact figure.</param>
internal sealed record Bar(string Label, decimal Value, string Figure);
