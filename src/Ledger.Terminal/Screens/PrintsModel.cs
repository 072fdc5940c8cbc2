using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Pictures;
using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Screens;

/// <summary>The print sessions, the last one first.</summary>
internal sealed class PrintsModel : TableModel
{
    private readonly PagedRows<PrintRecord> _prints;
    private Settings _settings = Settings.Default;

    public PrintsModel(ILedger ledger)
        : base(ledger) => _prints = new((before, atMost) => Ledger.Prints(Today, before, atMost));

    public override string Name => "Print sessions";

    public override IReadOnlyList<string> Purpose =>
    [
        "The sessions of printing, the last one first: final prints, work prints and test strips, and the fixer for "
            + "paper they went through.",
        "A strip counts by its share of a sheet. Paper never goes through a bath for film.",
    ];

    public override WorkedExample Example { get; } = new(
        "", "The details of P10 list its final prints, work prints and test strips, and the fixer they went through.",
        "PF4");

    public override string Empty => "No print session yet. Press N to record one.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Session", 10), new("Date", 10), new("Sheets", 6, IsFigure: true), new("Area", 12, IsFigure: true),
        new("Bath", 10), new("What", 34, Least: 12), new("Of", 20, Least: 8),
    ];

    public override int Count => _prints.Rows.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.Of(KeyTable.New, "records a session of printing", _ => new FormStep(NextSession())),
        Entries.PutRight("amends what was recorded of the session"),
        Entries.TakeBack("takes the selected session back"),
        Entries.Entries,
    ];

    private EntryKeys Entries => new(Ledger, row => new(SubjectKind.PrintSession, IdOf(row)));

    public override void Refresh()
    {
        _settings = Ledger.HoldingsOn(Today).Settings;
        _prints.Refresh();
    }

    public override void Reach(int row) => _prints.Reach(row);

    public override string IdOf(int row) => _prints.Rows[row].Session;

    public override string? Traced(int row) => IdOf(row);

    public override string Cell(int row, int column)
    {
        var print = _prints.Rows[row];
        return column switch
        {
            0 => print.Session,
            1 => Dates.Text(print.Date),
            2 => print.Sheets.ToString(CultureInfo.InvariantCulture),
            3 => print.Area.ToText(_settings.Style),
            4 => print.Bath ?? "",
            5 => string.Join(", ", print.Lines.Select(line => $"{Pieces(line)} {line.Purpose.Name()}")),
            _ => string.Join(" ", print.Negatives),
        };
    }

    public override IReadOnlyList<Block> Details(int row) =>
        row < 0 ? [] : [Facts(_prints.Rows[row]), Areas(_prints.Rows[row])];

    private Block Facts(PrintRecord print) => Block.Facts($"Print session {print.Session}, {Dates.Text(print.Date)}", [
        ("Fixer", print.Bath),
        ("Negatives", string.Join(", ", print.Negatives)),
        .. print.Lines.Select((line, i) => (i == 0 ? "Paper" : " ", (string?)Line(line))),
        ("Cost", $"{print.Cost.Text(_settings)} of paper"),
        ("Note", print.Note),
        ("Entry", print.Number.ToString(CultureInfo.InvariantCulture)),
    ]);

    private Block Areas(PrintRecord print) => new("Area through the baths", width => BarChart.Of(
        [.. print.Lines.Select(line => new Bar(line.Purpose.Name(), line.Area.Hundredths,
            line.Area.ToText(_settings.Style)))], width));

    private static string Line(PrintedPaper line)
    {
        var strips = line.Strips == 0
            ? ""
            : line.Sheets == 0 ? " of a sheet cut before" : $" from {Counted.Of(line.Sheets, "sheet")}";
        var note = line.Note.Length > 0 ? $": {line.Note}" : "";
        return $"{Pieces(line)} {line.Item} {line.Purpose.Name()}{strips}{note}";
    }

    private static long Pieces(PrintedPaper line) => line.Strips > 0 ? line.Strips : line.Sheets;

    private KindForm NextSession() => new(
        Ledger, "print-session",
        ("session", Ledger.Prints(Ledger.Today, null, 1) is [var last] ? NextName.After(last.Session) : "P1"));
}
