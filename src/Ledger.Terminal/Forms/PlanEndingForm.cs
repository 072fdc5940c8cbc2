using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.Terminal.Forms;

/// <summary>A plan is given up, or a trip is over.</summary>
internal sealed class PlanEndingForm : FormModel
{
    private readonly string _plan;

    public PlanEndingForm(ILedger ledger, string plan)
        : base(ledger)
    {
        _plan = plan;
        Reason.Offer("given up");
    }

    public override string Title => $"End the plan {_plan}";

    public override IReadOnlyList<string> Purpose =>
        ["A plan is given up, or a trip is over: what it would use is no longer counted on. A session that is logged from its plan ends it by itself."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => [[Date], [Reason]];

    public override FormField First => Reason;

    public FormField Reason { get; } = new("Why", 40, FieldKind.Choice) { Choices = () => ["given up", "the trip is over", "rained off"] };

    protected override Entry Read(Answers answers) => new PlanEnding
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Plan = _plan,
        Reason = answers.Needed(Reason),
    };
}
