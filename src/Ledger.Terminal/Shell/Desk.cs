using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Shell;

/// <summary>
/// Where the pages lie: the top one is seen, the ones below wait with what was selected and typed in them.
/// </summary>
internal sealed class Desk : View
{
    private readonly Stack<Page> _pages = new();

    public Desk()
    {
        Width = Dim.Fill();
        CanFocus = true;
    }

    /// <summary>The page that is seen.</summary>
    public Page Top => _pages.Peek();

    /// <summary>The main screen at the bottom.</summary>
    public TableModel? Root => _pages.Last() is TablePage { Model: var model } ? model : null;

    /// <summary>The tables that lie on it.</summary>
    public IEnumerable<TableModel> Tables => _pages.OfType<TablePage>().Select(page => page.Model);

    /// <summary>Whether there is a page below the top one.</summary>
    public bool HasBelow => _pages.Count > 1;

    /// <summary>Keeps what was typed on any page; false when something would be lost.</summary>
    public bool Park() => _pages.Aggregate(true, (isKept, page) => page.Park() && isKept);

    /// <summary>Lays a page on top.</summary>
    public void Lay(Page page)
    {
        if (_pages.TryPeek(out var below))
        {
            below.Rest();
            Remove(below);
        }

        _pages.Push(page);
        Add(page);
        page.SetFocus();
    }

    /// <summary>Takes the top page away.</summary>
    public void TakeAway()
    {
        Drop(_pages.Pop());
        Add(Top);
        Top.SetFocus();
        Top.Resume();
    }

    /// <summary>Clears everything away for another page.</summary>
    public void Change(Page page)
    {
        while (_pages.TryPop(out var old))
            Drop(old);
        Lay(page);
    }

    /// <summary>Reads every page again.</summary>
    public void Refresh()
    {
        foreach (var page in _pages)
            page.Refresh();
    }

    protected override bool OnClearingViewport() => Ground.Clear(this);

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            foreach (var page in _pages.Where(page => page.SuperView is null))
                page.Dispose();
        base.Dispose(disposing);
    }

    private void Drop(Page page)
    {
        if (page.SuperView is not null)
            Remove(page);
        page.Dispose();
    }
}
