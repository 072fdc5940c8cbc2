namespace Ledger.Terminal.Pictures;

/// <summary>
/// How a stock went and is expected to go, in plain characters, a column for each week: # what was there, o what is expected, a dashed line
/// where to order, and under the axis a ^ where a delivery is expected.
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
    private const int Height = 8;

    /// <summary>The lines of the chart; the newest past weeks and the nearest to come where there is no room for all.</summary>
    public IEnumerable<string> Lines(int width)
    {
        var top = Math.Max(1, Past.OfType<decimal>().Concat(Ahead).Append(OrderAt).Max());
        var labels = new[] { Figure(top), Figure(OrderAt), Figure(0) }.Max(text => text.Length);
        var room = Math.Max(8, width - labels - 2);
        var past = Past.Skip(Math.Max(0, Past.Count - room / 2)).ToList();
        var ahead = Ahead.Take(room - past.Count).ToList();
        var orderRow = Row(OrderAt, top);
        for (var row = Height; row >= 1; row--)
        {
            var label = row == Height ? Figure(top) : row == orderRow ? Figure(OrderAt) : "";
            var cells = past.Select(level => Cell(level ?? 0, row, top, '#')).Concat(ahead.Select(level => Cell(level, row, top, 'o')));
            var line = cells.Select(cell => cell == ' ' && row == orderRow ? '-' : cell);
            yield return $"{label.PadLeft(labels)} |{string.Concat(line)}".TrimEnd();
        }

        yield return $"{Figure(0).PadLeft(labels)} +{new string('-', past.Count)}{new string('.', ahead.Count)}";
        var marks = Enumerable.Range(0, ahead.Count).Select(week => Deliveries.Contains(week) ? '^' : ' ');
        yield return $"{new string(' ', labels + 2 + past.Count)}{string.Concat(marks)}".TrimEnd();
    }

    private static char Cell(decimal level, int row, decimal top, char mark) => level > 0 && Row(level, top) >= row ? mark : ' ';

    /// <summary>The row a level reaches; what is above nothing is seen.</summary>
    private static int Row(decimal level, decimal top) => level <= 0 ? 0 : Math.Max(1, (int)decimal.Floor(level * Height / top));
}
