using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Planning;

/// <summary>Says what is short and what would cure it.</summary>
internal sealed class Shortages(SessionPlanDraft draft)
{
    public IReadOnlyList<Shortage> Of(IEnumerable<PlannedUse> uses) =>
        [.. uses.Where(use => !use.IsEnough).Select(use => new Shortage(use.Item, use.Needed, use.Usable, Cure(use)))];

    private string Cure(PlannedUse use)
    {
        var cures = new List<string>();
        if (Fewer(use) is { } fewer)
            cures.Add(fewer);
        cures.Add(Order(use));
        if (use.Suspect.Count > 0)
            cures.Add(
                $"{string.Join(", ", use.Suspect.Select(container => container.Code))} "
                    + $"{(use.Suspect.Count == 1 ? "is" : "are")} under suspicion "
                + "and not used until cleared");
        if (!use.Expired.IsZero)
            cures.Add(
                $"{use.Expired.ToText(draft.Style)} more {(use.Expired.Base == 1 ? "is" : "are")} expired, for tests "
                    + "only");
        return string.Join("; ", cures);
    }

    private string? Fewer(PlannedUse use)
    {
        if (use.Item.Kind == ItemKind.Film)
            return use.Usable.IsZero ? null : $"develop {use.Usable.ToText(draft.Style)} of {use.Item.Code}";
        if (use.Item.Role != ItemRole.Developer)
            return null;
        var (left, batches) = (use.Usable.Base, 0);
        foreach (var batch in draft.Batches)
        {
            if ((left -= Of(use.Item, batch)) < 0)
                break;
            batches++;
        }

        var sheets = draft.Batches.Take(batches).Sum(batch => batch.Sheets.Count);
        return batches == 0
            ? null
            : $"it is enough for {(batches == 1 ? "the first batch" : $"the first {batches} batches")} ("
                + $"{Counted.Of(sheets, "sheet")})";
    }

    /// <summary>What a batch takes of a developer, or of a part of it.</summary>
    private static long Of(Item item, PlannedBatch batch) => batch.Developer is not { } developer ? 0
        : item.Code == developer.Item.Code ? developer.Measured.Microlitres
        : developer.OtherParts.Where(part => item.Code.Equals(part.Item, StringComparison.OrdinalIgnoreCase))
            .Sum(part => part.Measured.Microlitres);

    private string Order(PlannedUse use)
    {
        var packs = Share.UpTo(use.Missing.Base, 1, use.Item.Pack.Base);
        var lead = use.Item.LeadTimeDays is { } days ? $", which takes {Counted.Of(days, "day")}" : "";
        return $"get {Counted.Of(packs, "pack")} of {use.Item.Pack.ToText(draft.Style)}{lead}";
    }
}
