using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>The sheets of one session, each with its story.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="session">The session's name.</param>
internal sealed class SessionSheetsModel(ILedger ledger, string session) : TableModel(ledger)
{
    private Settings _settings = Settings.Default;
    private IReadOnlyList<SheetFate> _sheets = [];

    public override string Name => $"Session {session}";

    public override IReadOnlyList<string> Purpose =>
    [
        "The sheets of one session in their order. The details tell a sheet's story: box, holder, exposure, session, "
            + "tray mates, cost.",
        "A negative that turns out to be worth printing is named a keeper here.",
    ];

    public override WorkedExample Example { get; } = new("k",
        "K on the first sheet opens the form that names its negative a keeper.", "eeper");

    public override string Empty => "Rolls are counted; they have no numbers and no stories of their own.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Negative", 14), new("Film", 12), new("Became", 10), new("Spoiled by", 15, Least: 8),
        new("Batch", 5, IsFigure: true), new("Side", 10), new("Sheet", 7),
    ];

    public override int Count => _sheets.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.OnRow(KeyTable.Keeper, "names the negative a keeper",
            row => new KindForm(Ledger, "keeper", ("negative", _sheets[row].Negative))),
        .. SheetLife.Of(Ledger, row => _sheets[row].Negative ?? _sheets[row].Sheet.ToString()),
        new EntryKeys(Ledger, _ => new(SubjectKind.Session, session)).PutRight(
            "amends what was logged of the session: what became of its sheets"),
        new EntryKeys(Ledger, row => new(SubjectKind.Sheet, IdOf(row))).Entries,
    ];

    public override void Refresh()
    {
        _settings = Ledger.HoldingsOn(Today).Settings;
        _sheets = Ledger.SheetsOf(session, Today);
    }

    public override string IdOf(int row) => _sheets[row].Sheet.ToString();

    public override string? Traced(int row) => IdOf(row);

    public override string Cell(int row, int column)
    {
        var sheet = _sheets[row];
        return column switch
        {
            0 => sheet.Negative ?? "",
            1 => sheet.Item,
            2 => sheet.Fate.Name(),
            3 => sheet.Cause?.Name() ?? "",
            4 => $"{sheet.Batch}",
            5 => sheet.Side ?? "",
            _ => sheet.Sheet.ToString(),
        };
    }

    public override IReadOnlyList<Block> Details(int row) =>
        row >= 0 && Ledger.Story(IdOf(row), Today) is { } story ? [.. HolderBlocks.Story(story, _settings)] : [];
}
