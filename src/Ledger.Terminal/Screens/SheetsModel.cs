using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>The sheets of one holder, side by side, or of one box of exposed sheets, each with its story.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="place">A holder's name or a box's label.</param>
internal sealed class SheetsModel(ILedger ledger, string place) : TableModel(ledger)
{
    private Holdings _holdings = new(ledger.Today);
    private IReadOnlyList<(string Id, string State, Sheet? Sheet)> _rows = [];

    public override string Name => $"Holders: {place}";

    public override IReadOnlyList<string> Purpose =>
    [
        "The sheets in one holder or in one box of exposed sheets. The details tell a sheet's story; for an empty side "
            + "that of the last sheet in it.",
    ];

    public override WorkedExample Example { get; } = new("x", "X opens the form that notes an exposure.", "xposure");

    public override string Empty => "Nothing is in it any more.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Side", 10), new("State", 18), new("Film", 12), new("Group", 6), new("Loaded", 10), new("Exposed", 10),
        new("Line", 40, Least: 8),
    ];

    public override int Count => _rows.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.Of(KeyTable.Expose, "notes an exposure", _ => new FormStep(HolderForms.Expose(Ledger, place))),
        ScreenAction.Of(KeyTable.Move, "unloads: takes sheets out into a box",
            row => new FormStep(HolderForms.Unload(Ledger, row < 0 ? place : IdOf(row)))),
        ScreenAction.Rare("Service", "takes the side out of service, or puts it back", row =>
            new FormStep(new KindForm(Ledger, "service", ("sides", row < 0 ? null : IdOf(row))))),
        Entries.PutRight("amends the exposure of the sheet, or else its loading"),
        Entries.TakeBack("takes back the exposure of the sheet, or else its loading"),
        Entries.Entries,
    ];

    private EntryKeys Entries =>
        new(Ledger, row => _rows[row].Sheet is { } sheet ? new(SubjectKind.Sheet, sheet.Id.ToString())
            : new(SubjectKind.Place, IdOf(row)));

    public override void Refresh()
    {
        _holdings = Ledger.HoldingsOn(Today);
        var film = _holdings.Film;
        _rows = film.Holder(place) is { } holder
            ? [.. holder.Sides.Select(side => film.Read(side, Today))
                .Select(side => (side.Side.Code, side.StateName, side.Sheet))]
            : film.ExposedBox(place) is { } box
                ? [.. film.At(box.Place)
                    .Select(sheet => (sheet.Id.ToString(), $"from {sheet.SideCode}", (Sheet?)sheet))]
                : [];
    }

    public override string IdOf(int row) => _rows[row].Id;

    public override string? Traced(int row) => IdOf(row);

    public override string Cell(int row, int column)
    {
        var (id, state, sheet) = _rows[row];
        return column switch
        {
            0 => id,
            1 => state,
            2 => sheet?.Item ?? "",
            3 => sheet?.Exposure?.Group ?? "",
            4 => sheet is null ? "" : Dates.Text(sheet.LoadedOn),
            5 => sheet?.Exposure is { } exposure ? Dates.Text(exposure.Date) : "",
            _ => sheet?.Exposure?.Subject ?? "",
        };
    }

    public override IReadOnlyList<Block> Details(int row) =>
        row >= 0 && Ledger.Story(IdOf(row), Today) is { } story
            ? [.. HolderBlocks.Story(story, _holdings.Settings)]
            : [];
}
