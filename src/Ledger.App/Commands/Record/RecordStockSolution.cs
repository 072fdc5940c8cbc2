using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Record;

/// <summary>record stock-solution: a powder or concentrate is mixed into a stock solution.</summary>
internal sealed class RecordStockSolution : RecordCommand
{
    private readonly Argument<string> _item = Typed.Argument("item", Text.NotEmpty, "the stock solution's item");
    private readonly Argument<Volume?> _volume = Typed.Argument("volume", Text.Volume, "how much stock solution is made, such as 1l");
    private readonly Option<string?> _of = Typed.Option<string?>(
        "--of", "ITEM", Text.NotEmpty, "what it is mixed from; otherwise what its item says with --stock-of");

    private readonly Option<int?> _packs = Typed.Option("--packs", "COUNT", Text.Whole, "how many packs are mixed whole; otherwise one");
    private readonly Option<Amount?> _amount = Typed.Option<Amount?>(
        "--amount", "AMOUNT", Amount.Parse, "a weighed amount in place of whole packs");
    private readonly Option<BottlePhrase[]> _into = Typed.Options(
        "--into", "BOTTLE", BottlePhrase.Parse, $"the bottles it is filled into: {BottlePhrase.Form}; otherwise a single one");

    private readonly Option<string?> _from = Typed.Option<string?>(
        "--from", "PACK", Text.NotEmpty, "the pack to take; otherwise the one that is reached for first");

    public RecordStockSolution(Workbench bench)
        : base(bench, "stock-solution", "A powder or concentrate is mixed into a stock solution.", """
            The stock solution has its own cost, mixing date and life. Powders: do not
            breathe the dust; see the maker's safety data sheet.
            Example: trayledger record stock-solution fine-stock 1l --into "2 of 500ml"
            """)
    {
        Arguments.Add(_item);
        Arguments.Add(_volume);
        AddOwn(_of, _packs, _amount, _into, _from);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings)
    {
        var item = holdings.Item(parse.GetRequiredValue(_item));
        var source = parse.GetValue(_of) ?? item?.StockOf;
        return new StockSolution
        {
            Key = frame.Key,
            Date = frame.Date,
            Note = frame.Note,
            Item = parse.GetRequiredValue(_item),
            From = parse.GetValue(_of),
            Packs = parse.GetValue(_packs) ?? 1,
            Amount = parse.GetValue(_amount)?.For(source is null ? null : holdings.Item(source)),
            Volume = parse.GetValue(_volume)!.Value,
            Bottles = [.. (parse.GetValue(_into) ?? []).SelectMany(bottle => bottle.For(item))],
            Container = parse.GetValue(_from),
        };
    }
}
