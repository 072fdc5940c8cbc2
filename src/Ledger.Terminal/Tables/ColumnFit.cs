namespace Ledger.Terminal.Tables;

/// <summary>Shares the width of a table among its columns: the first ones keep what they need, the last ones give way.</summary>
internal static class ColumnFit
{
    /// <summary>The width of each column; 0 for one that has no room.</summary>
    /// <param name="columns">The columns, the most needed first.</param>
    /// <param name="needed">How wide the widest cell of each is.</param>
    /// <param name="available">What there is, with one blank between columns.</param>
    public static int[] Of(IReadOnlyList<TableColumn> columns, IReadOnlyList<int> needed, int available)
    {
        var widths = new int[columns.Count];
        for (var i = 0; i < widths.Length; i++)
            widths[i] = Math.Max(Math.Min(Math.Max(needed[i], columns[i].Least), columns[i].Most), columns[i].Heading.Length);
        for (var i = widths.Length - 1; i > 0 && Excess() > 0; i--)
        {
            widths[i] = Math.Max(Math.Max(columns[i].Least, columns[i].Heading.Length), widths[i] - Excess());
            if (Excess() > 0 && i == widths.Length - 1 && OthersCannotYield(i))
                widths[i] = 0;
        }

        for (var i = widths.Length - 1; i > 0 && Excess() > 0; i--)
            widths[i] = 0;
        return widths;

        int Excess() => widths.Sum() + widths.Count(width => width > 0) - available;

        bool OthersCannotYield(int last) =>
            columns.Take(last).Select((column, i) => widths[i] - Math.Max(column.Least, column.Heading.Length)).Sum() < Excess();
    }
}
