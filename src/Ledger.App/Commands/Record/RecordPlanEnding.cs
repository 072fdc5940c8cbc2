using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record plan-ending: a plan is given up, or a trip is over.</summary>
internal sealed class RecordPlanEnding : RecordCommand
{
    private readonly Argument<string> _plan = Typed.Argument("plan", Text.NotEmpty, "the plan's name");
    private readonly Option<string> _reason = Typed.Option<string>("--reason", "TEXT", Text.NotEmpty, "why: given up, rained off, done");

    public RecordPlanEnding(Workbench bench)
        : base(bench, "plan-ending", "A plan is given up, or a trip is over: it is no longer counted on.", """
            Example: trayledger record plan-ending spring --reason "rained off"
            """)
    {
        Arguments.Add(_plan);
        _reason.Required = true;
        AddOwn(_reason);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new PlanEnding
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Plan = parse.GetRequiredValue(_plan),
        Reason = parse.GetRequiredValue(_reason),
    };
}
