using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record control-strip: what a control strip in a replenished developer showed.</summary>
internal sealed class RecordControlStrip : RecordCommand
{
    private readonly Argument<string> _bath = Typed.Argument("bath", Text.NotEmpty, "the developer");
    private readonly Argument<string> _result = Typed.Argument(
        "result", Text.NotEmpty, "what was read from the strip, such as \"speed -0.04, contrast +0.02\"");

    private readonly Option<bool> _isOut = new("--out") { Description = "it was out of your limits; otherwise it was within them" };

    public RecordControlStrip(Workbench bench)
        : base(bench, "control-strip", "A control strip was developed in a developer that is replenished.", """
            The limits are yours. A strip that is out of them is told on Today and before
            the next session, until another one is within them.
            Example: trayledger record control-strip D1 "speed -0.12" --out
            """)
    {
        Arguments.Add(_bath);
        Arguments.Add(_result);
        AddOwn(_isOut);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new ControlStripTest
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Bath = parse.GetRequiredValue(_bath),
        Result = parse.GetRequiredValue(_result),
        IsWithinLimits = !parse.GetValue(_isOut),
    };
}
