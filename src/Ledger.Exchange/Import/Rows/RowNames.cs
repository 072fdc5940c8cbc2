using Ledger.Core.Measures;

namespace Ledger.Exchange.Import.Rows;

/// <summary>Names from a short list, and what is written in a notation of its own.</summary>
internal static class RowNames
{
    /// <summary>The position of a name in its list; the first one's when there is none, and a problem unless it may be empty.</summary>
    public static int Choice(this Row row, string column, IReadOnlyList<string> names, bool mayBeEmpty = true)
    {
        var text = row.Text(column);
        if (text.Length == 0 && mayBeEmpty)
            return 0;
        for (var i = 0; i < names.Count; i++)
            if (names[i].Equals(text, StringComparison.OrdinalIgnoreCase))
                return i;
        row.Refuse(column, $"accepted is one of {string.Join(", ", names)}");
        return 0;
    }

    /// <summary>What is written in a notation of its own, or null when the column is empty.</summary>
    public static T? Read<T>(this Row row, string column, Func<string, T?> read, string accepted)
        where T : class
    {
        var text = row.Text(column);
        if (text.Length == 0)
            return null;
        var value = read(text);
        if (value is null)
            row.Refuse(column, $"accepted is {accepted}");
        return value;
    }

    /// <summary>A dilution, or null when the column is empty.</summary>
    public static Dilution? Dilution(this Row row, string column)
    {
        var text = row.Text(column);
        if (text.Length == 0)
            return null;
        if (!Core.Measures.Dilution.TryParse(text, out var dilution, out var problem))
            row.Refuse(column, problem);
        return dilution;
    }

    /// <summary>A format, or null when the column is empty.</summary>
    public static Format? Format(this Row row, string column, FormatTable formats)
    {
        var text = row.Text(column);
        if (text.Length == 0)
            return null;
        if (!formats.TryFind(text, out var format))
            row.Refuse(column, $"accepted is a format such as {FormatTable.Accepted}, or one that formats.csv defines");
        return format;
    }
}
