using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record correction: an earlier entry is reversed.</summary>
internal sealed class RecordCorrection : RecordCommand
{
    private readonly Argument<int?> _entry = Typed.Argument(
        "entry", Text.Whole, "the number of the entry to reverse, as `show journal` lists it");
    private readonly Option<string> _reason = Typed.Option<string>("--reason", "TEXT", Text.NotEmpty, "why: wrong bath, typed twice");

    public RecordCorrection(Workbench bench)
        : base(bench, "correction", "Reverses an earlier entry and names it; nothing is ever deleted.", """
            It stands on the day of the entry that it reverses.
            Example: trayledger record correction 57 --reason "wrong bath"
            """, hasDate: false)
    {
        Arguments.Add(_entry);
        _reason.Required = true;
        AddOwn(_reason);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new Correction
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Reverses = parse.GetValue(_entry)!.Value,
        Reason = parse.GetRequiredValue(_reason),
    };
}
