using System.Globalization;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Planning;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;
using Ledger.Terminal.Screens;
using Ledger.Terminal.Tables;
using Terminal.Gui.Input;

namespace Ledger.Terminal.Forms;

/// <summary>A session or a trip is planned; below the line stands what it comes to, live.</summary>
internal sealed class PlanForm : FormModel
{
    private const int MostLines = 12;
    private static readonly string[] _whats = ["session", "trip"];
    private readonly Holdings _holdings;
    private readonly List<PlanLineFields> _lines = [];

    /// <summary>Opens the form for sheets that were picked.</summary>
    public PlanForm(ILedger ledger, IReadOnlyList<RequestedSheets> sheets)
        : this(ledger) => TakeOver(sheets);

    /// <summary>Opens the form for a plan that is planned anew; for a new one without it.</summary>
    public PlanForm(ILedger ledger, KeptPlan? plan = null)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        Process = new("Process", 16, FieldKind.Choice) { Choices = () => _holdings.Processes.Select(process => process.Name) };
        Plan.Offer(plan?.Name ?? NextPlan());
        On.Offer(Dates.Text(plan is not null && plan.On > ledger.Today ? plan.On : ledger.Today));
        What.Offer(_whats[plan is { IsTrip: true } ? 1 : 0]);
        Process.Offer(plan is null ? _holdings.Processes.FirstOrDefault()?.Name : plan.Request.Process);
        Times.Offer(plan?.Request.Times.Text);
        Bath.Offer(plan?.Request.Bath);
        Note.Offer(plan?.Note);
        TakeOver(plan?.Request.Sheets ?? []);
    }

    public override string Title => "Plan";

    public override IReadOnlyList<string> Purpose =>
    [
        "A session or a trip that is to come. One line for each film and group; a holder or a subject spreads its sheets over the batches.",
        "F7 takes over the exposed sheets that wait, each by its number; Exposed sheets on the Plan screen (F2 finds it) picks some of them.",
        "Below the line stands what it comes to: the batches, the trays, what is short and what would cure it, and what it costs.",
        "Saving keeps the plan with its day, so that what it will use is counted on. Nothing on the shelf changes.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows =>
        [[Plan, On, What], [Process, Times, Bath], [Note], .. _lines.Select(line => line.Fields)];

    public override IReadOnlyList<FormKey> Keys =>
    [
        new(Key.F12, "Same again", "takes over the sheets of the last session", _ => SameAgain()),
        new(Key.F3, "+4 sheets", "adds four sheets to the line with the cursor", AddFour),
        new(Key.F4, "Line", "adds a line for another film or group", _ => _lines.Count < MostLines ? Another().Sheets : null),
        new(Key.F5, "Drop", "takes the line with the cursor away", Drop),
        new(Key.F7, "Exposed", "takes over all exposed sheets that wait for their development",
            _ => TakeOver(KnownSheets.Request(KnownSheets.Exposed(_holdings)))),
    ];

    public override FormField First => _lines[0].Sheets;

    public FormField Plan { get; } = new("Plan", 14) { Hint = "A name; an open plan of this name is planned anew." };

    public FormField On { get; } = new("for", 10, FieldKind.Date) { Hint = "The day it is planned for; Up and Down change it." };

    public FormField What { get; } = new("as", 8, FieldKind.Choice) { Choices = () => _whats, Hint = "A trip takes film along and develops nothing." };

    public FormField Process { get; }

    public FormField Times { get; } = new("minutes", 16) { Hint = "In place of the process's: 11, or 11 N-1=9 N+1=14." };

    public FormField Bath { get; } = new("bath", 8) { Hint = "The first of a pair, or one of each item: F9, ST2; empty for the only one." };

    public FormField Note { get; } = new("Note", 50);

    /// <summary>The lines.</summary>
    public IReadOnlyList<PlanLineFields> Lines => _lines;

    /// <summary>A line that names its sheets counts them and knows their film and group.</summary>
    public override void Edited(FormField field)
    {
        if (_lines.Find(line => line.From == field) is not { } line || KnownSheets.Find(field.Text, _holdings.Film) is not [var first, ..] sheets)
            return;
        line.Film.Offer(first.Item);
        line.Group.Offer(first.Exposure?.Group);
        line.Sheets.Offer(sheets.Count.ToString(CultureInfo.InvariantCulture));
    }

    protected override Entry Read(Answers answers) => new PlannedSession
    {
        Key = EntryKey,
        Date = Ledger.Today,
        Plan = answers.Needed(Plan),
        On = answers.Date(On),
        IsTrip = answers.OneOf(What, _whats) == 1,
        Note = Note.Text.Trim(),
        Request = new()
        {
            Process = Process.Text.Trim(),
            Times = ReadTimes(answers),
            Bath = Answers.Optional(Bath),
            Sheets = [.. Written(answers).Select(line => line.Read(answers))],
        },
    };

    protected override IReadOnlyList<Block> More(Posting posting) => posting.Entry is PlannedSession { IsTrip: false } planned
        ? new PlanBlocks(_holdings.Settings).Of(SessionPlanning.Of(planned.Request, _holdings, planned.On))
        : [];

    private GroupTimes ReadTimes(Answers answers)
    {
        if (GroupTimes.Read(Times.Text) is { } times)
            return times;
        answers.Problem($"minutes: \"{Times.Text.Trim()}\" is not accepted; write {GroupTimes.Accepted}");
        return GroupTimes.None;
    }

    private List<PlanLineFields> Written(Answers answers)
    {
        var written = _lines.Where(line => !line.Sheets.IsEmpty).ToList();
        if (written.Count == 0)
            answers.Problem("sheets: how many are to be developed? F3 adds four");
        return written;
    }

    private PlanLineFields NewLine()
    {
        var line = new PlanLineFields(() => _holdings.Items.Where(item => item.Kind == ItemKind.Film).Select(film => film.Code));
        _lines.Add(line);
        return line;
    }

    /// <summary>Puts these lines in place of those that stand there; without any, one to begin with.</summary>
    private FormField? TakeOver(IReadOnlyList<RequestedSheets> sheets)
    {
        if (sheets.Count == 0 && _lines.Count > 0)
            return null;
        _lines.Clear();
        foreach (var line in sheets)
            NewLine().Offer(line);
        if (_lines.Count == 0)
            Another();
        return First;
    }

    private FormField? SameAgain()
    {
        if (Ledger.Sessions(Ledger.Today, null, 1) is not [var last])
            return null;
        Process.Offer(last.Process);
        return TakeOver([
            .. last.Lines.Where(line => line.Fate != Fate.Dummy).GroupBy(line => (line.Item, line.Group)).Select(lines => new RequestedSheets
            {
                Film = lines.Key.Item, Group = lines.Key.Group, Count = (int)lines.Sum(line => line.Sheets),
            }),
        ]);
    }

    private PlanLineFields Another()
    {
        var before = _lines.LastOrDefault();
        var line = NewLine();
        line.Film.Offer(before?.Film.Text ?? _holdings.Items.FirstOrDefault(item => item.Kind == ItemKind.Film)?.Code);
        line.Group.Offer(before?.Group.Text ?? "N");
        return line;
    }

    private FormField? AddFour(FormField? at)
    {
        var line = LineOf(at) ?? _lines[^1];
        line.Add(4);
        return line.Sheets;
    }

    private FormField? Drop(FormField? at)
    {
        if (_lines.Count < 2 || LineOf(at) is not { } line)
            return null;
        _lines.Remove(line);
        return _lines[^1].Sheets;
    }

    private PlanLineFields? LineOf(FormField? field) => _lines.Find(line => field is not null && line.Fields.Contains(field));

    private string NextPlan()
    {
        var name = "P1";
        while (_holdings.Plan(name) is not null)
            name = NextName.After(name);
        return name;
    }
}
