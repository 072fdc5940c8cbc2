using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// What may be taken back or put right of an entry whose words are kept. What follows from it is decided once more by the rules of each entry.
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
                RefusalKind.AlreadyThere, $"entry {target.Number} was taken back by entry {by} already; to have it count again, take back entry {by}");
        return Of(
            undo with { Date = target.Date, Number = target.Number, Reference = target.Key },
            $"took back entry {target.Number} ({target.Summary}): {reason}");
    }

    public static Posting Post(Amendment amendment, JournalEntry target)
    {
        var reason = Require.Reason(amendment.Reason);
        Require.That(
            !IsAct(target), $"entry {target.Number} takes back or puts right another entry itself; take it back, or put right entry "
            + $"{target.Undoes ?? target.Amends}");
        if (target.UndoneBy is { } by)
            throw new RefusedException(
                RefusalKind.AlreadyThere, $"entry {target.Number} was taken back by entry {by}; take that back first, then put it right");
        Require.That(
            target.IsSaid,
            $"entry {target.Number} was posted by an earlier version, which did not keep its words; take it back and record it again as it should be");
        var changes = string.Join(", ", amendment.Changes.Select(change =>
            change.Line == 0 ? $"{change.Field} {change.Value}" : $"line {change.Line} {(change.Field.Length == 0 ? "away" : $"{change.Field} {change.Value}")}"));
        return Of(
            amendment with { Date = target.Date, Number = target.Number, Reference = target.Key },
            $"put entry {target.Number} right ({changes}): {reason}");
    }

    private static Posting Of(Entry entry, string summary) => new(entry, summary, [], [], [], []);
}
