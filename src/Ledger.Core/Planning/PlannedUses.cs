using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Planning;

/// <summary>Gathers what a session uses up, in the order in which the session's posting draws it.</summary>
internal sealed class PlannedUses(SessionPlanDraft draft)
{
    private readonly List<(Item Item, Quantity Portion)> _portions = [];

    public IReadOnlyList<PlannedUse> All()
    {
        Developer();
        foreach (var batch in draft.Batches)
            Add(batch.Film, batch.Film.Of(batch.Sheets.Count(sheet => sheet.Known is null)));
        foreach (var step in draft.Process.UsedUp)
            foreach (var (code, amount) in step.Drawn(draft.Item(step.Item!), draft.Loads))
                Add(draft.Item(code), amount);
        return
        [
            .. _portions.GroupBy(portion => portion.Item.Code, StringComparer.OrdinalIgnoreCase)
                .Select(group => PlannedUse.Of(
                    group.First().Item, group.Select(portion => portion.Portion), draft.Holdings.ContainersOf(group.Key), draft.Day))
                .OrderBy(use => use.Item.Kind),
        ];
    }

    private void Developer()
    {
        if (draft.Process.Developer is not { Use: StepUse.OneShot })
            return;
        foreach (var developer in draft.Batches.Select(batch => batch.Developer).OfType<BatchDeveloper>().Take(1))
            Add(developer.Item, new(draft.Batches.Sum(batch => batch.Developer?.Measured.Microlitres ?? 0), Unit.Millilitre));
        foreach (var part in draft.Batches.SelectMany(batch => batch.Developer?.OtherParts ?? []).Where(part => part.Item is not null)
            .GroupBy(part => part.Item!))
            Add(draft.Item(part.Key), new(part.Sum(one => one.Measured.Microlitres), Unit.Millilitre));
    }

    private void Add(Item item, Quantity portion)
    {
        if (!portion.IsZero)
            _portions.Add((item, portion));
    }
}
