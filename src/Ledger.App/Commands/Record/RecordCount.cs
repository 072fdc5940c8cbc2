using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Record;

/// <summary>record count: what is really there.</summary>
internal sealed class RecordCount : RecordCommand
{
    private readonly Argument<string> _what = Typed.Argument(
        "what", Text.NotEmpty, "a container such as syrup/1, or an item for all its containers together");

    private readonly Argument<Amount> _found = Typed.Argument("found", Amount.Parse, "what is really there, such as 64ml or 12");
    private readonly Option<string> _reason = Typed.Option<string>(
        "--reason", "TEXT", Text.NotEmpty, "why it differs from the book: dregs, spilt, evaporated, miscounted");

    public RecordCount(Workbench bench)
        : base(bench, "count", "What is really there is counted or measured; the difference from the book is posted.", """
            Example: trayledger record count syrup/1 64ml --reason dregs
            """)
    {
        Arguments.Add(_what);
        Arguments.Add(_found);
        _reason.Required = true;
        AddOwn(_reason);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new StockCount
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        What = parse.GetRequiredValue(_what),
        Found = parse.GetRequiredValue(_found).For(Stock.ItemOf(parse.GetRequiredValue(_what), holdings), Unit.Sheet),
        Reason = parse.GetRequiredValue(_reason),
    };
}
