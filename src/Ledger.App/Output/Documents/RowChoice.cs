namespace Ledger.App.Output.Documents;

/// <summary>Which rows of a table are kept, and in which order.</summary>
/// <param name="Keeps">Whether a row is kept, by its values.</param>
/// <param name="Sorting">The position of the column that they are sorted by; null where they stay in their
/// order.</param>
/// <param name="Form">What sort of value that column holds.</param>
/// <param name="IsReversed">Whether the last comes first.</param>
/// <param name="AtMost">How many are kept at most.</param>
internal sealed record RowChoice(Func<object?[], bool> Keeps, int? Sorting, Form? Form, bool IsReversed, int AtMost)
{
    /// <summary>The rows that are kept.</summary>
    public IReadOnlyList<object> Of(IEnumerable<object> rows, Func<object, object?[]> values)
    {
        var kept = rows.Select(row => (Row: row, Values: values(row))).Where(row => Keeps(row.Values));
        if (Sorting is { } column)
        {
            // What is not known stays at the end, whichever way round the others stand.
            var order = Comparer<object?>.Create((one, other) =>
                IsReversed && one is not null && other is not null
                    ? -Form!.Compare(one, other)
                    : Form!.Compare(one, other));
            kept = kept.OrderBy(row => row.Values[column], order);
        }
        else if (IsReversed)
            kept = kept.Reverse();
        return [.. kept.Take(AtMost).Select(row => row.Row)];
    }
}
