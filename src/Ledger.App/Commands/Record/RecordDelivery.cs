using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using NodaTime;

namespace Ledger.App.Commands.Record;

/// <summary>record delivery: what arrived in one go, or the stock that a ledger starts with.</summary>
internal sealed class RecordDelivery : RecordCommand
{
    private readonly Argument<string?> _item = new("item")
    {
        HelpName = "ITEM",
        Description = "the item's code, when one item came; otherwise --line for each",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Argument<decimal?> _packs = new("packs")
    {
        HelpName = "PACKS",
        Description = "how many packs; 0.5 is one that is open and half full; with --order, otherwise all that are still to come of it",
        Arity = ArgumentArity.ZeroOrOne,
        CustomParser = result => Typed.Read(result, "packs", Text.Number),
    };

    private readonly Option<DeliveryLine[]> _lines = Typed.Options(
        "--line", "LINE", DeliveryPhrase.Parse, $"what came, once for each item: \"{DeliveryPhrase.Form}\"");

    private readonly Option<Money?> _price = Typed.Option("--price", "AMOUNT", Text.Money, "the price of one pack; with --order, otherwise the order's");
    private readonly Option<LocalDate?> _expires = Typed.Option("--expires", "DATE", Text.Date, "the expiry date printed on the packs");
    private readonly Option<string?> _batch = new("--batch") { HelpName = "TEXT", Description = "the maker's emulsion or batch number" };
    private readonly Option<string?> _storage = new("--storage")
    {
        HelpName = "TEXT",
        Description = "where it is kept: freezer, fridge, shelf",
    };

    private readonly Option<string?> _order = Typed.Option<string?>(
        "--order", "NAME", Text.NotEmpty, "the order that this delivers, whole or in part");

    private readonly Option<Money?> _discount = Typed.Option("--discount", "AMOUNT", Text.Money, "taken off for all that came");
    private readonly Option<Money?> _shipping = Typed.Option("--shipping", "AMOUNT", Text.Money, "the shipping of all that came");
    private readonly Option<Money?> _duty = Typed.Option("--duty", "AMOUNT", Text.Money, "duty and tax of all that came");
    private readonly Option<string?> _currency = Typed.Option<string?>(
        "--currency", "CODE", Text.NotEmpty, "the currency of the amounts, such as EUR; otherwise the ledger's own");

    private readonly Option<decimal?> _rate = Typed.Option(
        "--rate", "NUMBER", Text.Number, "what one unit of that currency is worth in the ledger's own");

    public RecordDelivery(Workbench bench)
        : base(bench, "delivery", "What arrived in one go, one item or several; also the stock that a ledger starts with.", """
            The discount, the shipping, duty and tax are shared over the lines by their
            value; the lines add up to what was paid. The invoice's number is a good
            reference.
            Examples: trayledger record delivery fen80 2 --price 186 --shipping 14.50
                        --expires 2028-11-30
                      trayledger record delivery fen80 --order spring-film
                      trayledger record delivery --reference inv-4711 --shipping 14.50
                        --line "2 fen80 at 186 in freezer" --line "1 syrup at 42"
            """)
    {
        Arguments.Add(_item);
        Arguments.Add(_packs);
        AddOwn(_lines, _price, _expires, _batch, _storage, _order, _discount, _shipping, _duty, _currency, _rate);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new Delivery
    {
        Key = frame.Key,
        Reference = frame.Reference ?? "",
        Date = frame.Date,
        Note = frame.Note,
        Lines = Lines(parse, holdings),
        Discount = parse.GetValue(_discount) ?? Money.Zero,
        Shipping = parse.GetValue(_shipping) ?? Money.Zero,
        Duty = parse.GetValue(_duty) ?? Money.Zero,
        Currency = parse.GetValue(_currency),
        Rate = parse.GetValue(_rate),
    };

    private IReadOnlyList<DeliveryLine> Lines(ParseResult parse, Holdings holdings)
    {
        if (parse.GetValue(_lines) is not { Length: > 0 } lines)
            return [Single(parse, holdings)];
        if (new Symbol[] { _item, _packs, _price, _expires, _batch, _storage, _order }.FirstOrDefault(single => IsGiven(parse, single)) is { } given)
            throw new FormatException($"{given.Name}: with --line, each line says it itself, as {DeliveryPhrase.Form}");
        return lines;
    }

    private DeliveryLine Single(ParseResult parse, Holdings holdings)
    {
        var item = parse.GetValue(_item) ?? throw new FormatException("item: say which item came, or --line for each of several");
        return new()
        {
            Item = Text.NotEmpty(item),
            Packs = parse.GetValue(_packs) ?? StillToCome(item, parse, holdings),
            Price = parse.GetValue(_price),
            ExpiresOn = parse.GetValue(_expires),
            Batch = parse.GetValue(_batch) ?? "",
            Storage = parse.GetValue(_storage) ?? "",
            Order = parse.GetValue(_order),
        };
    }

    private static bool IsGiven(ParseResult parse, Symbol symbol) => symbol switch
    {
        Argument argument => parse.GetResult(argument) is { Tokens.Count: > 0 },
        Option option => parse.GetResult(option) is { Implicit: false },
        _ => false,
    };

    /// <summary>The packs that the order still waits for. One that does not wait for the item is for the rules to refuse, whatever the packs.</summary>
    private decimal StillToCome(string item, ParseResult parse, Holdings holdings) => parse.GetValue(_order) is not { } order
        ? throw new FormatException("packs: say how many packs came")
        : holdings.Orders.Order(order)?.LineOf(item) is { IsOpen: true } line ? line.OutstandingPacks : 1;
}
