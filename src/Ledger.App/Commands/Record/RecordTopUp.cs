using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Record;

/// <summary>record top-up: fresh solution or replenisher goes into a bath.</summary>
internal sealed class RecordTopUp : RecordCommand
{
    private readonly Argument<string> _bath = Typed.Argument("bath", Text.NotEmpty, "the bath");
    private readonly Argument<Volume?> _added = Typed.Argument("volume", Text.Volume, "the fresh solution that goes in, such as 80ml");
    private readonly Option<string?> _item = Typed.Option<string?>(
        "--item", "ITEM", Text.NotEmpty, "what it is made from; otherwise as the bath");
    private readonly Option<Dilution?> _dilution = Typed.Option(
        "--dilution", "1+N", Text.Dilution, "how it is diluted; 1+0 for a ready replenisher");
    private readonly Option<Amount?> _amount = Typed.Option<Amount?>(
        "--amount", "AMOUNT", Amount.Parse, "what was measured out; otherwise what the dilution asks for");

    private readonly Option<Volume?> _bled = Typed.Option("--poured-off", "VOLUME", Text.Volume, "used solution poured off to make room");
    private readonly Option<string?> _jug = Typed.Option<string?>(
        "--jug", "JUG", Text.NotEmpty, "the waste jug that takes what was poured off");
    private readonly Option<string?> _from = Typed.Option<string?>(
        "--from", "BOTTLE", Text.NotEmpty, "the bottle to draw from; otherwise the one that is reached for first");

    private readonly Option<bool> _bookDifference = BookDifference();

    public RecordTopUp(Workbench bench)
        : base(bench, "top-up", "Fresh solution or replenisher goes into a bath.", """
            The bath's capacity stays what it was: what the film left in it is still there.
            Example: trayledger record top-up D1 80ml --item replenisher --dilution 1+0
            """)
    {
        Arguments.Add(_bath);
        Arguments.Add(_added);
        AddOwn(_item, _dilution, _amount, _bled, _jug, _from, _bookDifference);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings)
    {
        var bath = parse.GetRequiredValue(_bath);
        var item = parse.GetValue(_item) ?? holdings.Bath(bath)?.Item;
        return new TopUp
        {
            Key = frame.Key,
            Date = frame.Date,
            Note = frame.Note,
            Bath = bath,
            Added = parse.GetValue(_added)!.Value,
            Item = parse.GetValue(_item),
            Dilution = parse.GetValue(_dilution),
            Amount = parse.GetValue(_amount)?.For(item is null ? null : holdings.Item(item)),
            Bled = parse.GetValue(_bled) ?? default,
            Jug = parse.GetValue(_jug),
            Container = parse.GetValue(_from),
            BooksDifference = parse.GetValue(_bookDifference),
        };
    }
}
