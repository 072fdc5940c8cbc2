using Ledger.Core.Baths;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// A bath is replenished or topped up: the concentrate leaves its bottle, its cost joins the bath's; the capacity stays
/// what it was.
/// </summary>
internal static class TopUpRules
{
    public static void Post(TopUp topUp, Draft draft)
    {
        var bath = draft.Bath(topUp.Bath);
        var item = draft.Item(topUp.Item ?? bath.Item);
        var own = draft.Item(bath.Item);
        Require.That(item.Unit == own.Unit,
            $"{item.Code} is kept in {item.Unit.Name()} and bath {bath.Code} in {own.Unit.Name()}; name an item that "
                + "is measured like it");
        Require.That(topUp.Added > default(Volume), "what is added must be more than nothing");
        Require.That(
            topUp.Bled <= bath.WorkingVolume,
            $"bath {bath.Code} is {bath.WorkingVolume.ToText(draft.Style)}; no more than that can be taken out");
        var amount = topUp.Amount;
        if (amount is null)
        {
            Require.That(item.Unit == Unit.Millilitre,
                $"{item.Code} is kept in {item.Unit.Name()}; say how much of it was used");
            var dilution = topUp.Dilution
                ?? (item.Code == own.Code ? bath.Dilution : item.Dilution ?? Dilution.Undiluted);
            amount = Quantity.Of(dilution.SourceIn(topUp.Added));
        }

        draft.Add(new BathToppedUp(bath.Place, topUp.Added, topUp.Bled));
        draft.Take(item, amount.Value, topUp.Container, bath.Place, topUp.BooksDifference);
        var after = bath with { TopUps = [.. bath.TopUps,
            new(topUp.Date, topUp.Added, topUp.Bled, bath.WorkedWeighted)] };
        if (new BathReading(bath, draft.Date).Replenishment is { } before
            && new BathReading(after, draft.Date).Replenishment is { } then)
        {
            draft.Show(bath.Code, $"{before.Due.ToText(draft.Style)} due", $"{then.Due.ToText(draft.Style)} due");
            if (then.IsAtCeiling)
                draft.Remark(
                    $"bath {bath.Code} has had {then.Added.ToText(draft.Style)} of replenisher "
                    + $"of at most {then.Ceiling.ToText(draft.Style)}: mix a fresh one");
        }
        else
            draft.Show(bath.Code, $"added to {bath.TopUps.Count} times", $"{topUp.Added.ToText(draft.Style)} added");

        TakeOut(topUp, bath, draft);
        var bled = topUp.Bled > default(Volume) ? $", {topUp.Bled.ToText(draft.Style)} taken out" : "";
        draft.Summary =
            $"added {topUp.Added.ToText(draft.Style)} to bath {bath.Code}: {amount.Value.ToText(draft.Style)} of "
                + $"{item.Code}{bled}";
    }

    /// <summary>What made room goes into a jug when one is named, as a bath does that is discarded.</summary>
    private static void TakeOut(TopUp topUp, Bath bath, Draft draft)
    {
        if (topUp.Jug is not { Length: > 0 } jug)
            return;
        Require.That(topUp.Bled > default(Volume),
            $"nothing was taken out of {bath.Code}, so nothing goes into jug {jug}; leave the jug out");
        JugRules.Fill(draft.Jug(jug), topUp.Bled, BathDiscarding.Name(bath), bath.Material,
            WasteKinds.Of(bath.Role), draft);
    }
}
