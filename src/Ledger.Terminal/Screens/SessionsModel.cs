using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Pictures;
using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Screens;

/// <summary>The sessions, the last one first.</summary>
internal sealed class SessionsModel : TableModel
{
    private readonly PagedRows<SessionRecord> _sessions;
    private Settings _settings = Settings.Default;

    public SessionsModel(ILedger ledger)
        : base(ledger) => _sessions = new((before, atMost) => Ledger.Sessions(Today, before, atMost));

    public override string Name => "Sessions";

    public override IReadOnlyList<string> Purpose =>
    [
        "The sessions of developing, the last one first: which film, how many sheets, through which bath, and what "
            + "became of them.",
        "The details show what a session cost: its film, its developer, its share of the bath and of the supplies. "
            + "Enter shows its sheets one by one.",
    ];

    public override WorkedExample Example { get; } = new(
        "\n", "Enter on S22 shows its six sheets one by one, with what became of each.", "Session S22");

    public override string Empty => "No session yet. Press S to log one.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Session", 10), new("Date", 10), new("Sheets", 6, IsFigure: true), new("Film", 26, Least: 12),
        new("Area", 12, IsFigure: true), new("Bath", 10), new("Process", 16, Least: 7),
    ];

    public override int Count => _sessions.Rows.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        Entries.PutRight("amends what was logged of the session"),
        ScreenAction.Labels("the sleeve labels of its negatives", IdOf,
            row => (paper, place) => paper.SleeveLabels(IdOf(row), place)),
        Entries.TakeBack("takes the selected session back"),
        Entries.Entries,
    ];

    private EntryKeys Entries => new(Ledger, row => new(SubjectKind.Session, IdOf(row)));

    public override string? OpenLabel => "Sheets";

    public override Step? Open(int row) => row < 0 ? null : new TableStep(new SessionSheetsModel(Ledger, IdOf(row)));

    public override void Refresh()
    {
        _settings = Ledger.HoldingsOn(Today).Settings;
        _sessions.Refresh();
    }

    public override void Reach(int row) => _sessions.Reach(row);

    public override string IdOf(int row) => _sessions.Rows[row].Session;

    public override string? IdOf(Saving saving) => (saving.Entry as SessionLog)?.Session;

    public override string? Traced(int row) => IdOf(row);

    public override string Cell(int row, int column)
    {
        var session = _sessions.Rows[row];
        return column switch
        {
            0 => session.Session,
            1 => Dates.Text(session.Date),
            2 => session.Sheets.ToString(CultureInfo.InvariantCulture),
            3 => string.Join(", ",
                session.Lines.GroupBy(line => line.Item).Select(film => $"{film.Sum(line => line.Sheets)} {film.Key}")),
            4 => session.Area.ToText(_settings.Style),
            5 => session.Bath ?? "",
            _ => session.Process,
        };
    }

    public override IReadOnlyList<Block> Details(int row) =>
        row < 0 ? [] : [Facts(_sessions.Rows[row]), Costs(_sessions.Rows[row])];

    private Block Facts(SessionRecord session) =>
        Block.Facts($"Session {session.Session}, {Dates.Text(session.Date)}", [
            ("Process", Core.Sessions.Process.NameOf(session.Process, session.ProcessVersion)),
            ("Bath", session.Bath is { } bath ? $"{bath}, {session.Area.ToText(_settings.Style)}" : null),
            ("Developer", session.Developer == default
                ? null
                : $"{session.Developer.ToText(_settings.Style)} of concentrate"),
            .. session.Lines.Select((line, i) => (i == 0 ? "Sheets" : " ", (string?)Line(line))),
            ("Note", session.Note),
            ("Entry", session.Number.ToString(CultureInfo.InvariantCulture)),
        ]);

    private static string Line(SessionSheets line) =>
        $"{line.Sheets} {line.Item} {line.Group}".TrimEnd()
            + $", {line.Fate.Name()}{(line.Note.Length > 0 ? $": {line.Note}" : "")}";

    /// <summary>What became of the sheets as bars, and what they cost.</summary>
    private Block Costs(SessionRecord session)
    {
        var sheets = new CostReading(Ledger.Costs(session.Date, session.Date)).Sheets
            .Where(sheet => sheet.Session.Equals(session.Session, StringComparison.OrdinalIgnoreCase)).ToList();
        var fates = session.Lines.GroupBy(line => line.Fate).OrderBy(group => group.Key)
            .Select(group => (Fate: group.Key, Sheets: group.Sum(line => line.Sheets)))
            .Select(group => new Bar(group.Fate.Name(), group.Sheets,
                group.Sheets.ToString(CultureInfo.InvariantCulture)))
            .ToList();
        Bar[] parts =
        [
            Part("film", sheet => sheet.Film), Part("developer", sheet => sheet.Developer),
            Part("baths, other", sheet => sheet.OtherChemistry), Part("supplies", sheet => sheet.Supplies),
        ];
        var total = Sum(sheet => sheet.Total);
        return new("What became of the sheets", width =>
        [
            .. BarChart.Of(fates, width),
            "",
            .. Paragraph.Of(
                $"Cost {total.Text(_settings)}{Each(session.Sheets, "sheet")}"
                    + $"{Each(Became(Fate.Negative) + Became(Fate.Keeper), "negative")}"
                + Each(Became(Fate.Keeper), "keeper"), width),
            .. BarChart.Of(parts, width),
        ]);

        long Became(Fate fate) => session.Lines.Where(line => line.Fate == fate).Sum(line => line.Sheets);

        string Each(long number, string what) =>
            number > 0 && total.Per(number) is { } each ? $", {each.Text(_settings)} a {what}" : "";

        Money Sum(Func<SheetCost, Money> part) => sheets.Aggregate(Money.Zero, (sum, sheet) => sum + part(sheet));

        Bar Part(string label, Func<SheetCost, Money> part) =>
            new(label, Sum(part).Amount, Sum(part).Text(_settings.Style));
    }
}
