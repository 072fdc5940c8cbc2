using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using NodaTime;

namespace Ledger.App.Commands.Record;

/// <summary>record receipt: a delivery, or the stock that a ledger starts with.</summary>
internal sealed class RecordReceipt : RecordCommand
{
    private readonly Argument<string> _item = Typed.Argument("item", Text.NotEmpty, "the item's code");
    private readonly Argument<decimal?> _packs = new("packs")
    {
        HelpName = "PACKS",
        Description = "how many packs; 0.5 is one that is open and half full; with --order, otherwise all that are still to come of it",
        Arity = ArgumentArity.ZeroOrOne,
        CustomParser = result => Typed.Read(result, "packs", Text.Number),
    };

    private readonly Option<Money?> _price = Typed.Option("--price", "AMOUNT", Text.Money, "the price of one pack; with --order, otherwise the order's");
    private readonly Option<Money?> _discount = Typed.Option("--discount", "AMOUNT", Text.Money, "taken off for all packs together");
    private readonly Option<Money?> _shipping = Typed.Option("--shipping", "AMOUNT", Text.Money, "this line's share of the shipping");
    private readonly Option<Money?> _duty = Typed.Option("--duty", "AMOUNT", Text.Money, "this line's share of duty and tax");
    private readonly Option<string?> _currency = Typed.Option<string?>(
        "--currency", "CODE", Text.NotEmpty, "the currency of the amounts, such as EUR; otherwise the ledger's own");

    private readonly Option<decimal?> _rate = Typed.Option(
        "--rate", "NUMBER", Text.Number, "what one unit of that currency is worth in the ledger's own");

    private readonly Option<LocalDate?> _expires = Typed.Option("--expires", "DATE", Text.Date, "the date printed on the packs");
    private readonly Option<string?> _batch = new("--batch") { HelpName = "TEXT", Description = "the maker's batch or emulsion number" };
    private readonly Option<string?> _storage = new("--storage")
    {
        HelpName = "TEXT",
        Description = "where it is kept: freezer, fridge, shelf",
    };

    private readonly Option<string?> _order = Typed.Option<string?>(
        "--order", "NAME", Text.NotEmpty, "the order that this delivers, whole or in part");

    public RecordReceipt(Workbench bench)
        : base(bench, "receipt", "A delivery of packs of one item; also the stock that a ledger starts with.", """
            Examples: trayledger record receipt fen80 2 --price 186 --shipping 14.50
                        --expires 2028-11-30
                      trayledger record receipt fen80 --order spring-film
            """)
    {
        Arguments.Add(_item);
        Arguments.Add(_packs);
        AddOwn(_price, _discount, _shipping, _duty, _currency, _rate, _expires, _batch, _storage, _order);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new Receipt
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Item = parse.GetRequiredValue(_item),
        Packs = parse.GetValue(_packs) ?? StillToCome(parse, holdings),
        Price = parse.GetValue(_price) ?? Money.Zero,
        TakesOrderPrice = parse.GetValue(_price) is null,
        Discount = parse.GetValue(_discount) ?? Money.Zero,
        Shipping = parse.GetValue(_shipping) ?? Money.Zero,
        Duty = parse.GetValue(_duty) ?? Money.Zero,
        Currency = parse.GetValue(_currency),
        Rate = parse.GetValue(_rate),
        ExpiresOn = parse.GetValue(_expires),
        Batch = parse.GetValue(_batch) ?? "",
        Storage = parse.GetValue(_storage) ?? "",
        Order = parse.GetValue(_order),
    };

    /// <summary>The packs that the order still waits for. One that does not wait for the item is for the rules to refuse, whatever the packs.</summary>
    private decimal StillToCome(ParseResult parse, Holdings holdings) => parse.GetValue(_order) is not { } order
        ? throw new FormatException("packs: say how many packs came")
        : holdings.Orders.Order(order)?.LineOf(parse.GetRequiredValue(_item)) is { IsOpen: true } line ? line.OutstandingPacks : 1;
}
