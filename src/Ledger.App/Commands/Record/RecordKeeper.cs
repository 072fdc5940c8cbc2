using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record keeper: a negative turns out to be worth printing.</summary>
internal sealed class RecordKeeper : RecordCommand
{
    private readonly Argument<string> _negative = Typed.Argument(
        "negative", Text.NotEmpty, "the negative's number, such as 2025-014, or its sheet's, such as #12");

    public RecordKeeper(Workbench bench)
        : base(bench, "keeper", "A negative turns out to be worth printing.", """
            Example: trayledger record keeper 2025-014
            """) => Arguments.Add(_negative);

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new KeeperNaming
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Negative = parse.GetRequiredValue(_negative),
    };
}
