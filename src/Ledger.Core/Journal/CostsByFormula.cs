using Ledger.Core.Costing;

namespace Ledger.Core.Journal;

/// <summary>Reads the costs of a period by a formula.</summary>
public static class CostsByFormula
{
    /// <summary>
    /// The facts of a period. By lot they are what the ledger posted; any other formula takes the stock's whole life.
    /// </summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="from">The first day.</param>
    /// <param name="to">The last day.</param>
    /// <param name="formula">The formula.</param>
    /// <param name="fatesOn">The day whose fates count; null for the last day.</param>
    public static CostFacts Costs(this ILedger ledger, LocalDate from, LocalDate to, CostFormula formula,
        LocalDate? fatesOn = null)
    {
        if (formula == CostFormula.SpecificLot)
            return ledger.Costs(from, to, fatesOn);
        var recosting = new Recosting(new(ledger.StockMoves(to), formula, from));
        return recosting.Of(ledger.Costs(from, to, fatesOn, recosting.Of));
    }
}
