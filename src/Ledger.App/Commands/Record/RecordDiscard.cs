using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Record;

/// <summary>record discard: a bath is poured out, or stock is thrown away unused.</summary>
internal sealed class RecordDiscard : RecordCommand
{
    private readonly Argument<string> _what = Typed.Argument("what", Text.NotEmpty, "a bath, a container such as syrup/1, or an item");
    private readonly Argument<Amount?> _amount = new("amount")
    {
        HelpName = "AMOUNT",
        Description = "how much, such as 3 or 50ml; not needed for all of a bath or container",
        Arity = ArgumentArity.ZeroOrOne,
        CustomParser = result => Typed.Read<Amount?>(result, "amount", Amount.Parse),
    };

    private readonly Option<string> _reason = Typed.Option<string>(
        "--reason", "TEXT", Text.NotEmpty, "why: spent, too old, specks, fogged");

    private readonly Option<string?> _jug = Typed.Option<string?>("--jug", "JUG", Text.NotEmpty, "the waste jug that takes a bath or a liquid");

    public RecordDiscard(Workbench bench)
        : base(bench, "discard", "A bath is poured out, or stock is thrown away unused.", """
            What may go down a drain is for your local rules and the maker's safety data
            sheet to say; used fixer holds silver.
            Example: trayledger record discard F1 --reason spent
            """)
    {
        Arguments.Add(_what);
        Arguments.Add(_amount);
        _reason.Required = true;
        AddOwn(_reason, _jug);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new Discard
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        What = parse.GetRequiredValue(_what),
        Quantity = parse.GetValue(_amount)?.For(Stock.ItemOf(parse.GetRequiredValue(_what), holdings), Unit.Sheet),
        Reason = parse.GetRequiredValue(_reason),
        Jug = parse.GetValue(_jug),
    };
}
