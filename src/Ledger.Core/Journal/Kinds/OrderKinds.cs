using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Kinds;

/// <summary>record order, orders.csv: packs are ordered, a line for each item.</summary>
internal static class OrderKind
{
    private static readonly Field<string> Order = new("order", Notations.Name("ORDER"))
    {
        Help = "a name of your own for the order; the delivery names it", Example = "spring-film", IsNeeded = true,
        IsArgument = true, Width = 24,
        Offer = (_, holdings) => NextName.After($"{Dates.Text(holdings.AsOf)}-1",
            name => holdings.Orders.Order(name) is not null),
    };

    private static readonly Field<string> Supplier = new("supplier", Notations.Line(200))
    {
        Label = "From", Help = "where it is ordered", Example = "mail-order shop", Width = 30,
        Choices = (_, holdings) => holdings.Orders.Open.Select(order => order.Supplier).Where(name => name.Length > 0)
            .Distinct(),
    };

    private static readonly Field<bool> Prepaid = new("prepaid", Notations.YesNo) { Help = "it is paid already",
    Example = "no", Width = 4 };

    private static readonly Field<int> Packs = new("packs", Notations.Whole(1, 10_000))
    {
        Help = "how many packs", Example = "2", IsNeeded = true, Width = 6, Offer = (_, _) => "1",
    };

    private static readonly Field<string> Item = new("item", Notations.Known("ITEM"))
    {
        Help = "the item", Example = "fen80", IsNeeded = true, Width = 16, Choices = Offered.Items,
    };

    private static readonly Field<Money> Price = new("price", Notations.Money)
    {
        Label = "Price of a pack", Help = "the price of one pack", Example = "186.00", Width = 10, Keyword = "at",
    };

    private static readonly Field<LocalDate> Expected = new("expected", Notations.Date)
    {
        Help = "the day it is expected; otherwise after the item's delivery time", Example = "2026-04-10", Width = 10,
        Keyword = "expected",
    };

    private static readonly Field<bool> BackOrdered = new("back_ordered", Notations.YesNo)
    {
        Label = "Back-ordered", Help = "the supplier has none now and sends it later", Example = "no", Width = 4,
        Keyword = "back-ordered",
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<OrderPlacement>
    {
        Name = "order",
        File = "orders",
        Title = "Order",
        Purpose = "Records packs that are ordered, of one item or several; they are on order until a delivery names "
            + "the order.",
        Example = "summer-film --line \"2 fen80 at 186\" \"1 syrup expected 2026-04-10\" --supplier \"mail-order "
            + "shop\"",
        NamedBy = Order,
        Bound =
        [
            new(Order, entry => entry.Order), new(Supplier, entry => Given.Text(entry.Supplier)),
            new(Prepaid, entry => Given.Yes(entry.IsPrepaid)),
        ],
        Line = new LineKind<OrderedPacks>
        {
            Name = "lines",
            Option = "--line",
            Help = "what is ordered, once for each item: how many packs, the item, the price of a pack",
            Bound =
            [
                new(Packs, line => line.Packs), new(Item, line => line.Item),
                new(Price, line => Given.Paid(line.Price)), new(Expected, line => line.ExpectedOn),
                new(BackOrdered, line => Given.Yes(line.IsBackOrdered)),
            ],
            With = values => new()
            {
                Packs = values.Of(Packs), Item = values.Of(Item), Price = values.Of(Price),
                ExpectedOn = values.Maybe(Expected),
                IsBackOrdered = values.Of(BackOrdered),
            },
        },
        Lines = entry => entry.Lines,
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Order = values.Of(Order),
            Supplier = values.Find(Supplier) ?? "",
            IsPrepaid = values.Of(Prepaid), Lines = values.LinesOf<OrderedPacks>(),
        },
    };
}

/// <summary>What an order's changes and cancellations both name.</summary>
internal static class OrderFields
{
    /// <summary>The open order.</summary>
    public static Field<string> Order { get; } = new("order", Notations.Known("ORDER"))
    {
        Help = "the order's name", Example = "spring-film", IsNeeded = true, IsArgument = true, Width = 24,
        Choices = Offered.Orders,
        Offer = (_, holdings) => holdings.Orders.Open.FirstOrDefault()?.Code,
    };

