using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Kinds;

/// <summary>record delivery, deliveries.csv: what arrived in one go, a line for each item.</summary>
internal static class DeliveryKind
{
    private static readonly Field<string> Invoice = new("invoice", Notations.Line(500))
    {
        Help = "the invoice's number, where the reference is not it", Example = "", Width = 24,
    };

    private static readonly Field<Money> Discount = new("discount", Notations.Money)
    {
        Label = "Discount on all", Help = "taken off for all lines together", Example = "0", Width = 10,
    };

    private static readonly Field<Money> Shipping = new("shipping", Notations.Money)
    {
        Help = "the shipping of all lines", Example = "14.50", Width = 10,
    };

    private static readonly Field<Money> Duty = new("duty", Notations.Money)
    {
        Label = "Duty and tax", Help = "duty and tax of all lines", Example = "0", Width = 10,
    };

    private static readonly Field<string> Currency = new("currency", Notations.Of(
        "CODE", text => text.Length == 3 && text.All(char.IsAsciiLetter) ? text.ToUpperInvariant() : null, code => code,
        "a currency code of three letters, such as EUR"))
    {
        Help = "the currency of the amounts, such as EUR; otherwise the ledger's own", Example = "EUR", Width = 5,
        Choices = (_, holdings) => holdings.Settings.Currency is { Length: > 0 } own ? [own] : [],
    };

    private static readonly Field<decimal> Rate = new("rate", Notations.Number(0.000001m, 999_999, 6))
    {
        Help = "what one unit of that currency is worth in the ledger's own, when they differ", Example = "",
        Width = 10,
    };

    private static readonly Field<decimal> Packs = new("packs", Notations.Number(0.000001m, 10_000, 6, "PACKS"))
    {
        Help = "how many packs; a part of a pack, such as 0.5, is an open one; with an order, otherwise all that are "
            + "still to come of it",
        Example = "2", IsArgument = true, Width = 8,
        Offer = (read, holdings) => Given.Number(Ordered(read, holdings)?.OutstandingPacks) ?? "1",
    };

    private static readonly Field<string> Item = new("item", Notations.Known("ITEM"))
    {
        Help = "the item's code", Example = "fen80", IsNeeded = true, IsArgument = true, Width = 16,
        Choices = Offered.Items,
    };

    private static readonly Field<string> Order = new("order", Notations.Known("ORDER"))
    {
        Help = "the order that this delivers, whole or in part; nothing for none", Example = "spring-film", Width = 24,
        Keyword = "order",
        Choices = Offered.Orders,
        Offer = (read, holdings) => holdings.Orders.LinesOf(read.Find(Item) ?? "").Select(found => found.Order.Code)
            .FirstOrDefault(),
    };

    private static readonly Field<Money> Price = new("price", Notations.Money)
    {
        Label = "Price of a pack",
        Help = "the price of one pack, 0 for a gift; without one it is that of the order, or unknown",
        Example = "186.00", Width = 10, Keyword = "at",
        Offer = (read, holdings) => Ordered(read, holdings) is { Price.Millionths: > 0 } line
            ? line.Price.Text(holdings.Settings.Style) : LastPrice(read, holdings)?.Text(holdings.Settings.Style),
    };

    private static readonly Field<string> Batch = new("batch", Notations.Line(60))
    {
        Help = "the emulsion number of film, or the maker's batch number, as printed", Example = "CP-3260", Width = 12,
        Keyword = "batch",
    };

    private static readonly Field<LocalDate> Expires = new("expires", Notations.Date)
    {
        Label = "Expiry date", Help = "the expiry date printed on the packs; nothing for none", Example = "2028-01-31",
        Width = 10, Keyword = "expires",
    };

    private static readonly Field<string> Storage = new("storage", Notations.Line(60))
    {
        Label = "Kept in", Help = "where it is kept: freezer, fridge, shelf", Example = "freezer", Width = 10,
        Keyword = "in",
        Choices = Offered.Storages, Offer = (read, holdings) => LastLot(read, holdings)?.Storage,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<Delivery>
    {
        Name = "delivery",
        File = "deliveries",
        Title = "Delivery",
        Purpose = "Records what arrived in one go, one item or several; also what you own when you start the ledger.",
        Details =
        [
            "Every pack becomes a box, bottle or packet of its own with its own dates. The discount, the shipping, "
                + "duty and tax are shared over the lines by their value; the lines add up exactly to what was paid.",
        ],
        Example = "--line \"2 fen80 at 186 in freezer\" --line \"1 syrup at 42\" --shipping 14.50 --reference inv-4711",
        ReferenceField = Invoice,
        Bound =
        [
            new(Invoice, entry => Given.Text(entry.Reference)), new(Discount, entry => Given.Paid(entry.Discount)),
            new(Shipping, entry => Given.Paid(entry.Shipping)),
            new(Duty, entry => Given.Paid(entry.Duty)), new(Currency, entry => entry.Currency),
            new(Rate, entry => entry.Rate),
        ],
        Line = new LineKind<DeliveryLine>
        {
            Name = "lines",
            Option = "--line",
            MayStandAlone = true,
            Help = "what was delivered, once for each item: how many packs, the item, the price of a pack",
            Bound =
            [
                new(Packs, line => line.Packs), new(Item, line => line.Item), new(Order, line => line.Order),
                new(Price, line => line.Price), new(Batch, line => Given.Text(line.Batch)),
                new(Expires, line => line.ExpiresOn),
                new(Storage, line => Given.Text(line.Storage)),
            ],
            With = values => new()
            {
                Packs = values.Maybe(Packs), Item = values.Of(Item), Order = values.Find(Order),
                Price = values.Maybe(Price), Batch = values.Find(Batch) ?? "", ExpiresOn = values.Maybe(Expires),
                Storage = values.Find(Storage) ?? "",
            },
        },
        Lines = entry => entry.Lines,
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Reference = values.Find(Invoice) ?? "",
            Lines = values.LinesOf<DeliveryLine>(),
            Discount = values.Of(Discount), Shipping = values.Of(Shipping), Duty = values.Of(Duty),
            Currency = values.Find(Currency),
            Rate = values.Maybe(Rate),
        },
    };

    private static Stock.OrderLine? Ordered(FieldValues read, Holdings holdings) =>
        read.Find(Order) is { } code
            && holdings.Orders.Order(code)?.LineOf(read.Find(Item) ?? "") is { IsOpen: true } line ? line : null;

    private static Stock.Lot? LastLot(FieldValues read, Holdings holdings) =>
        holdings.ContainersOf(read.Find(Item) ?? "")
            .Select(container => container.Lot).MaxBy(lot => (lot.ReceivedOn, lot.Id.Value));

    private static Money? LastPrice(FieldValues read, Holdings holdings) =>
        LastLot(read, holdings) is { IsPriced: true } lot && holdings.Item(lot.Item) is { } item
            ? lot.Cost.PartOf(item.Pack.Base, lot.Quantity.Base)
            : null;
}
