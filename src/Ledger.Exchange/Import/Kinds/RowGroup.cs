using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>Rows that belong together because they have the same name in a column.</summary>
/// <param name="Name">The name, as the first of them writes it.</param>
/// <param name="Rows">The rows in order; at least one.</param>
internal sealed record RowGroup(string Name, IReadOnlyList<Row> Rows)
{
    public int Line => Rows[0].Line;

    public bool IsGood => Rows.All(row => row.IsGood);

    /// <summary>Gathers the rows by a column, in the order of the first row of each name; a row without a name is bad.</summary>
    public static IEnumerable<RowGroup> By(string column, IEnumerable<Row> rows) => rows
        .GroupBy(row => row.Needed(column, $"accepted is the name of the {column}"), StringComparer.OrdinalIgnoreCase)
        .Select(group => new RowGroup(group.Key, [.. group]));

    /// <summary>Gathers the rows of one reference, in the order of the first of each; a row without one stands alone.</summary>
    public static IEnumerable<RowGroup> ByReference(IEnumerable<Row> rows)
    {
        var groups = new List<(string Reference, List<Row> Rows)>();
        var known = new Dictionary<string, List<Row>>();
        foreach (var row in rows)
            if (row.TextOrNull("reference") is { } reference && known.TryGetValue(reference, out var group))
                group.Add(row);
            else
            {
                groups.Add((row.Text("reference"), [row]));
                if (row.TextOrNull("reference") is { } first)
                    known[first] = groups[^1].Rows;
            }

        return groups.Select(group => new RowGroup(group.Reference, group.Rows));
    }

    /// <summary>
    /// The first row that says something in a column; another row may repeat it or say nothing, and is bad when it differs.
    /// </summary>
    public Row Saying(string column)
    {
        var saying = Rows.FirstOrDefault(row => row.Text(column).Length > 0) ?? Rows[0];
        var said = saying.Text(column);
        foreach (var row in Rows)
            if (row.Text(column) is { Length: > 0 } other && !other.Equals(said, StringComparison.OrdinalIgnoreCase))
                row.Refuse(
                    column,
                    $"accepted is {Row.Shown(said)} as on line {saying.Line}, or nothing: all rows of {Row.Shown(Name)} share it");
        return saying;
    }
}