    /// <summary>The item of one of its lines.</summary>
    public static Field<string> Item { get; } = new("item", Notations.Known("ITEM"))
    {
        Help = "the item it is about; otherwise all that is still on order", Example = "fen80", Width = 16,
        Choices = (read, holdings) =>
            read.Find(Order) is { } code && holdings.Orders.Order(code) is { } order
                ? order.OpenLines.Select(line => line.Item)
                : [],
    };
}

/// <summary>record order-change, order_changes.csv: what becomes of an order before it comes.</summary>
internal static class OrderChangeKind
{
    private static readonly Field<LocalDate> Expected = new("expected", Notations.Date)
    {
        Label = "Expected now", Help = "the day it is expected now", Example = "2026-04-24", Width = 10,
    };

    private static readonly Field<bool> BackOrdered = new("back_ordered", Words.YesOrNo)
    {
        Label = "Back-ordered",
        Help = "yes: the supplier has none now and sends it later; no: it is no longer back-ordered", Example = "yes",
        Width = 4,
        Choices = (_, _) => ["yes", "no"],
    };

    private static readonly Field<int> Packs = new("packs", Notations.Whole(1, 10_000))
    {
        Label = "Packs in all",
        Help = "how many packs are ordered now, the delivered ones counted in; for one item only", Example = "3",
        Width = 6,
    };

    private static readonly Field<Money> Price = new("price", Notations.Money)
    {
        Label = "Price of a pack", Help = "what a pack costs now; for one item only", Example = "191.00", Width = 10,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<OrderChange>
    {
        Name = "order-change",
        File = "order_changes",
        Title = "News of an order",
        Purpose = "Changes an order before its delivery: another day, a back-order, other packs or price.",
        Details = [
            "What is not said stays as it was. Of an order of several items, the item says which; packs and price need "
                + "it."],
        Example = "spring-film --item fen80 --packs 3 --price 191",
        Bound =
        [
            new(OrderFields.Order, entry => entry.Order), new(OrderFields.Item, entry => entry.Item),
            new(Expected, entry => entry.ExpectedOn),
            new(BackOrdered, entry => entry.IsBackOrdered), new(Packs, entry => entry.Packs),
            new(Price, entry => entry.Price),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Order = values.Of(OrderFields.Order),
            Item = values.Find(OrderFields.Item),
            ExpectedOn = values.Maybe(Expected), IsBackOrdered = values.Maybe(BackOrdered), Packs = values.Maybe(Packs),
            Price = values.Maybe(Price),
        },
    };
}

/// <summary>record order-cancellation, order_cancellations.csv: what has not come of an order is cancelled.</summary>
internal static class OrderCancellationKind
{
    private static readonly Field<string> Reason = SharedFields.Reason(
        "why: too late, found elsewhere, no longer made", "no longer made",
        usual: ["too late", "found elsewhere", "no longer made"]);

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<OrderCancellation>
    {
        Name = "order-cancellation",
        File = "order_cancellations",
        Title = "Cancel an order",
        Purpose = "Cancels what was not delivered of an order; what was delivered stays.",
        Example = "spring-film --item fen80 --reason \"no longer made\"",
        Bound =
        [
            new(OrderFields.Order, entry => entry.Order), new(OrderFields.Item, entry => entry.Item),
            new(Reason, entry => entry.Reason),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Order = values.Of(OrderFields.Order),
            Item = values.Find(OrderFields.Item),
            Reason = values.Of(Reason),
        },
    };
}

/// <summary>record price-rise, price_rises.csv: a supplier announces that an item will cost more.</summary>
internal static class PriceRiseKind
{
    private static readonly Field<string> Item = new("item", Notations.Known("ITEM"))
    {
        Help = "the item's code", Example = "fen80", IsNeeded = true, IsArgument = true, Width = 16,
        Choices = Offered.Items,
    };

    private static readonly Field<decimal> Percent = new("percent", Notations.Number(0.1m, 1000, 1, "PERCENT"))
    {
        Label = "Percent more", Help = "by how many percent", Example = "6", IsNeeded = true, IsArgument = true,
        Width = 6,
    };

