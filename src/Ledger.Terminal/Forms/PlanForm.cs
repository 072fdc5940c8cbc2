using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>A session or a trip is planned; below the line stands what it comes to, live.</summary>
internal sealed class PlanForm : SheetLines
{
    private readonly OpenPlan? _plan;

    /// <summary>Opens the form for sheets that were picked.</summary>
    public PlanForm(ILedger ledger, IReadOnlyList<RequestedSheets> sheets)
        : this(ledger) => TakeOver(sheets);

    /// <summary>Opens the form for a plan that is changed; for a new one without it.</summary>
    public PlanForm(ILedger ledger, OpenPlan? plan = null)
        : base(
            ledger, "plan", ("plan", plan?.Name),
            ("on", plan is null || plan.On <= ledger.Today ? null : Dates.Text(plan.On)),
            ("what", plan is { IsTrip: true } ? "trip" : null), ("process", plan?.Request.Process),
            ("minutes", plan?.Request.Times.Text), ("bath", plan?.Request.Bath), ("note", plan?.Note))
    {
        _plan = plan;
        if (plan is not null)
            TakeOver(plan.Request.Sheets);
        else if (Holdings.ItemsOf(ItemKind.Film).FirstOrDefault(item => !item.IsPaper) is { } film)
            Lines[0]["item"].Begin(film.Code);
    }

    protected override string About => _plan?.Name ?? "";

    public override IReadOnlyList<string> Purpose =>
    [
        .. base.Purpose,
        "F7 takes over the exposed sheets that wait, each by its number; Exposed sheets on the Plan screen (F2 finds "
            + "it) picks some of them.",
        "Below the line stands what it comes to: the batches, the trays, what is short and what would cure it, and "
            + "what it costs.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows =>
    [
        [this["plan"], this["on"], this["what"]], [this["process"], this["minutes"], this["bath"]],
        [Own["note"]], .. Lines.SelectMany(Row),
    ];

    public override IReadOnlyList<FormKey> Keys =>
    [
        new(Key.F12, "Same again", "takes over the sheets of the last session", _ => SameAgain()),
        .. SheetKeys,
        new(Key.F7, "Exposed", "takes over all exposed sheets that wait for their development",
            _ => TakeOver(KnownSheets.Request(KnownSheets.Exposed(Holdings)))),
    ];

    protected override IReadOnlyList<Block> More(Posting posting) =>
        posting.Entry is PlannedSession { IsTrip: false } planned
            ? new PlanBlocks(Holdings.Settings,
                RefusalText.Of).Of(SessionPlanning.Of(planned.Request, Holdings, planned.On, Ledger))
            : [];

    private IEnumerable<IReadOnlyList<FormField>> Row(FieldBoxes line) => IsKnown(line)
        ? [[line["item"], line["sheets"], line["group"], line["from"]], [line["batch"]]]
        : [[line["item"], line["sheets"], line["group"], line["holder"]], [line["subject"], line["batch"]]];

    /// <summary>Puts these lines in place of those that stand there.</summary>
    private FormField? TakeOver(IReadOnlyList<RequestedSheets> sheets)
    {
        if (sheets.Count == 0)
            return null;
        TakeOver("plan", new PlannedSession
        {
            Key = EntryKey, Date = Ledger.Today, Plan = "", On = Ledger.Today, Request = new() { Sheets = sheets },
        });
        OfferAll();
        return First;
    }

    private FormField? SameAgain()
    {
        if (Ledger.Sessions(Ledger.Today, null, 1) is not [var last])
            return null;
        this["process"].Begin(last.Process);
        var again = WaitingFirst.In(SessionAgain.Of(last, Ledger.Said(last.Number) as SessionLog, Holdings), Holdings);
        return TakeOver(
        [
            .. again.Lines.Where(line => line.Fate != Fate.Dummy)
                .GroupBy(line => (line.Item, line.Group, IsKnown: line.From is not null))
                .Select(lines => new RequestedSheets
                {
                    Film = lines.Key.Item, Group = lines.Key.Group, Count = lines.Sum(line => line.Sheets),
                    From = lines.Key.IsKnown ? string.Join(", ", lines.Select(line => line.From)) : null,
                }),
        ]);
    }
}
