using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Planning;

/// <summary>
/// Gathers what must be at hand: what the session uses up, in the order in which its posting draws it, and the
/// concentrate of the baths that are to be mixed first.
/// </summary>
internal sealed class PlannedUses(SessionPlanDraft draft)
{
    private readonly List<(Item Item, Quantity Portion)> _portions = [];

    /// <summary>What the session itself uses up.</summary>
    public IReadOnlyList<PlannedUse> OfSession() => Of([]);

    /// <summary>The same, and what goes into the baths that are to be mixed first.</summary>
    public IReadOnlyList<PlannedUse> Of(IReadOnlyList<BathOutlook> baths)
    {
        _portions.Clear();
        Developer();
        foreach (var batch in draft.Batches)
            Add(batch.Film, batch.Film.Of(batch.Sheets.Count(sheet => sheet.Known is null)));
        foreach (var step in draft.Process.UsedUp)
            foreach (var (code, amount) in step.Drawn(draft.Item(step.Item!), draft.Loads))
                Add(draft.Item(code), amount);
        foreach (var mixes in baths.GroupBy(bath => bath.Item, StringComparer.OrdinalIgnoreCase))
            foreach (var (code, amount) in ToMix([.. mixes]))
                Add(draft.Item(code), amount);
        return
        [
            .. _portions.GroupBy(portion => portion.Item.Code, StringComparer.OrdinalIgnoreCase)
                .Select(group => PlannedUse.Of(
                    group.First().Item, group.Select(portion => portion.Portion),
                    draft.Holdings.ContainersOf(group.Key), draft.Day))
                .OrderBy(use => use.Item.Kind),
        ];
    }

    /// <summary>
    /// What the baths of an item take that are to be mixed. Of a fresh pair the first one's figure is for both.
    /// </summary>
    private static IEnumerable<(string Item, Quantity Amount)> ToMix(IReadOnlyList<BathOutlook> baths) =>
        baths.FirstOrDefault(bath => bath.Cure == BathCure.MixPair)?.ToMix ?? baths.SelectMany(bath => bath.ToMix);

    private void Developer()
    {
        if (draft.Process.Developer is not { Use: StepUse.OneShot })
            return;
        foreach (var developer in draft.Batches.Select(batch => batch.Developer).OfType<BatchDeveloper>().Take(1))
            Add(developer.Item,
                new(draft.Batches.Sum(batch => batch.Developer?.Measured.Microlitres ?? 0), Unit.Millilitre));
        foreach (var part in draft.Batches.SelectMany(batch => batch.Developer?.OtherParts ?? [])
            .Where(part => part.Item is not null)
            .GroupBy(part => part.Item!))
            Add(draft.Item(part.Key), new(part.Sum(one => one.Measured.Microlitres), Unit.Millilitre));
    }

    private void Add(Item item, Quantity portion)
    {
        if (!portion.IsZero)
            _portions.Add((item, portion));
    }
}
