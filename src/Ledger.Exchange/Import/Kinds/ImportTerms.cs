using Ledger.Core.Measures;
using Ledger.Core.Stock;
using NodaTime;

namespace Ledger.Exchange.Import.Kinds;

/// <summary>What a file's rows do not say themselves.</summary>
/// <param name="ItemOf">The item of a code, or null.</param>
/// <param name="Formats">The formats that are known.</param>
/// <param name="Undated">The day of what names no day.</param>
internal sealed record ImportTerms(Func<string, Item?> ItemOf, FormatTable Formats, LocalDate Undated)
{
    /// <summary>
    /// The unit of an item, or of a container by the item its code begins with. What is not known is read as millilitres: the posting rules
    /// refuse the name itself.
    /// </summary>
    public Unit UnitOf(string what) => Named(what) ?? Unit.Millilitre;

    /// <summary>The same of whatever holds something: a holder's side and a box of exposed ones hold sheets.</summary>
    public Unit HeldUnitOf(string what) => Named(what) ?? Unit.Sheet;

    private Unit? Named(string what) => (ItemOf(what) ?? ItemOf(what.Split('/')[0]))?.Unit;
}
