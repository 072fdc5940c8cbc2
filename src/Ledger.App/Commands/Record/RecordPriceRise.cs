using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using NodaTime;

namespace Ledger.App.Commands.Record;

/// <summary>record price-rise: a supplier announces that an item will cost more.</summary>
internal sealed class RecordPriceRise : RecordCommand
{
    private readonly Argument<string> _item = Typed.Argument("item", Text.NotEmpty, "the item's code");
    private readonly Argument<decimal?> _percent = Typed.Argument("percent", Text.Number, "by how many percent");
    private readonly Option<LocalDate?> _from = Typed.Option("--from", "DATE", Text.Date, "the first day of the new price");

    public RecordPriceRise(Workbench bench)
        : base(bench, "price-rise", "An item will cost more; until then Today says how many packs it pays to buy before.", """
            Example: trayledger record price-rise fen80 6 --from 2026-05-01
            """)
    {
        Arguments.Add(_item);
        Arguments.Add(_percent);
        _from.Required = true;
        AddOwn(_from);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new PriceRiseNotice
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Item = parse.GetRequiredValue(_item),
        Percent = parse.GetValue(_percent)!.Value,
        From = parse.GetValue(_from)!.Value,
    };
}
