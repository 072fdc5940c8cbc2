using System.Text.RegularExpressions;
using Ledger.Core.Stock;

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

/// <summary>
/// A control strip that was developed in a replenished developer: it says whether the replenisher keeps it as it was.
/// </summary>
/// <param name="Date">The day.</param>
/// <param name="Result">What was read from it, in the user's words: densities, or how it differs from the reference
/// strip.</param>
/// <param name="IsWithinLimits">Whether that is within the user's limits.</param>
public sealed record ControlStrip(LocalDate Date, string Result, bool IsWithinLimits);

/// <summary>A test of what is left in film or paper after fixing and washing.</summary>
/// <param name="Date">The day.</param>
/// <param name="Kind">Silver or hypo.</param>
/// <param name="Result">What it showed.</param>
/// <param name="HasPassed">Whether it was good enough.</param>
/// <param name="Session">The session it belongs to; null when it belongs to the bath alone.</param>
public sealed partial record ResidualTest(LocalDate Date, string Kind, string Result, bool HasPassed, string? Session)
{
    /// <summary>Silver that was not fixed out.</summary>
    public const string Silver = "silver";

    /// <summary>Fixer (hypo) that was not washed out.</summary>
    public const string Hypo = "hypo";

    /// <summary>What a residual test looks for.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [Silver, Hypo];

    /// <summary>
    /// Whether it ends a bath of that role: silver that is left ends the fixer, fixer that is left ends the wash aid.
    /// </summary>
    public bool Ends(ItemRole role) =>
        !HasPassed && ((Kind, role) is (Silver, ItemRole.Fixer) or (Hypo, ItemRole.WashAid));

    /// <summary>
    /// The figure that a result begins with, in milligrams per square metre, rounded up: 14 for "0.014 g/m2", "14
    /// mg/m²", "0.014 g per square metre", or as laboratories write it "1.4 µg/cm²"; null without one.
    /// </summary>
    public static int? MilligramsPerSquareMetre(string result) =>
        Figure().Match(result) is { Success: true } match
        && decimal.TryParse(match.Groups[1].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture,
            out var figure)
        && figure * (match.Groups[3].Success ? 10 : match.Groups[2].Length == 2 ? 1 : 1000) is <= 1_000_000
            and var milligrams
            ? (int)Math.Ceiling(milligrams) : null;

    [GeneratedRegex(
        @"^\s*([0-9.]{1,12})\s*(?:(mg|g)\s*(?:/|per)\s*(?:m\b|m2|m²|sq|square)|"
            + @"([uµμ]g)\s*(?:/|per)\s*(?:cm2|cm²|cm\b|sq cm|square cent))",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Figure();
}