    private static readonly Field<LocalDate> From = new("from", Notations.Date)
    {
        Help = "the first day of the new price", Example = "2026-05-01", IsNeeded = true, Width = 10,
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<PriceRiseNotice>
    {
        Name = "price-rise",
        File = "price_rises",
        Title = "Price rise",
        Purpose = "Records an announced price rise; Today and Reorder say how many packs to buy before it.",
        Example = "fen80 6 --from 2026-05-01",
        Bound = [new(Item, entry => entry.Item), new(Percent, entry => entry.Percent), new(From, entry => entry.From)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Item = values.Of(Item),
            Percent = values.Of(Percent), From = values.Of(From),
        },
    };
}

/// <summary>
/// record order-terms, order_terms.csv: how an item is ordered. What a form offers is what the item has now.
/// </summary>
internal static class OrderTermsKind
{
    private static readonly Field<string> Item = new("item", Notations.Known("ITEM"))
    {
        Help = "the item's code", Example = "ortho16", IsNeeded = true, IsArgument = true, Width = 16,
        Choices = Offered.Items,
    };

    private static readonly Field<int> CoverDays = new("cover_days", Notations.Whole(1, 3650))
    {
        Label = "Days it should last",
        Help = $"for how many days an order should last; otherwise {OrderTerms.UsualCoverDays}", Example = "60",
        Width = 5,
        Offer = Known(terms => Given.Number(terms.CoverDays)),
    };

    private static readonly Field<Window> Yearly = new("window", Notations.Of(
        "MM-DD..MM-DD", Window.Read, window => window.Text, "its first and last day, such as 09-15..10-15"))
    {
        Label = "Yearly window", Help = "the days of the year on which it can be ordered at all, such as 09-15..10-15",
        Example = "09-15..10-15", Width = 12,
        Offer = Known(terms => Window.Of(terms)?.Text),
    };

    private static readonly Field<Money> OrderCost = new("order_cost", Notations.Money)
    {
        Label = "An order costs", Help = "what an order costs, however large it is: shipping, the trip to the shop",
        Example = "14.50", Width = 8,
        Offer = Known(terms => Given.Number(terms.OrderCost?.Amount)),
    };

    private static readonly Field<decimal> KeepingPercent = new("keeping_percent",
        Notations.Number(0.1m, 1000, 1, "PERCENT"))
    {
        Label = "keeping, percent a year", Help = "what a year's keeping costs, in percent of the price", Example = "4",
        Width = 6,
        Offer = Known(terms => Given.Number(terms.HoldingThousandths / 10m)),
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<OrderTermsSetting>
    {
        Name = "order-terms",
        File = "order_terms",
        Title = "Order terms",
        Purpose = "Sets how an item is ordered: a yearly window, how long an order lasts, what it costs.",
        Details = [
            "With the cost of an order and of keeping, the quantity is the one at which both cost the least together."],
        Example = "ortho16 --window 09-15..10-15",
        Bound =
        [
            new(Item, entry => entry.Terms.Item), new(CoverDays, entry => entry.Terms.CoverDays),
            new(Yearly, entry => Window.Of(entry.Terms)),
            new(OrderCost, entry => entry.Terms.OrderCost),
            new(KeepingPercent, entry => entry.Terms.HoldingThousandths / 10m),
        ],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note,
            Terms = new(
                values.Of(Item), values.Maybe(CoverDays), values.Find(Yearly)?.Opens, values.Find(Yearly)?.Closes,
                values.Maybe(OrderCost), (int?)(values.Maybe(KeepingPercent) * 10)),
        },
    };

    private static Func<FieldValues, Holdings, string?> Known(Func<OrderTerms, string?> text) =>
        (read, holdings) => read.Find(Item) is { } item ? text(holdings.Orders.Terms(item)) : null;

    /// <summary>The days of each year on which something can be ordered.</summary>
    private sealed record Window(AnnualDate Opens, AnnualDate Closes)
    {
        public string Text => $"{Dates.Text(Opens)}..{Dates.Text(Closes)}";

        public static Window? Of(OrderTerms terms) =>
            terms is { WindowOpens: { } opens, WindowCloses: { } closes } ? new(opens, closes) : null;

        public static Window? Read(string text) => text.Split("..") is [var first, var last]
            && Dates.ParseAnnual(first) is { } opens && Dates.ParseAnnual(last) is { } closes
                ? new(opens, closes)
                : null;
    }
}
