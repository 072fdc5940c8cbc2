using NodaTime;

namespace Ledger.Core.Baths;

/// <summary>What somebody saw or smelled at a bath.</summary>
/// <param name="Date">The day.</param>
/// <param name="Sign">What it was: yellow, specks, smell…</param>
/// <param name="EndsUse">Whether the bath is not to be used any more.</param>
public sealed record Observation(LocalDate Date, string Sign, bool EndsUse);

/// <summary>What a silver strip said.</summary>
/// <param name="Date">The day.</param>
/// <param name="MilligramsPerLitre">The silver in the bath.</param>
public sealed record SilverReading(LocalDate Date, int MilligramsPerLitre)
{
    /// <summary>Grams per litre, as strips are read.</summary>
    public decimal GramsPerLitre => MilligramsPerLitre / 1000m;
}

/// <summary>A test of what is left in film or paper after fixing and washing.</summary>
/// <param name="Date">The day.</param>
/// <param name="Kind">Silver or fixer.</param>
/// <param name="Result">What it showed.</param>
/// <param name="HasPassed">Whether it was good enough.</param>
/// <param name="Session">The session it belongs to; null when it belongs to the bath alone.</param>
public sealed record ResidualTest(LocalDate Date, string Kind, string Result, bool HasPassed, string? Session);
