using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// What may be taken back or amended of an entry whose words are kept. What follows from it is decided once more by the
/// rules of each entry.
/// </summary>
internal static class ActRules
{
    /// <summary>Whether an entry is about another one.</summary>
    public static bool IsAct(JournalEntry entry) => entry.Undoes is not null || entry.Amends is not null;

    public static Posting Post(Undo undo, JournalEntry target)
    {
        var reason = Require.Reason(undo.Reason);
        if (target.UndoneBy is { } by)
            throw new RefusedException(
                RefusalKind.AlreadyThere,
                $"entry {target.Number} was taken back by entry {by} already; to have it count again, take back entry "
                    + $"{by}", by);
        return Of(undo with { Date = target.Date, Number = target.Number, Reference = target.Key, Reason = reason },
            target);
    }

    public static Posting Post(Amendment amendment, JournalEntry target)
    {
        var reason = Require.Reason(amendment.Reason);
        Require.That(
            !IsAct(target),
            $"entry {target.Number} takes back or amends another entry itself; take it back, or amend entry "
            + $"{target.Undoes ?? target.Amends}");
        if (target.UndoneBy is { } by)
            throw new RefusedException(
                RefusalKind.AlreadyThere,
                $"entry {target.Number} was taken back by entry {by}; take that back first, then amend it", by);
        Require.That(
            target.IsSaid,
            $"entry {target.Number} was posted by an earlier version, which did not keep its words; take it back and "
                + "record it again as it should be");
        return Of(amendment with { Date = target.Date, Number = target.Number, Reference = target.Key,
            Reason = reason }, target);
    }

    public static string Summary(Entry act, long number, string kind) => act switch
    {
        Undo undo => $"took back entry {number} ({kind}): {undo.Reason}",
        Amendment amendment =>
            $"amended entry {number} ({string.Join(", ", amendment.Changes.Select(Text))}): {amendment.Reason}",
        _ => throw new ArgumentException($"a {act.Kind} is about no other entry", nameof(act)),
    };

    private static string Text(FieldChange change) => change switch
    {
        { Field: "" } => $"without line {change.Line}",
        { Line: 0, Field: "before" } => change.Value.Length == 0 ? "last in its day" : "earlier in its day",
        { Line: 0 } => $"{change.Field} {change.Value}",
        _ => $"line {change.Line} {change.Field} {change.Value}",
    };

    private static Posting Of(Entry act, JournalEntry target) =>
        new(act, Summary(act, target.Number, target.Kind), [], [], [], []);
}
