using Ledger.Core.Costing;

namespace Ledger.Core.Journal;

/// <summary>What a ledger remembers of prices and of the stock's life.</summary>
public interface ICostRecords
{
    /// <summary>What every delivery up to a day cost, the first first.</summary>
    IReadOnlyList<LotPrice> Prices(LocalDate asOf) => [];

    /// <summary>What every delivery of one item up to a day cost, the first first.</summary>
    IReadOnlyList<LotPrice> PricesOf(string item, LocalDate asOf) => [];

    /// <summary>
    /// All that came into the stock and left it up to a day, in order; entries that were corrected are left out.
    /// </summary>
    IReadOnlyList<StockMove> StockMoves(LocalDate asOf) => [];
}
