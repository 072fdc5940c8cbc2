using System.Security.Cryptography;
using System.Text;

namespace Ledger.Exchange.Import.Rows;

/// <summary>
/// The identities of a file's rows: their reference, else their content. The content is that of the known columns in a fixed order, so that
/// a file with other separators, more columns or another order of them has the same identities; a date is taken as it stands in the file.
/// Empty columns at the end do not count, so that a column that is added to a kind later leaves the identities as they were.
/// </summary>
/// <param name="kind">The kind of the file.</param>
/// <param name="columns">Its known columns.</param>
internal sealed class RowKeys(string kind, IReadOnlyList<string> columns)
{
    private readonly Dictionary<string, int> _lines = [];
    private readonly Dictionary<string, int> _times = [];

    /// <summary>The identity of a row that is an entry of its own.</summary>
    public string Of(Row row)
    {
        if (row.TextOrNull("reference") is not { } reference)
            return $"{kind}:#{Content(row)}";
        if (!_lines.TryAdd(reference, row.Line))
            row.Refuse("reference", $"accepted is a reference of its own for each row; line {_lines[reference]} has this one");
        return $"{kind}:{reference}";
    }

    /// <summary>The identity of an entry of several rows: their reference, else their content.</summary>
    public string Of(IReadOnlyList<Row> rows) =>
        rows[0].TextOrNull("reference") is { } reference ? $"{kind}:{reference}" : $"{kind}:#{Content(rows)}";

    /// <summary>The identity of something that is defined anew whenever its rows change.</summary>
    public string Of(string name, params IEnumerable<Row> rows) => $"{kind}:{name}#{Content([.. rows])}";

    /// <summary>A short hash of the content, with its number when the same content stood in the file before.</summary>
    private string Content(params IReadOnlyList<Row> rows)
    {
        var text = new StringBuilder();
        foreach (var row in rows)
            text.Append(string.Join('\u001f', columns.Select(column => FirstNames.Of(kind, column, row.Text(column)))).TrimEnd('\u001f')).Append('\u001e');
        var hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())).AsSpan(0, 12));
        var times = _times[hash] = _times.GetValueOrDefault(hash) + 1;
        return times == 1 ? hash : $"{hash}-{times}";
    }
}
