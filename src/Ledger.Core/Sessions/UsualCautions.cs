namespace Ledger.Core.Sessions;

/// <summary>What stands on every page that concerns chemistry. It replaces neither the maker's sheet nor the law.</summary>
public static class UsualCautions
{
    /// <summary>Who has the last word.</summary>
    public const string Governs = "The maker's safety data sheet, local rules and licensed practice govern.";

    /// <summary>The line before an act that handles solutions or powders; two lines of a narrow screen.</summary>
    public const string Handling = "Gloves, eye protection, fresh air. Safety data sheet, local rules and licensed practice govern.";

    /// <summary>The line before an act that discards.</summary>
    public const string Waste = "Nothing with bleach or acid. Safety data sheet, local rules and licensed practice govern.";

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
