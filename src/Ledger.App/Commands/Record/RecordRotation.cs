using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Record;

/// <summary>record rotation: the first bath of a pair goes, the second moves up, a new one is mixed.</summary>
internal sealed class RecordRotation : RecordCommand
{
    private readonly Argument<string> _newBath = Typed.Argument(
        "new-bath", Text.NotEmpty, "a new name for the bath that is mixed, such as F6");
    private readonly Option<string?> _bath = Typed.Option<string?>(
        "--bath", "BATH", Text.NotEmpty, "either bath of the pair; not needed while there is only one pair");

    private readonly Option<string?> _item = Typed.Option<string?>(
        "--item", "ITEM", Text.NotEmpty, "what the new bath is mixed from; otherwise as the one that moves up");

    private readonly Option<Volume?> _volume = Typed.Option(
        "--volume", "VOLUME", Text.Volume, "how much is made; otherwise as much as before");
    private readonly Option<Dilution?> _dilution = Typed.Option(
        "--dilution", "1+N", Text.Dilution, "how it is diluted; otherwise as before");
    private readonly Option<Amount?> _amount = Typed.Option<Amount?>(
        "--amount", "AMOUNT", Amount.Parse, "what was measured out; otherwise what the dilution asks for");

    private readonly Option<string?> _reason = Typed.Option<string?>("--reason", "TEXT", Text.NotEmpty, "why the first bath goes");
    private readonly Option<string?> _jug = Typed.Option<string?>("--jug", "JUG", Text.NotEmpty, "the waste jug that takes the first bath");
    private readonly Option<string?> _from = Typed.Option<string?>(
        "--from", "BOTTLE", Text.NotEmpty, "the bottle to draw from; otherwise the one that is reached for first");

    private readonly Option<bool> _bookDifference = BookDifference();

    public RecordRotation(Workbench bench)
        : base(bench, "rotation", "Two-bath fixing goes on: first out, second up, a new one mixed.", """
            Each bath keeps its own mixing date. The setting rotation-ceiling says how
            often a pair is rotated before both are mixed anew. Used fixer holds silver:
            where it may go is for your local rules and the maker's data sheet to say.
            Example: trayledger record rotation F6 --jug J2
            """)
    {
        Arguments.Add(_newBath);
        AddOwn(_bath, _item, _volume, _dilution, _amount, _reason, _jug, _from, _bookDifference);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings)
    {
        var rotation = new Rotation
        {
            Key = frame.Key,
            Date = frame.Date,
            Note = frame.Note,
            NewBath = parse.GetRequiredValue(_newBath),
            Bath = parse.GetValue(_bath),
            Item = parse.GetValue(_item),
            WorkingVolume = parse.GetValue(_volume),
            Dilution = parse.GetValue(_dilution),
            Jug = parse.GetValue(_jug),
            Container = parse.GetValue(_from),
            BooksDifference = parse.GetValue(_bookDifference),
        };
        var item =
            rotation.Item ?? (rotation.Bath is { } bath ? holdings.Bath(bath) : holdings.Baths.FirstOrDefault(holdings.IsSecond))?.Item;
        return rotation with
        {
            Amount = parse.GetValue(_amount)?.For(item is null ? null : holdings.Item(item)),
            Reason = parse.GetValue(_reason) ?? rotation.Reason,
        };
    }
}
