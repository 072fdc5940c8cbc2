using Ledger.App.Commands.Plan;
using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>print mixing-sheet: the plan of a session, large.</summary>
internal sealed class PrintMixingSheet : PrintCommand
{
    private readonly PlanOptions _plan = new();

    public PrintMixingSheet(Workbench bench)
        : base(bench, "mixing-sheet",
            "Prints the plan of a session in large letters: what to measure, the trays, the sheets in order.", """
            Example: trayledger print mixing-sheet --from-plan tarn --html sheet.html
            """)
    {
        for (var i = 0; i < _plan.All.Count; i++)
            Options.Insert(i, _plan.All[i]);
    }

    protected override PrintedPage Page(ParseResult parse, ILedger ledger, Holdings holdings) =>
        MixingSheet.Of(_plan.PlanIn(parse, holdings, ledger), _plan.NameIn(parse), holdings.Settings.Style);
}
