using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>An undo takes back all that an entry moved, on that entry's own day.</summary>
internal static class UndoRules
{
    private static readonly string[] Redefined = ["item", "format", "process", "setting", "holder"];

    public static void Post(Undo undo, Draft draft)
    {
        var reason = Require.Reason(undo.Reason);
        var original = Find(undo.Number, undo.Reference, draft.Past);
        Require.That(
            original.Undoes is null,
            $"entry {original.Number} is an undo itself; record what really happened as a new entry");
        if (original.UndoneBy is { } by)
            throw new RefusedException(RefusalKind.AlreadyThere,
                $"entry {original.Number} was taken back by entry {by} already", by);
        Require.That(
            !Redefined.Contains(original.Kind),
            $"entry {original.Number} defines {(original.Kind == "item" ? "an" : "a")} {original.Kind}; define it "
                + "again instead");
        if (draft.Past.FirstUseOfBathMixedBy(original.Number) is { } use)
            throw new RefusedException(
                RefusalKind.DependedOn,
                $"what entry {original.Number} began has been used since; take back entry {use} first", use);

        if (draft.Past.FirstUseOfOrderPlacedBy(original.Number) is { } later)
            throw new RefusedException(
                RefusalKind.DependedOn,
                $"the order that entry {original.Number} placed was changed or delivered since; take back entry "
                    + $"{later} first", later);

        if (draft.Past.NextAboutSheetsOf(original.Number) is { } next)
            throw new RefusedException(
                RefusalKind.DependedOn,
                $"entry {next} is about a sheet of entry {original.Number}; take back entry {next} first", next);

        draft.TakeBack(original);
        var back = draft.Past.MovementsOf(original.Number).Select(movement => movement.Reversed()).Reverse().ToList();
        foreach (var place in back.SelectMany(movement => new[] { movement.From, movement.To })
            .Distinct().Where(place => place.IsOnHand))
            Settle(place, back, original, draft);
        foreach (var movement in back)
            draft.Add(movement);
        draft.Summary = $"took back entry {original.Number} ({original.Summary}): {reason}";
    }

    /// <summary>The entry of that number or reference.</summary>
    public static JournalEntry Find(long number, string? key, IPast past) => key is not null
        ? past.Find(key) ?? throw new RefusedException(
            RefusalKind.Unknown, $"no entry has the reference \"{key}\"; `show journal --json` lists them")
        : past.Find(number) ?? throw new RefusedException(
            RefusalKind.Unknown, $"there is no entry {number}; `show journal` lists them");

    /// <summary>
    /// What a place holds after all of it: an entry that booked a difference brought and drew at once. Nothing may be
    /// missing then, nor money stay where nothing else is left, nor anything in a box that never came.
    /// </summary>
    private static void Settle(PlaceId place, List<Movement> back, JournalEntry original, Draft draft)
    {
        var quantity = back.Sum(movement => movement.Quantity * Sign(movement, place));
        var value = new Money(back.Sum(movement => movement.Value.Millionths * Sign(movement, place)));
        if (draft.Holdings.Container(place) is { } container)
        {
            var after = container with { Held = container.Held + container.Held with { Base = quantity },
                Value = container.Value + value };
            var cameWithIt = back.Any(movement => movement.From == place && movement.To == Places.Supplier);
            var isLeft = after.Held.Base != 0;
            if (after.Held.Base < 0 || after.Value < Money.Zero || (isLeft ? cameWithIt : after.Value != Money.Zero))
                throw DependedOn(container.Code, original);
            draft.Touch(after);
        }
        else if (draft.Holdings.Film.Side(place) is { } side)
        {
            if (quantity > 0 && draft.Holdings.Film.In(side) is not null)
                throw DependedOn(side.Code, original);
        }
        else if (quantity < 0 && draft.Holdings.Bath(place) is null && !draft.Holdings.Film.IsPlace(place))
            throw DependedOn("what it brought", original);
    }

    private static int Sign(Movement movement, PlaceId place) =>
        movement.To == place ? 1 : movement.From == place ? -1 : 0;

    private static RefusedException DependedOn(string what, JournalEntry original) => new(
        RefusalKind.DependedOn,
        $"{what} has been used since; take back the later entries first, then entry {original.Number}");
}
