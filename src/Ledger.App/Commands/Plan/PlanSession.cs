using Ledger.App.Commands.Show;

namespace Ledger.App.Commands.Plan;

/// <summary>
/// plan session: what goes where and when, whether there is enough of everything, and what it will cost.
/// </summary>
internal sealed class PlanSession : ShowCommand<SessionPlan>
{
    private readonly PlanOptions _plan = new();
    private readonly Option<bool> _exitCode = new("--exit-code")
    {
        Description = "end with 10 when something is short, or a bath cannot be used or must be named",
    };

    public PlanSession(Workbench bench)
        : base(bench, "session", "Shows the batches, the trays, what is short, and what a session costs.", """
            Sheets of one film and one group go into batches of your limit at most (the
            setting batch-sheets), those of one subject or holder into different ones.
            Nothing is written. To keep a plan with its day: trayledger record plan
            On paper, to read before lights-out: trayledger print mixing-sheet, with the same options
            Afterwards: trayledger record session S23 --from-plan NAME
            Example: trayledger plan session --process film --minutes "11 N-1=9"
                       --sheets "4 fen80 N: mill race" "2 fen80 N-1 in E04"
            Example: trayledger plan session --exposed "fen80 N" "fen80 N-1"
            """, PlanShape.Of)
    {
        for (var i = 0; i < _plan.All.Count; i++)
            Options.Insert(i, _plan.All[i]);
        Options.Add(_exitCode);
    }

    protected override SessionPlan Read(View view, ParseResult parse) =>
        _plan.PlanIn(parse, view.Holdings, view.Ledger);

    protected override void WriteText(SessionPlan plan, View view, TextWriter output) =>
        new PlanText(plan, view).WriteTo(output);

    protected override int Status(SessionPlan plan, ParseResult parse) =>
        parse.GetValue(_exitCode) && !plan.CanRun ? ExitStatus.NeedsTheUser : ExitStatus.Done;
}
