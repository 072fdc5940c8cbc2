using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>All sheets that ever left a box, the last first: a picture is found by any word of its row.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class AllSheetsModel(ILedger ledger) : TableModel(ledger)
{
    private Settings _settings = Settings.Default;
    private IReadOnlyList<SheetCard> _cards = [];

    public override string Name => "Find a sheet";

    /// <summary>How many sheets there are.</summary>
    public override string Headline => _cards.Count == 0 ? "" : Counted.Of(ShownCount, "sheet");

    public override IReadOnlyList<string> Purpose =>
    [
        "Every sheet, the last first: press / and type words of its number, subject, film, group, date, holder side, "
        + "bath, fate or emulsion number.",
        "Enter or . (full stop) traces the selected one; W puts what is found on paper as a list, "
        + ", (comma) writes it as CSV for a spreadsheet.",
    ];

    public override WorkedExample Example { get; } = new("/mill",
        "Slash and mill find the pictures at the mill.", "birches");

    public override string Empty => "No sheet has left its box yet.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Sheet", 10), new("Date", 10), new("Subject", 26, Least: 10), new("Film", 10), new("Fate", 18, Least: 8),
            new("Where", 18, Least: 8), new("Group", 5),
        new("Side", 7), new("Session", 7), new("Bath", 10, Least: 4), new("Emulsion", 10),
    ];

    public override int Count => _cards.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.OnRow(KeyTable.Keeper, "names the negative a keeper",
            row => new KindForm(Ledger, "keeper", ("negative", _cards[row].Name))),
        .. SheetLife.Of(Ledger, row => _cards[row].Name),
        ScreenAction.Of(KeyTable.Paper, "writes what is found as a list",
            _ => new PaperStep(paper => paper.Sheets(Sift.Words))),
        ScreenAction.Of(KeyTable.Csv, "writes what is found as CSV, with all that is known of each sheet",
            _ => new PaperStep(paper => paper.SheetsCsv(Sift.Words))),
    ];

    public override string? OpenLabel => "Trace";

    public override Step? Open(int row) => row < 0 ? null : new TracedStep(IdOf(row));

    public override void Refresh()
    {
        _settings = Ledger.HoldingsOn(Today).Settings;
        _cards = [.. Ledger.Cards(new SheetSearch(), Today).Reverse()];
    }

    public override string IdOf(int row) => _cards[row].Id.ToString();

    public override string? Traced(int row) => IdOf(row);

    public override string Cell(int row, int column)
    {
        var card = _cards[row];
        return column switch
        {
            0 => card.Name,
            1 => card.Date is { } date ? Dates.Text(date) : "",
            2 => card.Subject,
            3 => card.Item,
            4 => card.FateText,
            5 => card.Where,
            6 => card.Group,
            7 => card.Side ?? "",
            8 => card.Session ?? "",
            9 => string.Join(" ", card.Baths),
            _ => card.Emulsion,
        };
    }

    public override IReadOnlyList<Block> Details(int row) =>
        row >= 0 && Ledger.Story(IdOf(row), Today) is { } story ? [.. HolderBlocks.Story(story, _settings)] : [];
}
