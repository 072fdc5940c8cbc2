using Ledger.Core.Baths;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// What is asked before something goes into a waste jug: bleach, acid, and waste of another kind than the jug's. The
/// hazards are from memory (usual statements of makers' safety data sheets); the sheet itself has the last word, and
/// the question says so.
/// </summary>
internal static class WasteMixing
{
    private const string Instead = "use a jug of its own; the maker's safety data sheet says what must not be mixed";

    private static readonly string[] Bleaches = ["bleach", "hypochlorite", "chlorine"];

    private static readonly string[] Acids = ["acid", "vinegar", "descaler"];

    /// <summary>
    /// What is doubtful about a filling; nothing when it is like what the jug is for, or when its kind is not known.
    /// </summary>
    /// <param name="jug">The jug.</param>
    /// <param name="what">What goes into it, in words.</param>
    /// <param name="kind">Its kind of waste; null when it is not known.</param>
    public static IEnumerable<string> Doubts(WasteJug jug, string what, WasteKind? kind)
    {
        if (Names(what, Bleaches))
            yield return $"{what} into jug {jug.Code} ({jug.Contents}): bleach can release chlorine or chloramine, "
                + $"toxic gases, from used solutions; {Instead}";
        else if (Names(what, Acids) && jug.Waste != WasteKind.Stop)
            yield return $"{what} into jug {jug.Code} ({jug.Contents}): acid can release sulfur dioxide, a toxic gas, "
                + $"from fixer and developer; {Instead}";
        else if (kind is { } waste && waste != jug.Waste)
            yield return $"{what} into jug {jug.Code}, which is for {jug.Contents}: {Hazard(waste, jug.Waste)}; "
                + $"{Instead}";
    }

    private static bool Names(string what, string[] words) =>
        words.Any(word => what.Contains(word, StringComparison.OrdinalIgnoreCase));

    private static string Hazard(WasteKind one, WasteKind other) => (Least(one, other), Most(one, other)) switch
    {
        (WasteKind.Fixer, WasteKind.Developer) => "together they can release ammonia gas",
        (WasteKind.Fixer, WasteKind.Stop) or (WasteKind.Developer, WasteKind.Stop) =>
            "together they can release sulfur dioxide, a toxic gas",
        (_, WasteKind.Toner) or (WasteKind.Toner,
            _) => "a toner's metals and sulfides are collected apart, and acid can release toxic gas from them",
        _ => "unlike wastes can react, and the place that takes them may refuse them",
    };

    private static WasteKind Least(WasteKind one, WasteKind other) => one < other ? one : other;

    private static WasteKind Most(WasteKind one, WasteKind other) => one < other ? other : one;
}
