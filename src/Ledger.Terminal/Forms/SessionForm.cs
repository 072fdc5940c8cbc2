using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>A session of developing.</summary>
internal sealed class SessionForm : SheetLines
{
    /// <summary>The lines whose sheets were named because they wait, not by the user.</summary>
    private readonly HashSet<FieldBoxes> _offered = [];
    private readonly SessionRecord? _last;
    private readonly string? _plan;

    /// <summary>Opens the form with a plan in it: what differed is changed, and it is saved.</summary>
    public SessionForm(ILedger ledger, OpenPlan plan)
        : this(ledger)
    {
        if (SessionPlanning.Of(plan.Request, Holdings) is not Planned { Plan: var worked })
            return;
        _plan = plan.Name;
        var log = worked.ToLog(EntryKey, this["session"].Text, Ledger.Today) with { Plan = plan.Name };
        Own.Begin(EntryWriting.Write(EntryKinds.Of(log), log, Terms));
        TakeOver("session", log);
        OfferAll();
    }

    public SessionForm(ILedger ledger)
        : this(ledger, ledger.Sessions(ledger.Today, null, 1) is [var last, ..] ? last : null)
    {
    }

    private SessionForm(ILedger ledger, SessionRecord? last)
        : base(
            ledger, "session", ("session", last is null ? "S01" : NextName.After(last.Session)),
            ("process", last?.Process), ("item", last?.Lines[^1].Item ?? Films(ledger).FirstOrDefault()))
    {
        _last = last;
        OfferWaiting();
    }

    /// <summary>There is one session at a time, whatever it is to be called.</summary>
    protected override string About => _plan ?? "";

    public override string Title => _plan is null ? base.Title : $"Session, from the plan {_plan}";

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows =>
    [
        [this["session"], this["date"], this["process"]], [this["bath"], Own["note"]],
        .. this["plan"].IsEmpty && this["draw_first"].IsEmpty ? NoRow : [[this["plan"], this["draw_first"]]],
        .. Lines.SelectMany(Row),
        [.. this["anyway"].IsTicked ? [this["anyway"]] : Array.Empty<FormField>(), Difference!],
    ];

    public override IReadOnlyList<FormKey> Keys =>
    [
        new(Key.F12, "Same again", "takes over the lines of the last session", _ => SameAgain()),
        .. SheetKeys,
        new(Key.F10, "Split", "gives the last sheet of the line a line of its own, for another fate",
            at => Split(LineAt(at))),
        new(Key.F7, "Known",
            "says which sheets the line with the cursor is about, what spoiled them, their box and a "
                + "note", at => Known(LineAt(at))),
    ];

    protected override bool IsBlank(FieldBoxes line) => base.IsBlank(line) && line["developer_ml"].IsEmpty;

    /// <summary>What was weighed is written where the concentrate is measured out: the unit says it.</summary>
    protected override EntryText Written()
    {
        var text = base.Written();
        foreach (var line in text.Lines)
            if (Measurement.Read(line["developer_ml"], out _) is { Unit: Unit.Gram })
                (line["developer_g"], line["developer_ml"]) = (line["developer_ml"], "");
        return text;
    }

    private static IReadOnlyList<IReadOnlyList<FormField>> NoRow => [];

    private static IEnumerable<string> Films(ILedger ledger) => ledger.HoldingsOn(ledger.Today)
        .ItemsOf(Core.Stock.ItemKind.Film).Where(item => !item.IsPaper).Select(item => item.Code);

    /// <summary>
    /// Whether the developer has a part B that can be measured out apart from what the dilution asks.
    /// </summary>
    private bool HasParts => Holdings.Process(this["process"].Text.Trim())?.Developer is { Item: { } code } step
        && Holdings.Item(code) is { } developer && (step.Dilution ?? developer.Dilution)?.OtherPartCount > 0;

