namespace Ledger.Core.Sessions;

/// <summary>
/// What stands on every page that concerns chemistry. It replaces neither the maker's sheet nor the law.
/// </summary>
public static class UsualCautions
{
    /// <summary>Who has the last word.</summary>
    public const string Governs = "The maker's safety data sheet, local rules and licensed practice govern.";

    /// <summary>
    /// The line before an act that handles solutions or powders; short enough for a line of a narrow screen.
    /// </summary>
    public const string Handling = "Gloves, goggles, fresh air. Heed data sheet, local rules, licensed practice.";

    /// <summary>The same where there is a line more: on paper and in the help.</summary>
    public const string OnPaper = $"Gloves, eye protection, fresh air. {Governs}";

    /// <summary>The line before an act that discards.</summary>
    public const string Waste = "No bleach, no acid. Heed safety data sheet, local rules, licensed practice.";

    /// <summary>The usual cautions, one sentence each.</summary>
    public static IReadOnlyList<string> Sentences { get; } =
    [
        "Wear gloves and eye protection.",
        "Keep the room ventilated.",
        "Pour acid into water, never water into acid.",
        "Mix nothing with bleach.",
        "Store nothing in bottles made for food or drink.",
        "Used fixer holds silver: collect it in a jug of its own.",
    ];
}
