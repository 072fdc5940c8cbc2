using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record decanting: a bottle is filled into smaller ones.</summary>
internal sealed class RecordDecanting : RecordCommand
{
    private readonly Argument<string> _bottle = Typed.Argument(
        "from", Text.NotEmpty, "the bottle, such as syrup/1; or an item, for the bottle that is reached for first");

    private readonly Option<BottlePhrase[]> _into = Typed.Options(
        "--into", "BOTTLE", BottlePhrase.Parse, $"the bottles that are filled: {BottlePhrase.Form}");

    public RecordDecanting(Workbench bench)
        : base(bench, "decanting", "A bottle is filled into smaller ones; each begins a life of its own.", """
            The last bottle takes what is left when it is less than it holds. Never use
            bottles that look like those for food or drink, and label every one.
            Example: trayledger record decanting syrup --into "4 of 250ml"
            """)
    {
        Arguments.Add(_bottle);
        _into.Required = true;
        AddOwn(_into);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings)
    {
        var from = parse.GetRequiredValue(_bottle);
        var item = Stock.ItemOf(from, holdings);
        return new Decanting
        {
            Key = frame.Key,
            Date = frame.Date,
            Note = frame.Note,
            From = from,
            Bottles = [.. parse.GetRequiredValue(_into).SelectMany(bottle => bottle.For(item))],
        };
    }
}