    private IEnumerable<IReadOnlyList<FormField>> Row(FieldBoxes line)
    {
        yield return [line["item"], line["sheets"], line["group"], line["developer_ml"], line["fate"]];
        if (!IsKnown(line))
            yield break;
        yield return [line["from"], line["cause"]];
        yield return [line["container"], line["note"]];
        if (!line["other_parts_ml"].IsEmpty || HasParts)
            yield return [line["other_parts_ml"]];
    }

    /// <summary>The batches of the last session with their doses and baths; sheets that wait are named first.</summary>
    private FormField? SameAgain()
    {
        if (_last is null)
            return null;
        var again = WaitingFirst.In(SessionAgain.Of(_last, Ledger.Said(_last.Number) as SessionLog, Holdings),
            Holdings);
        TakeOver("session", again);
        foreach (var line in Lines)
        {
            line["developer_ml"].Type(line["developer_ml"].Text);
            if (!line["from"].IsEmpty)
                _offered.Add(line);
        }

        this["process"].Begin(again.Process);
        if (again.Bath is { } bath)
            this["bath"].Begin(bath);
        OfferAll();
        return First;
    }

    /// <summary>Sheets that wait are offered before film out of a box.</summary>
    private void OfferWaiting()
    {
        if (WaitingFirst.Batch(Holdings) is not { } waiting)
            return;
        var line = Lines[0];
        Know(line);
        line["item"].Begin(waiting.Film);
        line["group"].Begin(waiting.Group);
        line["sheets"].Begin(Scaled.ToText(waiting.Count, 0));
        line["from"].Begin(waiting.From);
        _offered.Add(line);
    }

    /// <summary>What was only offered gives way when a line is said to be about other film.</summary>
    public override void Edited(FormField field)
    {
        base.Edited(field);
        if (LineOf(field) is { } line && _offered.Contains(line) && !line["from"].IsTouched
            && (line["item"] == field || line["group"] == field || line["sheets"] == field))
            line["from"].Begin(Named(line));
    }

    /// <summary>As many of the sheets that wait as the line says; nothing when there are not so many.</summary>
    private string? Named(FieldBoxes line)
    {
        var sheets = KnownSheets.Exposed(Holdings, line["item"].Text, line["group"].Text, Ledger.Today)
            .Take((int)(line["sheets"].Figure ?? 0)).ToList();
        return sheets.Count > 0 && sheets.Count == line["sheets"].Figure ? WaitingFirst.Names(sheets, Holdings) : null;
    }

    /// <summary>
    /// Gives the last sheet of a line to another line, which went through the trays with it and so measures out no
    /// developer.
    /// </summary>
    private FormField? Split(FieldBoxes line)
    {
        if (line["sheets"].Figure is not >= 2)
            return null;
        var names = line["from"].Text.Split(',',
            StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var isByName = names.Length > 1 && names.Length == line["sheets"].Figure;
        var apart = Like(line, Lines.ToList().IndexOf(line) + 1);
        apart["sheets"].Type("1");
        apart["fate"].Begin(line["fate"].Text);
        apart["from"].Begin(isByName ? names[^1] : line["from"].Text);
        if (IsKnown(line))
            Know(apart);
        Add(line, -1);
        if (isByName)
            line["from"].Type(string.Join(", ", names[..^1]));
        return apart["fate"];
    }

    /// <summary>
    /// The first known sheets of the film and group of a line; what nobody has chosen of the two gives way.
    /// </summary>
    private static string? FirstKnown(FieldBoxes line)
    {
        foreach (var name in new[] { "", "group", "item" })
        {
            if (name.Length > 0 && !line[name].IsTouched)
                line[name].Begin(null);
            if (line["from"].Choices().FirstOrDefault(choice => choice.Length > 0) is { } found)
                return found;
        }

        return null;
    }

    private FormField? Known(FieldBoxes line)
    {
        Know(line);
        if (line["from"].IsEmpty)
            line["from"].Offer(FirstKnown(line));
        OfferSheets(line);
        return line["from"];
    }
}
