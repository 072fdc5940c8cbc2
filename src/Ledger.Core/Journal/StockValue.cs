using Ledger.Core.Costing;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal;

/// <summary>
/// What an item's stock would be worth had its uses been costed by another formula than the one the ledger posts.
/// </summary>
public static class StockValue
{
    /// <summary>
    /// The value of what is left after all moves; null when they take out more than came in before, as entries that
    /// were dated back can.
    /// </summary>
    /// <param name="moves">What the item's containers took in and gave, the first first.</param>
    /// <param name="formula">The cost formula.</param>
    public static Money? Of(IEnumerable<ItemMove> moves, CostFormula formula)
    {
        var flow = new CostFlow(formula);
        var lots = new Dictionary<Stock.LotId, long>();
        foreach (var move in moves)
        {
            var ofLot = lots.GetValueOrDefault(move.Lot) + move.Change;
            if (ofLot < 0)
                return null;
            lots[move.Lot] = ofLot;
            if (move.Change > 0)
                flow.Receive(move.Lot, move.Change, move.Value);
            else
                flow.Use(move.Lot, -move.Change);
        }

        return flow.OnHand;
    }
}
