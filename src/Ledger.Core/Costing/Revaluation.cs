using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Costing;

/// <summary>
/// What the stock of a period would have cost by another formula than the one the ledger posts: every item's whole life
/// run through a <see cref="CostFlow"/>. Each item's figures add up: before + bought + mixed = used + lost + on hand.
/// </summary>
public sealed class Revaluation
{
    private readonly CostFormula _formula;
    private readonly LocalDate _from;
    private readonly Dictionary<string, Running> _items = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<CostedMove> _costed = [];

    /// <summary>Revalues a period.</summary>
    /// <param name="moves">What came into the stock and left it from the ledger's first day to the last of the period,
    /// in order.</param>
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

    /// <summary>Every move with its cost by the formula, those before the period too.</summary>
    public IReadOnlyList<CostedMove> Costed => _costed;

    /// <summary>The items by kind and name.</summary>
    public IReadOnlyList<ItemValue> Items =>
    [
        .. _items.Values.Select(item => item.ToValue())
            .OrderBy(item => item.Kind).ThenBy(item => item.Item, StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>Whether every item's figures add up.</summary>
    public bool Reconciles =>
        Items.All(item => item.Before + item.Bought + item.Mixed == item.Used + item.Lost + item.OnHand);

    /// <summary>An entry's draws come before what is mixed from them, whose cost they are.</summary>
    private void Run(List<StockMove> moves)
    {
        var poured = Money.Zero;
        foreach (var move in moves.Where(move => move.Change < 0 || move.Other != Places.Mixing))
        {
            var cost = Take(move);
            if (move.Change < 0 && move.Other == Places.Mixing)
                poured += cost;
        }

        var mixed = moves.Where(move => move.Change > 0 && move.Other == Places.Mixing).ToList();
        if (mixed.Count == 0)
            return;
        var shares = Share.Split(poured.Millionths, [.. mixed.Select(move => move.Value.Millionths)]);
        for (var i = 0; i < mixed.Count; i++)
            Take(mixed[i] with { Value = new(shares[i]) });
    }

    private Money Take(StockMove move)
    {
        var cost = Of(move).Take(move);
        _costed.Add(new(move, cost));
        return cost;
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
        private readonly Dictionary<LotId, Owed> _owed = [];
        private Money? _before;
        private Money _bought, _mixed, _used, _lost, _posted;

        private Money OnHand => _flow.OnHand - new Money(_owed.Values.Sum(owed => owed.Value.Millionths));

        public void EnterPeriod() => _before ??= OnHand;

        public Money Take(StockMove move)
        {
            var cost = move.Change > 0 ? Receive(move) : Use(move);
            if (_before is not null)
                Count(move, cost);
            return cost;
        }

        public ItemValue ToValue() => new(item, kind, _before ?? Money.Zero, _bought, _mixed,
            _used, _lost, OnHand, _posted);

        /// <summary>
        /// What came covers first what was taken before it came, at the cost at which that was posted.
        /// </summary>
        private Money Receive(StockMove move)
        {
            if (!_owed.Remove(Key(move), out var owed))
            {
                _flow.Receive(move.Lot, move.Change, move.Value);
            }
            else if (move.Change > owed.Quantity && move.Value >= owed.Value)
            {
                _flow.Receive(move.Lot, move.Change - owed.Quantity, move.Value - owed.Value);
            }
            else
            {
                var covered = Math.Min(move.Change, owed.Quantity);
                if (move.Change > covered)
                    _flow.Receive(move.Lot, move.Change - covered, Money.Zero);
                _owed[Key(move)] = new(owed.Quantity - covered, owed.Value - move.Value);
            }

            return move.Value;
        }

        /// <summary>An entry that is dated too early takes what has not come yet: that costs what was posted.</summary>
        private Money Use(StockMove move)
        {
            var wanted = -move.Change;
            var there = Math.Min(wanted, _flow.QuantityOf(move.Lot));
            var cost = _flow.Use(move.Lot, there);
            if (there == wanted)
                return cost;
            var early = move.Value - move.Value.PartOf(there, wanted);
            var owed = _owed.GetValueOrDefault(Key(move));
            _owed[Key(move)] = new(owed.Quantity + wanted - there, owed.Value + early);
            return cost + early;
        }

        private LotId Key(StockMove move) => formula == CostFormula.SpecificLot ? move.Lot : default;

        private void Count(StockMove move, Money cost)
        {
            var gained = move.Change > 0 ? cost : Money.Zero - cost;
            if (move.Other == Places.Supplier)
                _bought += gained;
            else if (move.Other == Places.Mixing)
                _mixed += gained;
            else if (move.Other == Places.LostOrGained || move.Other == Places.Discarded)
                _lost -= gained;
            else
            {
                _used -= gained;
                _posted += move.Change > 0 ? Money.Zero - move.Value : move.Value;
            }
        }

        /// <summary>Taken before it came.</summary>
        private readonly record struct Owed(long Quantity, Money Value);
    }
}

/// <summary>A move with its cost by a formula.</summary>
/// <param name="Move">The move.</param>
/// <param name="Cost">What came in or went out cost, never negative.</param>
public readonly record struct CostedMove(StockMove Move, Money Cost);

/// <summary>An item's stock in a period by a formula.</summary>
/// <param name="Item">The item.</param>
/// <param name="Kind">What sort of thing it is.</param>
/// <param name="Before">The stock's value when the period began.</param>
/// <param name="Bought">What was bought.</param>
/// <param name="Mixed">What was mixed to it from other items, less what was mixed from it.</param>
/// <param name="Used">What sessions and baths used.</param>
/// <param name="Lost">What was discarded or lost, less what a count found.</param>
/// <param name="OnHand">The stock's value at the end.</param>
/// <param name="PostedAsUsed">What the ledger posted for what sessions and baths used: each unit at the cost of its own
/// lot.</param>
public sealed record ItemValue(
    string Item, ItemKind Kind, Money Before, Money Bought, Money Mixed, Money Used, Money Lost,
    Money OnHand, Money PostedAsUsed);
