using Ledger.Core.Costing;
using NodaTime;

namespace Ledger.Core.Journal;

/// <summary>Reads the costs of a period by a formula.</summary>
public static class CostsByFormula
{
    /// <summary>The facts of a period. By lot they are what the ledger posted; any other formula takes the stock's whole life.</summary>
    public static CostFacts Costs(this ILedger ledger, LocalDate from, LocalDate to, CostFormula formula)
    {
        var posted = ledger.Costs(from, to);
        return formula == CostFormula.SpecificLot ? posted : Recosting.Of(posted, new(ledger.StockMoves(to), formula, from));
    }
}
