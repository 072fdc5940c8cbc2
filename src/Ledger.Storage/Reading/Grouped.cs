namespace Ledger.Storage.Reading;

/// <summary>Groups rows as they are read, so that they need not all be held first.</summary>
internal static class Grouped
{
    /// <summary>The values of rows by their key. Rows of one key must come one after the other.</summary>
    /// <param name="rows">The rows, read once.</param>
    /// <param name="key">What they belong to.</param>
    /// <param name="values">What each gives.</param>
    /// <exception cref="ArgumentException">Rows of a key came apart.</exception>
    public static Dictionary<long, T[]> Adjacent<TRow, T>(
        IEnumerable<TRow> rows, Func<TRow, long> key, Func<TRow, IEnumerable<T>> values)
    {
        var groups = new Dictionary<long, T[]>();
        var group = new List<T>();
        long? before = null;
        foreach (var row in rows)
        {
            if (before is { } ended && ended != key(row))
                End(ended);
            before = key(row);
            group.AddRange(values(row));
        }

        if (before is { } last)
            End(last);
        return groups;

        void End(long of)
        {
            groups.Add(of, [.. group]);
            group.Clear();
        }
    }
}

/// <summary>Keeps one of each text: rows repeat the names of films and processes many thousand times.</summary>
internal sealed class SharedTexts
{
    private readonly Dictionary<string, string> _known = [];

    /// <summary>The text as it was first seen.</summary>
    public string Of(string text)
    {
        if (_known.TryGetValue(text, out var known))
            return known;
        _known.Add(text, text);
        return text;
    }
}
