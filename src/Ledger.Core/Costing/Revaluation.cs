using Ledger.Core.Measures;
using Ledger.Core.Stock;
using NodaTime;

namespace Ledger.Core.Costing;

/// <summary>
/// What the stock of a period would have cost by another formula than the one the ledger posts: every item's whole life run through a
/// <see cref="CostFlow"/>. Each item's figures add up: before + bought + mixed = used + lost + on hand.
/// </summary>
public sealed class Revaluation
{
    private readonly CostFormula _formula;
    private readonly LocalDate _from;
    private readonly Dictionary<string, Running> _items = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Revalues a period.</summary>
    /// <param name="moves">What came into the stock and left it from the ledger's first day to the last of the period, in order.</param>
    /// <param name="formula">The formula.</param>
    /// <param name="from">The first day of the period.</param>
    public Revaluation(IEnumerable<StockMove> moves, CostFormula formula, LocalDate from)
    {
        (_formula, _from) = (formula, from);
        foreach (var entry in moves.GroupBy(move => move.Entry))
            Run([.. entry]);
        foreach (var item in _items.Values)
            item.EnterPeriod();
    }

    /// <summary>The items by kind and name.</summary>
    public IReadOnlyList<ItemValue> Items =>
    [
        .. _items.Values.Select(item => item.ToValue())
            .OrderBy(item => item.Kind).ThenBy(item => item.Item, StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>Whether every item's figures add up.</summary>
    public bool Reconciles => Items.All(item => item.Before + item.Bought + item.Mixed == item.Used + item.Lost + item.OnHand);

    /// <summary>An entry's draws come before what is mixed from them, whose cost they are.</summary>
    private void Run(List<StockMove> moves)
    {
        var poured = Money.Zero;
        foreach (var move in moves.Where(move => move.Change < 0 || move.Other != Places.Mixing))
        {
            var cost = Of(move).Take(move);
            if (move.Change < 0 && move.Other == Places.Mixing)
                poured += cost;
        }

        var mixed = moves.Where(move => move.Change > 0 && move.Other == Places.Mixing).ToList();
        if (mixed.Count == 0)
            return;
        var shares = Share.Split(poured.Millionths, [.. mixed.Select(move => move.Value.Millionths)]);
        for (var i = 0; i < mixed.Count; i++)
            Of(mixed[i]).Take(mixed[i] with { Value = new(shares[i]) });
    }

    private Running Of(StockMove move)
    {
        if (!_items.TryGetValue(move.Item, out var item))
            _items[move.Item] = item = new(move.Item, move.Kind, _formula);
        if (move.Date >= _from)
            item.EnterPeriod();
        return item;
    }

    private sealed class Running(string item, ItemKind kind, CostFormula formula)
    {
        private readonly CostFlow _flow = new(formula);
        private Money? _before;
        private Money _bought, _mixed, _used, _lost, _posted;

        public void EnterPeriod() => _before ??= _flow.OnHand;

        public Money Take(StockMove move)
        {
            if (move.Change > 0)
                _flow.Receive(move.Lot, move.Change, move.Value);
            var cost = move.Change > 0 ? move.Value : _flow.Use(move.Lot, -move.Change);
            if (_before is not null)
                Count(move, cost);
            return cost;
        }

        public ItemValue ToValue() => new(item, kind, _before ?? Money.Zero, _bought, _mixed, _used, _lost, _flow.OnHand, _posted);

        private void Count(StockMove move, Money cost)
        {
            var gained = move.Change > 0 ? cost : Money.Zero - cost;
            if (move.Other == Places.Supplier)
                _bought += gained;
            else if (move.Other == Places.Mixing)
                _mixed += gained;
            else if (move.Other == Places.LostOrGained || move.Other == Places.ThrownAway)
                _lost -= gained;
            else
            {
                _used -= gained;
                _posted += move.Change > 0 ? Money.Zero - move.Value : move.Value;
            }
        }
    }
}

/// <summary>An item's stock in a period by a formula.</summary>
/// <param name="Item">The item.</param>
/// <param name="Kind">What sort of thing it is.</param>
/// <param name="Before">The stock's value when the period began.</param>
/// <param name="Bought">What was bought.</param>
/// <param name="Mixed">What was mixed to it from other items, less what was mixed from it.</param>
/// <param name="Used">What sessions and baths used.</param>
/// <param name="Lost">What was thrown away or lost, less what a count found.</param>
/// <param name="OnHand">The stock's value at the end.</param>
/// <param name="PostedAsUsed">What the ledger posted for what sessions and baths used: each unit at the cost of its own lot.</param>
public sealed record ItemValue(
    string Item, ItemKind Kind, Money Before, Money Bought, Money Mixed, Money Used, Money Lost, Money OnHand, Money PostedAsUsed);
