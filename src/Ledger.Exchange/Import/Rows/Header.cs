namespace Ledger.Exchange.Import.Rows;

/// <summary>The columns of a file, by their names in the header row.</summary>
internal sealed class Header
{
    private readonly Dictionary<string, int> _positions = [];

    public Header(IReadOnlyList<string> names)
    {
        Width = names.Count;
        for (var i = 0; i < names.Count; i++)
            if (Plain(names[i]) is { Length: > 0 } name && !_positions.TryAdd(name, i))
                Repeated.Add(name);
    }

    /// <summary>How many fields a row must have.</summary>
    public int Width { get; }

    /// <summary>The names that stand more than once.</summary>
    public List<string> Repeated { get; } = [];

    /// <summary>All names, lower-case.</summary>
    public IEnumerable<string> Names => _positions.Keys;

    /// <summary>The position of a column, or -1 when the file does not have it.</summary>
    public int Position(string column) => _positions.GetValueOrDefault(column, -1);

    /// <summary>
    /// A name as it is compared: letters of either case mean the same, blanks around it mean nothing.
    /// </summary>
    public static string Plain(string name) => name.Trim().ToLowerInvariant();
}
