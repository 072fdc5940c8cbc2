using Ledger.Core.Stock;

namespace Ledger.Core.Baths;

/// <summary>A kind of waste that is collected in jugs of its own.</summary>
public enum WasteKind
{
    /// <summary>Used fixer, which holds silver.</summary>
    Fixer,

    /// <summary>Used or unused developer.</summary>
    Developer,

    /// <summary>Stop bath.</summary>
    Stop,

    /// <summary>Toner.</summary>
    Toner,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>
/// What is known of the kinds of waste: their names, the words that tell them, and the hazard of each.
/// </summary>
public static class WasteKinds
{
    private static readonly (string Word, WasteKind Kind)[] Telling =
    [
        ("hypo clear", WasteKind.Other), ("wash aid", WasteKind.Other), ("wetting", WasteKind.Other),
        ("fix", WasteKind.Fixer), ("hypo", WasteKind.Fixer), ("develop", WasteKind.Developer),
        ("replenisher", WasteKind.Developer), ("stop", WasteKind.Stop), ("toner", WasteKind.Toner),
        ("toning", WasteKind.Toner), ("selenium", WasteKind.Toner),
    ];

    /// <summary>fixer, developer, stop bath, toner, other.</summary>
    public static IReadOnlyList<string> Names { get; } = ["fixer", "developer", "stop bath", "toner", "other"];

    /// <summary>The kind's name.</summary>
    public static string Name(this WasteKind kind) => Names[(int)kind];

    /// <summary>The kind that words tell, such as "used fixer"; null when they tell none.</summary>
    public static WasteKind? Told(string words)
    {
        foreach (var (word, kind) in Telling)
            if (words.Contains(word, StringComparison.OrdinalIgnoreCase))
                return kind;
        return null;
    }

    /// <summary>The kind of waste that a chemical of a role becomes.</summary>
    public static WasteKind Of(ItemRole role) => role switch
    {
        ItemRole.Fixer => WasteKind.Fixer,
        ItemRole.Developer => WasteKind.Developer,
        ItemRole.Stop => WasteKind.Stop,
        ItemRole.Toner => WasteKind.Toner,
        _ => WasteKind.Other,
    };

    /// <summary>
    /// The hazard in a line, for a jug's label (from memory: usual statements of makers' safety data sheets, which
    /// govern).
    /// </summary>
    public static string Hazard(this WasteKind kind) => kind switch
    {
        WasteKind.Fixer => "Holds silver. Toxic gas with acid, bleach or developer: keep apart.",
        WasteKind.Developer => "Irritates skin and eyes, can cause allergy. Keep apart from acid, fixer and bleach.",
        WasteKind.Stop => "Acid. Toxic gas with bleach or used fixer: keep apart.",
        WasteKind.Toner => "Can hold selenium or sulfide: toxic. Toxic gas with acid or bleach: keep apart.",
        _ => "Keep apart from acid, bleach and other wastes.",
    };
}
