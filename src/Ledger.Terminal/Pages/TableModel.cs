using Ledger.Terminal.Blocks;

namespace Ledger.Terminal.Pages;

/// <summary>
/// What a table screen shows and does, without a screen: rows, the details of the selected one, and its keys.
/// </summary>
/// <param name="ledger">The ledger.</param>
internal abstract class TableModel(ILedger ledger)
{
    private int _row;
    private IReadOnlyList<int>? _shown;

    /// <summary>The screen's name.</summary>
    public abstract string Name { get; }

    /// <summary>What the title line says: the name, and what is shown of it.</summary>
    public virtual string Title => Name;

    /// <summary>What matters of what is shown, in a sentence beside the title; empty for nothing.</summary>
    public virtual string Headline => "";

    /// <summary>What the screen is for, in sentences; the help shows it.</summary>
    public abstract IReadOnlyList<string> Purpose { get; }

    /// <summary>An example from the demo year, which the help shows and a test types.</summary>
    public virtual WorkedExample Example { get; } = new("", "", "");

    /// <summary>What is said when there is no row.</summary>
    public abstract string Empty { get; }

    /// <summary>What is said when a key has no row to do anything with.</summary>
    public string NoRow => $"There is no {RowName} yet to do that with.";

    /// <summary>The columns, the most needed first.</summary>
    public abstract IReadOnlyList<TableColumn> Columns { get; }

    /// <summary>How many rows there are.</summary>
    public abstract int Count { get; }

    /// <summary>What can be done on this screen.</summary>
    public virtual IReadOnlyList<ScreenAction> Actions => [];

    /// <summary>What names the selected row across refreshes; null when nothing is selected.</summary>
    public string? SelectedId { get; set; }

    /// <summary>The row that is selected; -1 without rows, or when none is found.</summary>
    public int SelectedRow => Count == 0 || _shown is [] ? -1 : Math.Max(0, RowOf(SelectedId));

    /// <summary>What is looked for, and how it is sorted.</summary>
    public Sift Sift { get; } = new();

    /// <summary>How many rows are shown.</summary>
    public int ShownCount => _shown?.Count ?? Count;

    /// <summary>The row that is shown in a place.</summary>
    public int RowAt(int place) => _shown is { } shown ? shown[place] : place;

    /// <summary>The place in which a row is shown; -1 when it is not.</summary>
    public int PlaceOf(int row)
    {
        for (var place = 0; _shown is not null && place < _shown.Count; place++)
            if (_shown[place] == row)
                return place;
        return _shown is null ? row : -1;
    }

    /// <summary>
    /// Brings what is shown in line with the rows and with what is looked for; all rows are read for that.
    /// </summary>
    public void Arrange()
    {
        _shown = null;
        if (!Sift.IsFinding && Sift.Column is null)
            return;
        Reach(int.MaxValue);
        _shown = Sift.Of(Count, Columns.Count, Cell);
        if (_shown is [var first, ..] && PlaceOf(SelectedRow) < 0)
            SelectedId = IdOf(first);
    }

    /// <summary>What a row is called: as the first column, unless that does not name it.</summary>
    protected virtual string RowName => Columns[0].Heading.ToLowerInvariant();

    /// <summary>The ledger.</summary>
    protected ILedger Ledger => ledger;

    /// <summary>Today.</summary>
    protected LocalDate Today => ledger.Today;

    /// <summary>Reads several things of this table from one state of the ledger.</summary>
    public T Read<T>(Func<T> reading) => ledger.Read(reading);

    /// <summary>Reads everything again; the selected id stays.</summary>
    public abstract void Refresh();

    /// <summary>What names a row.</summary>
    public abstract string IdOf(int row);

    /// <summary>What names the row of what was just saved; null when it is none of this table.</summary>
    public virtual string? IdOf(Saving saving) => null;

    /// <summary>A cell's text.</summary>
    public abstract string Cell(int row, int column);

    /// <summary>The details of a row; of the screen as a whole when <paramref name="row"/> is -1.</summary>
    public abstract IReadOnlyList<Block> Details(int row);

    /// <summary>What of a row is traced, by its name; null where the row is nothing that comes through
    /// something.</summary>
    public virtual string? Traced(int row) => null;

    /// <summary>What the key line says of Enter; null when it does nothing.</summary>
    public virtual string? OpenLabel => null;

    /// <summary>What Enter on a row does; null for nothing.</summary>
    public virtual Step? Open(int row) => null;

    /// <summary>Called when a row comes near to the screen's end, for tables that are read in parts.</summary>
    public virtual void Reach(int row)
    {
    }

    /// <summary>A row that was listed and is looked up only now may have been taken back by another program.</summary>
    protected static LedgerUnavailableException Gone(string row) =>
        new($"{row} was taken back by another program meanwhile; the screen is read again");

    private int RowOf(string? id)
    {
        if (id is null)
            return 0;
        if (_row < Count && IdOf(_row) == id)
            return _row;
        for (var row = 0; row < Count; row++)
            if (IdOf(row) == id)
                return _row = row;
        return 0;
    }
}
