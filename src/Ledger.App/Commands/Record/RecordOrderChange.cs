using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using NodaTime;

namespace Ledger.App.Commands.Record;

/// <summary>record order change: what becomes of an order before it comes.</summary>
internal sealed class RecordOrderChange : RecordCommand
{
    private readonly Argument<string> _order = Typed.Argument("order", Text.NotEmpty, "the order's name");
    private readonly Option<string?> _item = Typed.Option<string?>("--item", "ITEM", Text.NotEmpty,
        "the item it is about; otherwise all that is still to come");
    private readonly Option<LocalDate?> _expected = Typed.Option("--expected", "DATE", Text.Date, "the day it is expected now");
    private readonly Option<bool> _backOrdered = new("--back-ordered") { Description = "the supplier has none now and sends it later" };
    private readonly Option<bool> _available = new("--available") { Description = "it is no longer back-ordered" };
    private readonly Option<int?> _packs = Typed.Option("--packs", "PACKS", Text.Whole,
        "how many packs are ordered now, those that have come counted in");
    private readonly Option<Money?> _price = Typed.Option("--price", "AMOUNT", Text.Money, "what a pack costs now");

    public RecordOrderChange(Workbench bench)
        : base(bench, "change", "An order is changed before it comes: another day, a back-order, other packs or price.", """
            Of an order of several items, --item says which; packs and price need it.
            Example: trayledger record order change spring --expected 2026-04-24
            Example: trayledger record order change spring --item fen80 --packs 3 --price 191
            """)
    {
        Arguments.Add(_order);
        AddOwn(_item, _expected, _backOrdered, _available, _packs, _price);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new OrderChange
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Order = parse.GetRequiredValue(_order),
        Item = parse.GetValue(_item),
        ExpectedOn = parse.GetValue(_expected),
        IsBackOrdered = (parse.GetValue(_backOrdered), parse.GetValue(_available)) switch
        {
            (true, true) => throw new FormatException("say either --back-ordered or --available"),
            (true, _) => true,
            (_, true) => false,
            _ => null,
        },
        Packs = parse.GetValue(_packs),
        Price = parse.GetValue(_price),
    };
}
