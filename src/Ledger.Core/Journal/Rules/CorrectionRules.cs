using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Rules;

/// <summary>A correction takes back all that an entry moved, on that entry's own day.</summary>
internal static class CorrectionRules
{
    private static readonly string[] Redefined = ["item", "process", "setting"];

    public static void Post(Correction correction, Draft draft)
    {
        var reason = Require.Reason(correction.Reason);
        var original = draft.Past.Find(correction.Reverses)
            ?? throw new RefusedException(RefusalKind.Unknown, $"there is no entry {correction.Reverses}; `show journal` lists them");
        Require.That(
            original.Reverses is null, $"entry {original.Number} is a correction itself; record what really happened as a new entry");
        if (original.ReversedBy is { } by)
            throw new RefusedException(RefusalKind.AlreadyThere, $"entry {original.Number} was reversed by entry {by} already");
        Require.That(!Redefined.Contains(original.Kind), $"entry {original.Number} defines a {original.Kind}; define it anew instead");
        if (draft.Past.FirstUseOfBathMixedBy(original.Number) is { } use)
            throw new RefusedException(
                RefusalKind.DependedOn, $"the bath that entry {original.Number} mixed has taken work since; correct entry {use} first");

        if (draft.Past.FirstUseOfOrderPlacedBy(original.Number) is { } later)
            throw new RefusedException(
                RefusalKind.DependedOn, $"the order that entry {original.Number} placed was changed or delivered since; correct entry {later} first");

        draft.MoveTo(original.Date);
        foreach (var movement in draft.Past.MovementsOf(original.Number))
            TakeBack(movement.Reversed, original, draft);
        draft.Summary = $"reversed entry {original.Number} ({original.Summary}): {reason}";
    }

    private static void TakeBack(Movement back, JournalEntry original, Draft draft)
    {
        if (draft.Holdings.Container(back.From) is { } container)
        {
            var left = container.Held.Base - back.Quantity;
            if (left < 0 || container.Value < back.Value)
                throw DependedOn(container.Code, original);
            draft.Touch(container with { Held = container.Held with { Base = left }, Value = container.Value - back.Value });
        }
        else if (back.From.IsOnHand && draft.Holdings.Bath(back.From) is null)
            throw DependedOn("what it brought", original);

        if (draft.Holdings.Container(back.To) is { } refilled)
            draft.Touch(refilled with
            {
                Held = refilled.Held with { Base = refilled.Held.Base + back.Quantity },
                Value = refilled.Value + back.Value,
            });
        draft.Add(back);
    }

    private static RefusedException DependedOn(string what, JournalEntry original) => new(
        RefusalKind.DependedOn, $"{what} has been used since; correct the later entries first, then entry {original.Number}");
}
