using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>The sessions and trips that are planned, the next one first.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class PlansModel(ILedger ledger) : TableModel(ledger)
{
    private Holdings _holdings = new(ledger.Today);
    private List<OpenPlan> _plans = [];

    public override string Name => "Plan";

    public override IReadOnlyList<string> Purpose =>
    [
        "Sessions and trips that are planned, the next one first. A screen fogs film, so a session is planned and "
            + "printed in the light: W writes its mixing sheet.",
        "The details show whether enough of everything is usable, the batches in order, what goes into each tray, and "
            + "what it costs.",
        "After the session the plan is opened, what differed is changed, and it is saved in one step.",
    ];

    public override WorkedExample Example { get; } = new(
        "", "The details of tarn list its batches, its trays, what is short, and what it costs.", "tarn");

    public override string Empty =>
        "Nothing is planned. N plans a session or a trip, F2 finds exposed sheets and processes.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Plan", 16, Least: 8), new("For", 10), new("What", 16, Least: 8), new("Sheets", 6, IsFigure: true),
        new("Film", 34, Least: 16),
    ];

    public override int Count => _plans.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.Of(KeyTable.New, "plans a session or a trip", _ => new FormStep(new PlanForm(Ledger))),
        ScreenAction.Of(KeyTable.Amend, "changes the selected plan",
            row => row < 0 ? null : new FormStep(new PlanForm(Ledger, _plans[row]))),
        ScreenAction.Rare("Give plan up", "ends the selected plan without a session",
            row => row < 0 ? null : new FormStep(new KindForm(Ledger, "plan-ending", ("plan", _plans[row].Name)))),
        Entries.TakeBack("takes the selected plan back"),
        Entries.Entries,
        ScreenAction.Paper("the mixing sheet of the selected plan", row => paper => paper.MixingSheet(IdOf(row))),
    ];

    public override string? OpenLabel => "Log it";

    private EntryKeys Entries => new(Ledger, row => new(SubjectKind.Plan, IdOf(row)));

    public override void Refresh()
    {
        _holdings = Ledger.HoldingsOn(Today);
        _plans = [.. _holdings.Plans];
    }

    public override string IdOf(int row) => _plans[row].Name;

    public override string? Traced(int row) => IdOf(row);

    public override string Cell(int row, int column)
    {
        var plan = _plans[row];
        return column switch
        {
            0 => plan.Name,
            1 => Dates.Text(plan.On),
            2 => plan.IsTrip ? "trip" : plan.Request.Process,
            3 => plan.Sheets.ToString(CultureInfo.InvariantCulture),
            _ => string.Join(", ",
                plan.Request.Sheets.Select(line => $"{line.Count} {line.Film} {line.Group}".TrimEnd())),
        };
    }

    public override Step? Open(int row) => row < 0 ? null
        : _plans[row].IsTrip ? new MessageStep(
            $"{_plans[row].Name} is a trip: Give plan up (F2 finds it) ends it when it is over, and a session of its "
                + "own develops the film.")
        : SessionPlanning.Of(_plans[row].Request, _holdings, Today) is NotPlanned not
            ? new MessageStep($"{RefusalText.Of(not.Refusal)} {KeyTable.Amend.Letter} changes the plan.")
            : new FormStep(new SessionForm(Ledger, _plans[row]));

    public override IReadOnlyList<Block> Details(int row) =>
        row < 0 ? [] : [Facts(_plans[row]), .. Outlook(_plans[row])];

    private Block Facts(OpenPlan plan) =>
        Block.Facts($"{plan.Name}, {ScreenText.Away(NodaTime.Period.DaysBetween(Today, plan.On))}", [
            ("For", $"{Dates.Text(plan.On)}, {(plan.IsTrip ? "a trip" : plan.Request.Process)}"),
            ("Times", plan.Request.Times.Text),
            ("Note", plan.Note),
            ("Planned", Dates.Text(plan.MadeOn)),
        ]);

    /// <summary>A trip takes film and no chemistry; a session whose day is past is judged as of today.</summary>
    private IReadOnlyList<Block> Outlook(OpenPlan plan) => plan.IsTrip
        ? [Block.Of("It takes along", PlannedDemand.Of(_holdings).Where(known => known.Plan == plan.Name)
            .Select(known => $"  {known.Quantity.ToText(_holdings.Settings.Style)} of {known.Item}"))]
        : new PlanBlocks(_holdings.Settings,
            RefusalText.Of).Of(SessionPlanning.Of(plan.Request, _holdings, plan.On > Today ? plan.On : Today, Ledger));
}
