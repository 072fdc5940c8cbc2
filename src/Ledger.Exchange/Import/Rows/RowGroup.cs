namespace Ledger.Exchange.Import.Rows;

/// <summary>Rows that belong together because they have the same name in a column.</summary>
/// <param name="Name">The name, as the first of them writes it; empty for a row that stands alone.</param>
/// <param name="Rows">The rows in order; at least one.</param>
internal sealed record RowGroup(string Name, IReadOnlyList<Row> Rows)
{
    public int Line => Rows[0].Line;

    public bool IsGood => Rows.All(row => row.IsGood);

    /// <summary>
    /// Gathers the rows by a column, in the order of the first row of each name; a row without a name stands alone.
    /// </summary>
    public static IEnumerable<RowGroup> By(string column, IEnumerable<Row> rows)
    {
        var groups = new List<(string Name, List<Row> Rows)>();
        var known = new Dictionary<string, List<Row>>(StringComparer.OrdinalIgnoreCase);
        foreach (var row in rows)
        {
            var name = row.Text(column);
            if (known.TryGetValue(name, out var group))
            {
                group.Add(row);
                continue;
            }

            groups.Add((name, [row]));
            if (name.Length > 0)
                known[name] = groups[^1].Rows;
        }

        return groups.Select(group => new RowGroup(group.Name, group.Rows));
    }

    /// <summary>The first row that says something in a column; the first of all when none does.</summary>
    public Row FirstSaying(string column) => Rows.FirstOrDefault(row => row.Text(column).Length > 0) ?? Rows[0];

    /// <summary>What the rows say in a column; empty when none says anything.</summary>
    public string Saying(string column) => FirstSaying(column).Text(column);

    /// <summary>The same; a row that says something else is bad.</summary>
    public string Agreed(string column)
    {
        var saying = FirstSaying(column);
        var said = saying.Text(column);
        foreach (var row in Rows)
            if (row.Text(column) is { Length: > 0 } other && !other.Equals(said, StringComparison.OrdinalIgnoreCase))
                row.Refuse(
                    column,
                    $"accepted is {Row.Shown(said)} as on line {saying.Line}, or nothing: all rows of "
                        + $"{Row.Shown(Name)} share it");
        return said;
    }
}
