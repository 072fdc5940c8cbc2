using Ledger.Core.Baths;
using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// A pair is rotated: the first bath goes, the second moves up with its own mixing date, a new second is mixed.
/// </summary>
internal static class RotationRules
{
    public static void Post(Rotation rotation, Draft draft)
    {
        var first = First(rotation.Bath, draft);
        var second = draft.Holdings.SecondAfter(first) ?? throw new RefusedException(
            RefusalKind.NotAccepted,
            $"bath {first.Code} has no second bath and cannot be rotated; discard it and mix a fresh one");
        Require.That(
            second.MixedOn <= rotation.Date,
            $"bath {second.Code} was mixed on a later day than {Measures.Dates.Text(rotation.Date)}");
        var (done, ceiling) = (second.Rotations, draft.Holdings.Settings.RotationCeiling);
        Require.That(
            !draft.Holdings.IsAtCeiling(second),
            $"the pair was rotated {Times(done)} and the ceiling is {ceiling}: {PairCeiling.FreshPair(second)} "
            + "(the setting rotation-ceiling is yours)");

        BathDiscarding.Of(first, Require.Reason(rotation.Reason), new(rotation.Jug, null), draft);
        draft.Show(second.Code, "second", $"first, mixed {Measures.Dates.Text(second.MixedOn)}");
        BathRules.Post(
            new BathMixing
            {
                Key = rotation.Key,
                Date = rotation.Date,
                Bath = rotation.NewBath,
                Item = rotation.Item ?? second.Item,
                WorkingVolume = rotation.WorkingVolume ?? second.WorkingVolume,
                Dilution = rotation.Dilution ?? second.Dilution,
                Amount = rotation.Amount
                    ?? (rotation.Item is null && rotation.WorkingVolume is null ? Measured(second, draft) : null),
                Material = second.Material,
                Capacity = rotation.Capacity ?? second.Capacity,
                PairedWith = second.Code,
                Container = rotation.Container,
                BooksDifference = rotation.BooksDifference,
            },
            draft);
        if (done + 1 == ceiling)
            draft.Remark($"this is rotation {done + 1} of {ceiling}: the next time a fresh pair is mixed");
        draft.Summary = $"rotated: {first.Code} discarded, {second.Code} moves up, {rotation.NewBath.Trim()} mixed; "
            + $"rotation {done + 1} of at most {ceiling}";
    }

    /// <summary>A bath of powder was measured out by weight: the next one takes the same.</summary>
    private static Measures.Quantity? Measured(Bath second, Draft draft) =>
        draft.Item(second.Item).Unit == Measures.Unit.Millilitre ? null
        : draft.Item(second.Item).Of(second.Contents.Sum(content => content.Quantity.Base));

    private static Bath First(string? named, Draft draft)
    {
        if (named is { Length: > 0 })
        {
            var bath = draft.Bath(named);
            return draft.Holdings.IsSecond(bath) ? draft.Bath(bath.PairedWith!) : bath;
        }

        var pairs = draft.Holdings.WorkingBaths.Where(bath => draft.Holdings.SecondAfter(bath) is not null).ToList();
        Require.That(pairs.Count > 0,
            "there is no pair of baths in use, so nothing can be rotated; mix a second bath first");
        Require.That(
            pairs.Count == 1,
            $"say which pair is rotated, by its first bath: {string.Join(", ", pairs.Select(bath => bath.Code))}");
        return draft.Bath(pairs[0].Code);
    }

    private static string Times(int count) => count == 1 ? "once" : $"{count} times";
}
