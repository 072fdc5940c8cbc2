namespace Ledger.Exchange.Import.Rows;

/// <summary>Several names in one cell.</summary>
internal static class RowLists
{
    private static readonly char[] Marks = [',', ';'];

    /// <summary>The names in a column that must hold one at least, divided by commas or semicolons.</summary>
    public static IReadOnlyList<string> Names(this Row row, string column, string accepted)
    {
        var names = row.Text(column).Split(Marks, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (names.Length == 0)
            row.Refuse(column, accepted);
        return names;
    }

    /// <summary>Names of sides and holders, which hold no blanks: these divide them as well.</summary>
    public static IReadOnlyList<string> Sides(this Row row, string column) =>
        [.. row.Names(column, "accepted are holder sides such as E07-2, or holders for all their sides, divided by commas")
            .SelectMany(names => names.Split(' ', StringSplitOptions.RemoveEmptyEntries))];

    /// <summary>Yes or no; no when the column is empty.</summary>
    public static bool IsYes(this Row row, string column) => row.Choice(column, ["no", "yes"]) == 1;
}
