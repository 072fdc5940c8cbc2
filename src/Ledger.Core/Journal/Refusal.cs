using Ledger.Core.Measures;

namespace Ledger.Core.Journal;

/// <summary>Why an entry was not accepted. Nothing was written.</summary>
/// <param name="Kind">The rule that refused it.</param>
/// <param name="Sentence">What is wrong, where, and what is accepted.</param>
public sealed record Refusal(RefusalKind Kind, string Sentence)
{
    /// <summary>
    /// The number of the entry that stands in the way, to be amended or taken back first; null where it is none.
    /// </summary>
    public long? Entry { get; init; }
}

/// <summary>What can be wrong with an entry. The rules ask for one fault at a time and name the first.</summary>
public enum RefusalKind
{
    /// <summary>Its date is later than today.</summary>
    InFuture,

    /// <summary>A field is empty, negative, too large, or in the wrong unit.</summary>
    NotAccepted,

    /// <summary>It names something the ledger does not know.</summary>
    Unknown,

    /// <summary>It names something new that already exists.</summary>
    AlreadyThere,

    /// <summary>It asks more of a place than it holds; the difference can be booked as a count.</summary>
    MoreThanHeld,

    /// <summary>It would send film through a paper bath, or paper through a film bath.</summary>
    WrongMaterial,

    /// <summary>Other entries depend on the one it would take back.</summary>
    DependedOn,

    /// <summary>It would put a sheet into a holder side that holds one.</summary>
    Occupied,

    /// <summary>It asks for the sheet of a holder side or box that is empty.</summary>
    Empty,

    /// <summary>It would use what is under suspicion.</summary>
    UnderSuspicion,

    /// <summary>It is unlikely, but may be so: it is accepted when it is said to be so anyway.</summary>
    Doubtful,
}

/// <summary>
/// Carries a refusal out of the depth of a rule; caught by the posting rules and never seen outside the core.
/// </summary>
/// <param name="kind">The rule that refuses.</param>
/// <param name="sentence">What is wrong, where, and what is accepted.</param>
/// <param name="entry">The entry that stands in the way.</param>
internal sealed class RefusedException(RefusalKind kind, string sentence, long? entry = null) : Exception(sentence)
{
    private const int MostNamed = 12;

    public Refusal Refusal { get; } = new(kind, sentence) { Entry = entry };

    /// <summary>The refusal of something that is under suspicion.</summary>
    /// <param name="what">What is not used.</param>
    /// <param name="suspicion">Why.</param>
    /// <param name="toClear">What would be cleared: itself, or its delivery's number.</param>
    public static RefusedException Suspect(string what, Stock.Suspicion suspicion, string toClear) => new(
        RefusalKind.UnderSuspicion,
        $"{what} is {suspicion.Text}; nothing of it is used until it is cleared: `record clearance {toClear} --reason "
            + "...`, or discard it");

    /// <summary>A name that the ledger does not know, with those that it does.</summary>
    /// <param name="what">What was named, as it was written: item "pan".</param>
    /// <param name="known">The names there are.</param>
    public static RefusedException Unknown(string what, IEnumerable<string> known)
    {
        var all = known.ToList();
        var names = all.Take(MostNamed + 1).ToList();
        var meant = what.Split('"') is [_, var written, _] ? Spelling.Meant(written, all) : "";
        var listed = names.Count == 0 ? "there is none yet"
            : $"known: {string.Join(", ", names.Take(MostNamed))}{(names.Count > MostNamed ? " and others" : "")}";
        return new(RefusalKind.Unknown, $"there is no {what}; {meant}{listed}");
    }
}
