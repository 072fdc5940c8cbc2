using Ledger.Core.Measures;

namespace Ledger.Core.Baths;

/// <summary>Fresh solution that was added to a bath.</summary>
/// <param name="Date">The day.</param>
/// <param name="Added">The fresh working solution or replenisher.</param>
/// <param name="Bled">The used solution that was poured off to make room for it.</param>
/// <param name="Worked">The weighted area that had passed through the bath before it.</param>
public sealed record TopUpRecord(LocalDate Date, Volume Added, Volume Bled, Area Worked);
