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
    /// <summary>Moves every date of the file in time.</summary>
    public Func<LocalDate, LocalDate> Shift { get; init; } = date => date;

    /// <summary>
    /// The unit of an item, or of a container by the item its code begins with. What is not known is read as millilitres: the posting rules
    /// refuse the name itself.
    /// </summary>
    public Unit UnitOf(string what) => Named(what) ?? Unit.Millilitre;

    /// <summary>The same of whatever holds something: a holder's side and a box of exposed ones hold sheets.</summary>
    public Unit HeldUnitOf(string what) => Named(what) ?? Unit.Sheet;

    /// <summary>The same for the reading of a described kind.</summary>
    public Core.Journal.Kinds.ReadingTerms ForReading() => new() { Today = Undated, ItemOf = ItemOf, Formats = Formats, Shift = Shift };

    private Unit? Named(string what) => (ItemOf(what) ?? ItemOf(what.Split('/')[0]))?.Unit;
}
