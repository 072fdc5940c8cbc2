namespace Ledger.Exchange.Print;

/// <summary>
/// How a sheet of labels is divided; lengths are millimetres, margins go from the edge of the paper to the first
/// label.
/// </summary>
/// <param name="Paper">The paper.</param>
/// <param name="Columns">Labels side by side.</param>
/// <param name="Rows">Labels one below the other.</param>
/// <param name="Top">The margin above, and as much below.</param>
/// <param name="Side">The margin at the left, and as much at the right.</param>
/// <param name="Across">The gap between two labels side by side.</param>
/// <param name="Down">The gap between two labels one below the other.</param>
/// <param name="Used">Labels that are gone from the first sheet already.</param>
public sealed record LabelSheet(
    LabelPaper Paper, int Columns, int Rows, decimal Top, decimal Side, decimal Across = 0, decimal Down = 0,
    int Used = 0)
{
    /// <summary>The smallest label that is printed.</summary>
    public const decimal LeastWidth = 25, LeastHeight = 12;

    /// <summary>Two by four on plain paper: bottles and boxes.</summary>
    public static LabelSheet Large { get; } = new(LabelPaper.Plain, 2, 4, 12, 10);

    /// <summary>Three by eight on plain paper: negative sleeves.</summary>
    public static LabelSheet Small { get; } = new(LabelPaper.Plain, 3, 8, 12, 10);

    /// <summary>Grids that sheets of labels commonly have, as plain geometry: common practice, no source.</summary>
    public static IReadOnlyList<LabelSheet> Common { get; } =
    [
        new(LabelPaper.A4, 2, 4, 13.1m, 4.65m, 2.5m), new(LabelPaper.A4, 2, 7, 15.15m, 4.65m, 2.5m),
        new(LabelPaper.A4, 3, 7, 15.15m, 7.25m, 2.5m), new(LabelPaper.A4, 3, 8, 0.5m, 0),
        new(LabelPaper.Letter, 2, 3, 12.7m, 3.96m, 4.76m), new(LabelPaper.Letter, 2, 5, 12.7m, 3.96m, 4.76m),
        new(LabelPaper.Letter, 3, 10, 12.7m, 4.76m, 3.18m),
    ];

    /// <summary>The sheet with a grid and, where they are said, margins and gaps of its own.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="columns">Labels side by side.</param>
    /// <param name="rows">Labels one below the other.</param>
    /// <param name="margins">Above and below, and at the sides; null for those of a common grid.</param>
    /// <param name="gaps">Between labels side by side, and one below the other; null for those of a common grid, or
    /// none.</param>
    /// <exception cref="FormatException">The grid is not a common one and no margins are said, or its labels have no
    /// room.</exception>
    public static LabelSheet Of(
        LabelPaper paper, int columns, int rows, (decimal Top, decimal Side)? margins,
        (decimal Across, decimal Down)? gaps)
    {
        var common = Common.FirstOrDefault(
            sheet => sheet.Paper == paper && sheet.Columns == columns && sheet.Rows == rows);
        if (margins is null && common is null)
            throw new FormatException(
                $"the margins of {columns}x{rows} labels on {paper.Name} are not known; "
                + "measure them and say them, TOP and SIDE in mm (--margins \"TOP SIDE\") "
                + "(known: "
                + $"{string.Join(", ", Common.Where(sheet => sheet.Paper == paper).Select(sheet => sheet.Grid))})");
        var (top, side) = margins ?? (common!.Top, common.Side);
        var (across, down) = gaps ?? (margins is null ? (common!.Across, common.Down) : (0, 0));
        var own = new LabelSheet(paper, columns, rows, top, side, across, down);
        return own.LabelWidth >= LeastWidth && own.LabelHeight >= LeastHeight ? own : throw new FormatException(
            $"{columns}x{rows} labels with these margins and gaps have no room on {paper.Name}, which is "
            + $"{Text(paper.Width)} x {Text(paper.Height)} mm: each would be {Text(own.LabelWidth)} x "
            + $"{Text(own.LabelHeight)} mm, "
            + "and the least is "
            + $"{Text(LeastWidth)} x {Text(LeastHeight)} mm");
    }

    private static string Text(decimal millimetres) =>
        Math.Round(millimetres, 1).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Labels on a whole sheet.</summary>
    public int PerSheet => Columns * Rows;

    /// <summary>How wide a label is.</summary>
    public decimal LabelWidth => (Paper.Width - 2 * Side - (Columns - 1) * Across) / Columns;

    /// <summary>How high a label is.</summary>
    public decimal LabelHeight => (Paper.Height - 2 * Top - (Rows - 1) * Down) / Rows;

    /// <summary>Whether labels are cut out along printed lines; ready-made ones are cut already.</summary>
    public bool HasCuttingLines => Paper == LabelPaper.Plain;

    /// <summary>The grid: 3x8.</summary>
    public string Grid => string.Create(CultureInfo.InvariantCulture, $"{Columns}x{Rows}");
}
