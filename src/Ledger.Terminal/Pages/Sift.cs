using System.Buffers;

namespace Ledger.Terminal.Pages;

/// <summary>
/// Which rows of a table are seen, and in which order: those that hold all typed words, sorted by a column.
/// </summary>
internal sealed class Sift
{
    private static readonly SearchValues<char> _ofNumbers = SearchValues.Create("0123456789.,-+");
    private string[] _words = [];

    /// <summary>The words that are looked for, as they were typed.</summary>
    public string Words
    {
        get;
        set
        {
            field = value;
            _words = value.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        }
    } = "";

    /// <summary>The column that is sorted by; null for the table's own order.</summary>
    public int? Column { get; private set; }

    /// <summary>Whether it is sorted from the greatest down.</summary>
    public bool IsDown { get; private set; }

    /// <summary>Whether rows may be left out.</summary>
    public bool IsFinding => _words.Length > 0;

    /// <summary>Sorts by a column; by the same one the other way round.</summary>
    public void SortBy(int column) => (Column, IsDown) = (column, Column == column && !IsDown);

    /// <summary>Sorts by the next column; after the last one as the table does by itself.</summary>
    public void SortByNext(int columns) =>
        (Column, IsDown) = (Column is not { } at ? 0 : at + 1 < columns ? at + 1 : null, false);

    /// <summary>Sorts the other way round.</summary>
    public void Reverse() => (Column, IsDown) = (Column ?? 0, !IsDown);

    /// <summary>The rows that are seen, in their order; null for all of them as they are.</summary>
    /// <param name="rows">How many rows there are.</param>
    /// <param name="columns">How many columns.</param>
    /// <param name="cell">The text of a cell.</param>
    public IReadOnlyList<int>? Of(int rows, int columns, Func<int, int, string> cell)
    {
        if (!IsFinding && Column is null)
            return null;
        var found = Enumerable.Range(0, rows).Where(row => Holds(row, columns, cell));
        if (Column is not { } by)
            return [.. found];
        var keyed = found.Select(row => (Row: row, Key: Key(cell(row, by))));
        var sorted = IsDown ? keyed.OrderBy(one => one.Key.IsEmpty).ThenByDescending(one => one.Key)
            : keyed.OrderBy(one => one.Key.IsEmpty).ThenBy(one => one.Key);
        return [.. sorted.Select(one => one.Row)];
    }

    private bool Holds(int row, int columns, Func<int, int, string> cell)
    {
        if (!IsFinding)
            return true;
        var text = string.Join('\n', Enumerable.Range(0, columns).Select(column => cell(row, column)));
        return Array.TrueForAll(_words, word => text.Contains(word, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>A figure sorts by its number, a text by its letters; figures come first.</summary>
    private static SortKey Key(string text)
    {
        var trimmed = text.Trim(' ', '!');
        var length = trimmed.AsSpan().IndexOfAnyExcept(_ofNumbers);
        var figure = Numbers.Read(length < 0 ? trimmed : trimmed[..length], out _)
            ?? (trimmed.EndsWith(" %", StringComparison.Ordinal)
                ? Numbers.Read(trimmed[..^2].Split(' ')[^1], out _)
                : null);
        return new(figure, trimmed);
    }

    private readonly record struct SortKey(decimal? Figure, string Text) : IComparable<SortKey>
    {
        public bool IsEmpty => Text.Length == 0;

        public int CompareTo(SortKey other) => (Figure, other.Figure) switch
        {
            ({ } mine, { } theirs) when mine != theirs => mine.CompareTo(theirs),
            ({ }, null) => -1,
            (null, { }) => 1,
            _ => string.Compare(Text, other.Text, StringComparison.OrdinalIgnoreCase),
        };
    }
}
