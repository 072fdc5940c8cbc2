using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Tables;

/// <summary>
/// Shares the width of a table among its columns: texts give way first, then the last columns stay away.
/// </summary>
internal static class ColumnFit
{
    /// <summary>The width of each column; 0 for one that has no room.</summary>
    /// <param name="columns">The columns, the most needed first.</param>
    /// <param name="needed">How wide the widest cell of each is.</param>
    /// <param name="available">What there is, with one blank between columns.</param>
    public static int[] Of(IReadOnlyList<TableColumn> columns, IReadOnlyList<int> needed, int available)
    {
        for (var shown = columns.Count; shown > columns.Count - Leaving(columns).Count; shown--)
        {
            var widths = Shrunk(columns, needed, shown, available);
            if (Taken(widths) <= available)
                return Loosened(widths, shown, available);
        }

        return [available, .. new int[columns.Count - 1]];
    }

    /// <summary>
    /// The columns in the order in which they stay away where there is too little room: from the last on; the first is
    /// always there.
    /// </summary>
    /// <param name="columns">The columns, the most needed first.</param>
    public static IReadOnlyList<TableColumn> Leaving(IReadOnlyList<TableColumn> columns) =>
        [.. columns.Skip(1).Reverse()];

    /// <summary>What a narrow screen leaves out, in a sentence.</summary>
    /// <param name="columns">The columns, the most needed first.</param>
    public static string Sentence(IReadOnlyList<TableColumn> columns) =>
        $"Where the screen is narrow, long texts end with … and then columns stay away in this order: "
        + $"{string.Join(", ", Leaving(columns).Select(column => column.Heading))}. {KeyTable.Whole.Letter} shows the "
        + "whole row.";

    /// <summary>The width at which all columns have what they need.</summary>
    /// <param name="columns">The columns.</param>
    /// <param name="needed">How wide the widest cell of each is.</param>
    public static int Whole(IReadOnlyList<TableColumn> columns, IReadOnlyList<int> needed) =>
        columns.Select((column, i) => Math.Max(Math.Min(needed[i], column.Most), column.Heading.Length) + 2).Sum();

    /// <summary>What is left of the width goes to the last column that is there, unless that has figures.</summary>
    /// <param name="widths">The widths, which are changed.</param>
    /// <param name="columns">The columns.</param>
    /// <param name="available">What there is.</param>
    public static void FillUp(int[] widths, IReadOnlyList<TableColumn> columns, int available)
    {
        var last = Array.FindLastIndex(widths, width => width > 0);
        if (!columns[last].IsFigure)
            widths[last] += Math.Max(0, available - Taken(widths));
    }

    private static int[] Shrunk(IReadOnlyList<TableColumn> columns, IReadOnlyList<int> needed, int shown, int available)
    {
        var widths = new int[columns.Count];
        for (var i = 0; i < shown; i++)
            widths[i] = Math.Max(Math.Min(needed[i], columns[i].Most), columns[i].Heading.Length);
        for (var i = shown - 1; i >= 0 && Taken(widths) > available; i--)
            if (columns[i].Least is { } least)
                widths[i] = Math.Min(widths[i], Math.Max(Math.Max(least, columns[i].Heading.Length), Left(i)));
        return widths;

        int Left(int i) => widths[i] + available - Taken(widths);
    }

    /// <summary>Where there is room for it, a second blank stands between the columns.</summary>
    private static int[] Loosened(int[] widths, int shown, int available)
    {
        if (Taken(widths) + shown - 1 <= available)
            for (var i = 0; i < shown - 1; i++)
                widths[i]++;
        return widths;
    }

    private static int Taken(int[] widths) => widths.Sum() + widths.Count(width => width > 0);
}
