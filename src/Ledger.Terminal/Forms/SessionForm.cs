using System.Globalization;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Planning;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;
using Terminal.Gui.Input;

namespace Ledger.Terminal.Forms;

/// <summary>A session of developing.</summary>
internal sealed class SessionForm : FormModel
{
    private const int MostLines = 12;
    private readonly Holdings _holdings;
    private readonly SessionRecord? _last;
    private readonly List<SessionLineFields> _lines = [];
    private KeptPlan? _plan;
    private IReadOnlyList<string> _drawFirst = [];

    /// <summary>Opens the form with a plan in it: what differed is changed, and it is saved.</summary>
    public SessionForm(ILedger ledger, KeptPlan plan)
        : this(ledger) => TakeOver(plan);

    public SessionForm(ILedger ledger)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        _last = ledger.Sessions(ledger.Today, null, 1) is [var last, ..] ? last : null;
        Process = new("Process", 16, FieldKind.Choice) { Choices = () => _holdings.Processes.Select(process => process.Name) };
        Bath = new("Bath", 12, FieldKind.Choice)
        {
            Choices = () => Named is { } process ? Baths.Namings(process) : [],
            Hint = "The film went through it: the first of a pair, or one of each item: F9, ST2.",
        };
        Session.Offer(_last is null ? "S01" : NextName.After(_last.Session));
        Process.Offer(_last?.Process ?? _holdings.Processes.FirstOrDefault()?.Name);
        OfferBath();
        AddLine();
    }

    public override string Title => _plan is null ? "Session" : $"Session, from the plan {_plan.Name}";

    public override IReadOnlyList<string> Purpose =>
    [
        "Film that was developed. One line for each batch: a film, how many sheets, the group, the concentrate, and what became of them.",
        "Sheets leave their boxes, developer and supplies are used up, and the area passes through the bath.",
        "Leave the developer empty on every line and each line takes what the process asks for its area.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows =>
    [
        [Session, Date, Process], [Bath, Note], .. _lines.SelectMany(line => line.Rows),
        .. _lines.Any(line => line.IsKnown) ? [[Anyway]] : Array.Empty<IReadOnlyList<FormField>>(), [Difference],
    ];

    public override IReadOnlyList<FormKey> Keys =>
    [
        new(Key.F12, "Same again", "takes over the lines of the last session", _ => SameAgain()),
        new(Key.F3, "+4 sheets", "adds four sheets to the line with the cursor", AddFour),
        new(Key.F4, "Line", "adds a line like the last one, for another batch", _ => Another()),
        new(Key.F10, "Split", "gives the last sheet of the line a line of its own, for another fate", Split),
        new(Key.F7, "Known", "says which sheets the line with the cursor is about, what spoiled them, their box and a note", Known),
        new(Key.F5, "Drop", "takes the line with the cursor away", Drop),
    ];

    public override FormField First => _lines[0].Film.IsEmpty ? _lines[0].Film : _lines[0].Sheets;

    public FormField Session { get; } = new("Session", 8) { Hint = "A name of its own." };

    public FormField Process { get; }

    public FormField Bath { get; }

    public FormField Note { get; } = new("Note", 50);

    public FormField Anyway { get; } = YesNo.Anyway();

    public override FormField Difference { get; } = new("Book the difference", 4, FieldKind.Tick)
    {
        Hint = "When a bottle held more than the book says.",
    };

    /// <summary>The lines.</summary>
    public IReadOnlyList<SessionLineFields> Lines => _lines;

    public override void Edited(FormField field)
    {
        if (field == Process)
            OfferBath();
        if (_lines.Find(line => line.From == field) is { } known)
            OfferSheets(known);
    }

    protected override Entry Read(Answers answers) => new SessionLog
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Session = answers.Needed(Session),
        Process = answers.Needed(Process),
        Bath = Answers.Optional(Bath),
        Lines = [.. Written(answers).Select(line => line.Read(answers))],
        Anyway = answers.IsYes(Anyway),
        BooksDifference = Difference.IsTicked,
        DrawFirst = _drawFirst,
        Plan = _plan?.Name,
        Note = Note.Text,
    };

    private List<SessionLineFields> Written(Answers answers)
    {
        var written = _lines.Where(line => !line.IsBlank).ToList();
        if (written.Count == 0)
            answers.Problem("sheets: how many were developed? F3 adds four, F12 takes over the last session");
        return written;
    }

    private SessionLineFields AddLine()
    {
        var before = _lines.LastOrDefault();
        var line = new SessionLineFields(() => Films.Select(film => film.Code), Sources, Boxes);
        line.Film.Offer(before?.Film.Text ?? _last?.Lines[^1].Item ?? Films.FirstOrDefault()?.Code);
        line.Group.Offer(before?.Group.Text ?? "N");
        line.Fate.Offer(Fates.Names[0]);
        _lines.Add(line);
        return line;
    }

    private FormField? Another() => _lines.Count < MostLines ? AddLine().Sheets : null;

    /// <summary>One line for each film and group of the last session; its concentrate is known as a sum and shared by area.</summary>
    private FormField? SameAgain()
    {
        if (_last is null)
            return null;
        var batches = _last.Lines.Where(sheets => sheets.Fate != Fate.Dummy)
            .GroupBy(sheets => (sheets.Item, sheets.Group)).Take(MostLines).ToList();
        var developer = Share.Split(_last.Developer.Microlitres, [.. batches.Select(batch => batch.Sum(sheets => sheets.Area.Hundredths))]);
        _lines.Clear();
        for (var i = 0; i < batches.Count; i++)
        {
            var line = AddLine();
            line.Film.Type(batches[i].Key.Item);
            line.Sheets.Type(batches[i].Sum(sheets => sheets.Sheets).ToString(CultureInfo.InvariantCulture));
            line.Group.Type(batches[i].Key.Group);
            line.Developer.Type(developer[i] == 0 ? "" : Scaled.InUnits(developer[i], 1000));
        }

        Process.Offer(_last.Process);
        return First;
    }

    /// <summary>A line for each batch of a plan, with what it asks for, from the containers that it suggests.</summary>
    private void TakeOver(KeptPlan plan)
    {
        if (SessionPlanning.Of(plan.Request, _holdings) is not Planned { Plan: var worked })
            return;
        var log = worked.ToLog(EntryKey, Session.Text, Ledger.Today);
        (_plan, _drawFirst) = (plan, log.DrawFirst);
        _lines.Clear();
        foreach (var line in log.Lines)
        {
            var fields = AddLine();
            fields.Film.Offer(line.Item);
            fields.Sheets.Offer(line.Sheets.ToString(CultureInfo.InvariantCulture));
            fields.Group.Offer(line.Group);
            fields.Developer.Offer(line.Developer is { } developer ? Scaled.InUnits(developer.Microlitres, 1000) : "");
            fields.Fate.Offer(line.Fate.Name());
            fields.From.Offer(line.From);
            fields.IsKnown = line.From is not null;
        }

        Process.Offer(worked.Process.Name);
        OfferBath();
        Bath.Offer(log.Bath ?? Bath.Text);
    }

    private FormField? AddFour(FormField? at)
    {
        var line = LineOf(at) ?? _lines[^1];
        line.Add(4);
        return line.Sheets;
    }

    private FormField? Split(FormField? at)
    {
        var line = LineOf(at) ?? _lines[^1];
        if (!line.CanSplit)
            return null;
        var apart = AddLine();
        line.SplitTo(apart);
        _lines.Remove(apart);
        _lines.Insert(_lines.IndexOf(line) + 1, apart);
        return apart.Fate;
    }

    private FormField? Drop(FormField? at)
    {
        if (_lines.Count < 2 || LineOf(at) is not { } line)
            return null;
        _lines.Remove(line);
        return _lines[^1].Sheets;
    }

    private FormField? Known(FormField? at)
    {
        var line = LineOf(at) ?? _lines[^1];
        line.IsKnown = true;
        line.From.Offer(Sources().FirstOrDefault());
        OfferSheets(line);
        return line.From;
    }

    /// <summary>Boxes of exposed sheets first, then sides with an exposed sheet.</summary>
    private IEnumerable<string> Sources() =>
    [
        .. _holdings.Film.ExposedBoxes.Select(box => box.Code),
        .. _holdings.Film.Sheets.Where(sheet => sheet.Exposure is not null && _holdings.Film.Side(sheet.At) is not null)
            .Select(sheet => sheet.SideCode),
    ];

    private IEnumerable<string> Boxes() => Films.SelectMany(film => _holdings.ContainersOf(film.Code)).Select(box => box.Code);

    /// <summary>What is in the place that is named: its film, its group, and how many sheets.</summary>
    private void OfferSheets(SessionLineFields line)
    {
        var sheets = KnownSheets.Find(line.From.Text, _holdings.Film);
        if (sheets.Count == 0)
            return;
        line.Film.Offer(sheets[0].Item);
        line.Group.Offer(sheets[0].Exposure?.Group);
        line.Sheets.Offer(sheets.Count.ToString(CultureInfo.InvariantCulture));
    }

    private SessionLineFields? LineOf(FormField? field) => _lines.Find(line => field is not null && line.Fields.Contains(field));

    private IEnumerable<Item> Films => _holdings.Items.Where(item => item.Kind == ItemKind.Film);

    private Process? Named => _holdings.Process(Process.Text);

    private SessionBaths Baths => new(_holdings, Ledger.Today);

    private void OfferBath() => Bath.Offer(Named is { } process ? Baths.Known(process) : "");
}
