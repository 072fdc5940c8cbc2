using Ledger.Core.Journal;
using Ledger.Core.Journal.Kinds;
using Ledger.Core.Measures;
using Ledger.Core.Planning;
using Ledger.Core.Sessions;
using Ledger.Terminal.Pages;
using Terminal.Gui.Input;

namespace Ledger.Terminal.Forms;

/// <summary>A session of developing.</summary>
internal sealed class SessionForm : SheetLines
{
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
            ledger, "session", ("session", last is null ? "S01" : NextName.After(last.Session)), ("process", last?.Process),
            ("item", last?.Lines[^1].Item ?? Films(ledger).FirstOrDefault()))
    {
        _last = last;
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
        new(Key.F10, "Split", "gives the last sheet of the line a line of its own, for another fate", at => Split(LineAt(at))),
        new(Key.F7, "Known", "says which sheets the line with the cursor is about, what spoiled them, their box and a note", at => Known(LineAt(at))),
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

    private static IEnumerable<string> Films(ILedger ledger) => ledger.HoldingsOn(ledger.Today).Items
        .Where(item => item is { Kind: Core.Stock.ItemKind.Film, IsPaper: false }).Select(item => item.Code);

    /// <summary>Whether the developer has a part B that can be measured out apart from what the dilution asks.</summary>
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

    /// <summary>One line for each film and group of the last session; its concentrate is known as a sum and shared by area.</summary>
    private FormField? SameAgain()
    {
        if (_last is null)
            return null;
        var batches = Batches(_last);
        var developer = Share.Split(_last.Developer.Microlitres, [.. batches.Select(batch => batch.Area)]);
        ClearLines();
        for (var i = 0; i < batches.Count; i++)
        {
            var line = AddLine();
            line["item"].Type(batches[i].Film);
            line["sheets"].Type(Scaled.ToText(batches[i].Sheets, 0));
            line["group"].Type(batches[i].Group);
            line.Offer("developer_ml", developer[i] == 0 ? "" : $"{Scaled.InUnits(developer[i], 1000)}ml");
            line["developer_ml"].Type(line["developer_ml"].Text);
        }

        this["process"].Begin(_last.Process);
        OfferAll();
        return First;
    }

    /// <summary>Gives the last sheet of a line to another line, which went through the trays with it and so measures out no developer.</summary>
    private FormField? Split(FieldBoxes line)
    {
        if (line["sheets"].Figure is not >= 2)
            return null;
        var names = line["from"].Text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
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

    /// <summary>The first known sheets of the film and group of a line; what nobody has chosen of the two gives way.</summary>
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
