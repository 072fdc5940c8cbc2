using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record indicator: what colour a bath's indicator has.</summary>
internal sealed class RecordIndicator : RecordCommand
{
    private readonly Argument<string> _bath = Typed.Argument("bath", Text.NotEmpty, "the bath, such as a stop");
    private readonly Argument<string> _colour = Typed.Argument("colour", Text.NotEmpty, "the colour of its indicator, such as yellow or purple");

    public RecordIndicator(Workbench bench)
        : base(bench, "indicator", "Somebody looked at a bath's indicator; the colour of a spent bath ends it.", """
            `record item ITEM --indicator COLOUR` says at which colour a bath of the item
            is spent. Another colour is put down, and the bath is used on.
            Example: trayledger record indicator S1 purple
            """)
    {
        Arguments.Add(_bath);
        Arguments.Add(_colour);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new IndicatorReading
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Bath = parse.GetRequiredValue(_bath),
        Colour = parse.GetRequiredValue(_colour),
    };
}
