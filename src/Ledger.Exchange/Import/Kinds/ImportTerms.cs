using Ledger.Core.Measures;
using Ledger.Core.Stock;
using NodaTime;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>What a file's rows do not say themselves.</summary>
/// <param name="ItemOf">The item of a code, or null.</param>
/// <param name="Undated">The day of what names no day.</param>
internal sealed record ImportTerms(Func<string, Item?> ItemOf, LocalDate Undated)
{
    /// <summary>
    /// The unit of an item, or of a container by the item its code begins with. What is not known is read as millilitres: the posting rules
    /// refuse the name itself.
    /// </summary>
    public Unit UnitOf(string what) => (ItemOf(what) ?? ItemOf(what.Split('/')[0]))?.Unit ?? Unit.Millilitre;
}
