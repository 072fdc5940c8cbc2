namespace Ledger.App.Commands.Record;

/// <summary>record: one thing that happened. Each kind of entry is a command, made from its description.</summary>
internal sealed class RecordCommands : Command
{
    private static readonly IReadOnlyList<Branch> _all =
    [
        .. EntryKinds.All.Select(kind => new Branch(kind.Name, bench => kind.Name switch
        {
            "session" => new RecordSession(bench),
            "plan" => new RecordPlan(bench),
            "amendment" => new RecordAmendment(bench),
            _ => new RecordKind(bench, kind),
        })),
    ];

    public RecordCommands(Workbench bench)
        : base("record", "Record what happened, and see every bottle, box and bath before and after.") =>
        Branch.AddTo(this, bench, _all);
}
