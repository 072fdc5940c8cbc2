namespace Ledger.Terminal.Pictures;

/// <summary>Points over a line of limit: clearing tests against the ratio at which a bath is exhausted.</summary>
internal static class TestChart
{
    private const int Rows = 9;
    private const int Labels = 5;

    /// <summary>The lines of the chart: o a test, . the line through them, - the limit.</summary>
    /// <param name="points">The tests, x and y.</param>
    /// <param name="limit">The height of the limit.</param>
    /// <param name="line">The height of the fitted line at an x; null when there is none.</param>
    /// <param name="reach">The x that the chart should reach at least.</param>
    /// <param name="width">The columns there are.</param>
    public static IEnumerable<string> Of(
        IReadOnlyList<(double X, double Y)> points, double limit, Func<double, double>? line, double reach, int width)
    {
        var signs = Signs.Here;
        if (points.Count == 0)
            yield break;
        var columns = Math.Clamp(width - Labels - 2, 16, 48);
        var right = Math.Max(Math.Max(reach, points.Max(point => point.X)), 1) * 1.05;
        var (bottom, top) = (Math.Min(1, points.Min(point => point.Y)),
            Math.Max(limit, points.Max(point => point.Y)) * 1.1);
        int Row(double y) => Math.Clamp((int)Math.Round((top - y) / (top - bottom) * (Rows - 1)), 0, Rows - 1);

        var cells = new char[Rows, columns];
        for (var column = 0; column < columns; column++)
        {
            for (var row = 0; row < Rows; row++)
                cells[row, column] = ' ';
            if (line?.Invoke(right * column / (columns - 1)) is { } height && height >= bottom && height <= top)
                cells[Row(height), column] = signs.Fit;
            if (column % 2 == 0)
                cells[Row(limit), column] = signs.Level;
        }

        foreach (var (x, y) in points)
            cells[Row(y), Math.Clamp((int)Math.Round(x / right * (columns - 1)), 0, columns - 1)] = signs.Test;
        for (var row = 0; row < Rows; row++)
            yield return $"{Label(row, Row(limit), limit, Row(1)),Labels} {signs.Upright}{Text(cells, row,
                columns)}".TrimEnd();
        yield return new string(' ', Labels) + $" {signs.Corner}" + new string(signs.Along, columns);
        var end = right.ToString("0", CultureInfo.InvariantCulture);
        yield return new string(' ', Labels + 2) + "0" + end.PadLeft(columns - 1);
    }

    private static string Label(int row, int limitRow, double limit, int freshRow) =>
        row == limitRow ? $"{limit.ToString("0.##", CultureInfo.InvariantCulture)}x" : row == freshRow ? "1x" : "";

    private static string Text(char[,] cells, int row, int columns)
    {
        var text = new char[columns];
        for (var column = 0; column < columns; column++)
            text[column] = cells[row, column];
        return new(text);
    }
}
