using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Planning;

/// <summary>The words that a careful colleague would say about a plan.</summary>
internal sealed class PlanAdvice(SessionPlanDraft draft)
{
    /// <summary>The trade's name for normal development.</summary>
    private const string Usual = "N";

    public IReadOnlyList<string> All(IEnumerable<BathOutlook> baths) =>
    [
        .. baths.Where(bath => bath.Word.Length > 0).Select(bath => $"{bath.Word}: {bath.Proposal}"),
        .. draft.UnknownParts,
        .. draft.Batches.SelectMany(Thin).Distinct(),
        .. Untimed(),
        .. Short(),
        .. Shallow().Distinct(),
        .. Together("subject", sheet => sheet.Subject),
        .. Together("holder", sheet => sheet.Holder),
    ];

    private IEnumerable<string> Thin(PlannedBatch batch)
    {
        if (batch.Developer is { } developer && developer.Cure(draft.Style) is { } cure)
            yield return $"{developer.Dilution?.Text ?? "the amount"} gives {developer.Need.ByDilution.ToText(draft.Style)} of {developer.Item.Code}; "
                + $"{batch.Area.ToText(draft.Style)} need {developer.Need.ByArea.ToText(draft.Style)}: {cure}";
    }

    /// <summary>A group that is not developed as usual should have a time of its own; taking that of the others is said, not done in silence.</summary>
    private IEnumerable<string> Untimed() => draft.Batches
        .Where(batch => batch.Group.Trim() is { Length: > 0 } group && !group.Equals(Usual, StringComparison.OrdinalIgnoreCase)
            && batch.Minutes is not null && !draft.Request.Times.HasOwn(group))
        .Select(batch => $"{batch.Group} has no time of its own: {GroupTimes.Clock(batch.Minutes!.Value)}, as for the others; "
            + $"say it with the times, such as {batch.Group}=9")
        .Distinct();

    private IEnumerable<string> Short() => draft.Batches
        .Where(batch => batch.IsShuffled && batch.Minutes <= draft.Practice.ShortMinutes)
        .Select(batch => batch.Minutes!.Value)
        .Distinct()
        .Select(minutes => $"{GroupTimes.Clock(minutes)} is short for sheets in a tray: {draft.Practice.ShortMinutes} minutes or less "
            + "develop unevenly; a weaker dilution or a lower temperature makes it longer");

    private IEnumerable<string> Shallow()
    {
        foreach (var batch in draft.Batches.Where(batch => batch.IsShuffled))
        {
            var least = draft.Practice.LeastIn(batch.Film.Format!);
            if (batch.Developer is { } developer && developer.Need.WorkingVolume < least)
                yield return $"{developer.Need.WorkingVolume.ToText(draft.Style)} of developer covers {batch.Film.Format} "
                    + $"less than {Scaled.ToText(draft.Practice.DepthTenths / 10m, 1)} mm deep; that takes {least.ToText(draft.Style)}";
        }
    }

    /// <summary>All sheets of one subject in one batch: an accident there takes them all.</summary>
    private IEnumerable<string> Together(string what, Func<PlannedSheet, string> nameOf) => draft.Batches
        .SelectMany(batch => batch.Sheets.Select(sheet => (Batch: batch.Number, Name: nameOf(sheet))))
        .Where(sheet => sheet.Name.Length > 0)
        .GroupBy(sheet => sheet.Name, StringComparer.OrdinalIgnoreCase)
        .Where(group => group.Count() > 1 && group.Select(sheet => sheet.Batch).Distinct().Count() == 1)
        .Select(group => $"{All(group.Count())} of the {what} {group.Key} are in batch {group.First().Batch}; "
            + "an accident there would take them all: develop some of them in another batch");

    private static string All(int sheets) => sheets == 2 ? "both sheets" : $"all {sheets} sheets";
}
