using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>
/// What the ledger knows of buying on one day: the orders of which something is still to come, price rises ahead, order
/// terms.
/// </summary>
public sealed class OrderBook
{
    private readonly Dictionary<string, Order> _orders = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, OrderTerms> _terms = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<PriceRise> _rises = [];

    /// <summary>The open orders, the earliest first.</summary>
    public IEnumerable<Order> Open => _orders.Values.OrderBy(order => order.PlacedOn)
        .ThenBy(order => order.Code, StringComparer.OrdinalIgnoreCase);

    /// <summary>The announced price rises, the earliest first.</summary>
    public IEnumerable<PriceRise> PriceRises => _rises.OrderBy(rise => rise.From)
        .ThenBy(rise => rise.Item, StringComparer.OrdinalIgnoreCase);

    /// <summary>The open order of that name, or null.</summary>
    public Order? Order(string code) => _orders.GetValueOrDefault(code.Trim());

    /// <summary>How the user orders an item.</summary>
    public OrderTerms Terms(string item) => _terms.GetValueOrDefault(item.Trim()) ?? OrderTerms.None(item);

    /// <summary>The open order lines of an item, with their orders.</summary>
    public IEnumerable<(Order Order, OrderLine Line)> LinesOf(string item) => Open
        .Select(order => (Order: order, Line: order.LineOf(item)))
        .Where(found => found.Line is { IsOpen: true })
        .Select(found => (found.Order, found.Line!));

    /// <summary>What is on order of an item.</summary>
    public Quantity OnOrder(Item item) => item.Of(LinesOf(item.Code).Sum(found => found.Line.Outstanding.Base));

    /// <summary>
    /// Puts an order in, or in place of what was known of it; one of which nothing is to come is taken out.
    /// </summary>
    public void Put(Order order)
    {
        if (order.IsOpen)
            _orders[order.Code] = order;
        else
            _orders.Remove(order.Code);
    }

    /// <summary>Puts a price rise in.</summary>
    public void Put(PriceRise rise) => _rises.Add(rise);

    /// <summary>Puts an item's terms in, or in place of those it had.</summary>
    public void Put(OrderTerms terms) => _terms[terms.Item] = terms;

    /// <summary>Brings the book up to date with a fact; facts of other kinds change nothing.</summary>
    internal void Apply(PostedFact fact)
    {
        switch (fact)
        {
            case OrderPlaced placed:
                Put(placed.Order);
                break;
            case OrderLineChanged changed when Line(changed.Order, changed.Item) is var (order, line):
                Put(order.With(line with
                {
                    ExpectedOn = changed.ExpectedOn ?? line.ExpectedOn,
                    IsBackOrdered = changed.IsBackOrdered ?? line.IsBackOrdered,
                    IsCancelled = line.IsCancelled || changed.IsCancelled,
                    Packs = changed.Ordered?.Packs ?? line.Packs,
                    Ordered = changed.Ordered?.Hold ?? line.Ordered,
                    Price = changed.Price ?? line.Price,
                }));
                break;
            case OrderDelivered delivered when Line(delivered.Order, delivered.Item) is var (order, line):
                Put(order.With(line with { Delivered = line.Delivered + delivered.Quantity }));
                break;
            case PriceRiseAnnounced announced:
                Put(announced.Rise);
                break;
            case OrderTermsSet set:
                Put(set.Terms);
                break;
        }
    }

    private (Order Order, OrderLine Line)? Line(string order, string item) =>
        Order(order) is { } known && known.LineOf(item) is { } line ? (known, line) : null;
}
