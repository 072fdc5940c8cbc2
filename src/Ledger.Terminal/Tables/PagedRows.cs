namespace Ledger.Terminal.Tables;

/// <summary>
/// Rows that are read in parts as far as the user has scrolled: a long history costs no more than what is seen.
/// </summary>
/// <param name="read">Reads the rows that come after one, or the first ones.</param>
/// <typeparam name="T">A row.</typeparam>
internal sealed class PagedRows<T>(Func<T?, int, IReadOnlyList<T>> read)
    where T : class
{
    private const int Page = 200;

    private readonly List<T> _rows = [];
    private bool _isAll;

    /// <summary>The rows read so far.</summary>
    public IReadOnlyList<T> Rows => _rows;

    /// <summary>Reads as many rows again as were there, and at least one part.</summary>
    public void Refresh()
    {
        var wanted = Math.Max(Page, _rows.Count);
        _rows.Clear();
        _isAll = false;
        while (!_isAll && _rows.Count < wanted)
            More();
    }

    /// <summary>Sees to it that there are rows beyond this one, if the history goes on.</summary>
    public void Reach(int row)
    {
        while (!_isAll && row >= _rows.Count - Page / 4)
            More();
    }

    private void More()
    {
        var part = read(_rows.Count == 0 ? null : _rows[^1], Page);
        _rows.AddRange(part);
        _isAll = part.Count < Page;
    }
}
