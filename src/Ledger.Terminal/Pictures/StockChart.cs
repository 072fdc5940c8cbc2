namespace Ledger.Terminal.Pictures;

/// <summary>
/// How a stock went and is expected to go, a column for each week: full what was there, light what is expected, a
/// dashed line where to order, and under the axis a mark where a delivery is expected. A narrow chart is low as well,
/// for a low pane.
/// </summary>
/// <param name="Past">The stock at the end of each week so far, the last one now; null where it is not known.</param>
/// <param name="Ahead">The stock expected at the end of each week to come.</param>
/// <param name="OrderAt">The level at which to order.</param>
/// <param name="Deliveries">The weeks to come in which a delivery is expected, counting from 0.</param>
/// <param name="Figure">A level in words.</param>
internal sealed record StockChart(
    IReadOnlyList<decimal?> Past, IReadOnlyList<decimal> Ahead, decimal OrderAt, IReadOnlyCollection<int> Deliveries,
    Func<decimal, string> Figure)
{
    private const int NarrowBelow = 40;
    private const int NarrowHeight = 5;
    private const int UsualHeight = 8;

    /// <summary>The signs it is drawn with.</summary>
    public Signs Signs { get; init; } = Signs.Here;

    private string Legend => $"{Signs.Bar} was  {Signs.Ahead} expected  {Signs.Level} order  {Signs.Arrival} due";

    /// <summary>
    /// The lines of the chart; the newest past weeks and the nearest to come where there is no room for all.
    /// </summary>
    public IEnumerable<string> Lines(int width)
    {
        var labels = Past.OfType<decimal>().Concat(Ahead).Append(OrderAt).Append(0).Max(level => Figure(level).Length);
        var room = Math.Max(8, width - labels - 2);
        var past = Past.Skip(Math.Max(0, Past.Count - room / 2)).ToList();
        var ahead = Ahead.Take(room - past.Count).ToList();
        var top = Math.Max(1, past.OfType<decimal>().Concat(ahead).Append(OrderAt).Max());
        var height = width < NarrowBelow ? NarrowHeight : UsualHeight;
        var orderRow = Row(OrderAt, top, height);
        for (var row = height; row >= 1; row--)
        {
            var label = row == height ? Figure(top) : row == orderRow ? Figure(OrderAt) : "";
            var cells = past.Select(level => Cell(level ?? 0, row, top, height, Signs.Bar[0]))
                .Concat(ahead.Select(level => Cell(level, row, top, height, Signs.Ahead)));
            var line = cells.Select(cell => cell == ' ' && row == orderRow ? Signs.Level : cell);
            yield return $"{label.PadLeft(labels)} {Signs.Upright}{string.Concat(line)}".TrimEnd();
        }

        yield return $"{Figure(0).PadLeft(labels)} {Signs.Corner}{new string(Signs.Along, past.Count)}"
            + $"{new string(Signs.Soon, ahead.Count)}";
        var marks = Enumerable.Range(0, ahead.Count).Select(week => Deliveries.Contains(week) ? Signs.Arrival : ' ');
        yield return $"{new string(' ', labels + 2)}{"now".PadLeft(past.Count)}{string.Concat(marks)}".TrimEnd();
        foreach (var line in Paragraph.Of(Legend, width))
            yield return line;
    }

    private static char Cell(decimal level, int row, decimal top, int height, char mark) =>
        level > 0 && Row(level, top, height) >= row ? mark : ' ';

    /// <summary>The row a level reaches; what is above nothing is seen.</summary>
    private static int Row(decimal level, decimal top, int height) =>
        level <= 0 ? 0 : Math.Max(1, (int)decimal.Floor(level * height / top));
}
