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
        .. Crowded(),
        .. Together(),
    ];

    private IEnumerable<string> Thin(PlannedBatch batch)
    {
        if (batch.Developer is { } developer && developer.Cure(draft.Style) is { } cure)
            yield return $"{developer.Dilution?.Text ?? "the amount"} gives "
                + $"{developer.Need.ByDilution.ToText(draft.Style)} of {developer.Item.Code}; "
                + $"{batch.Area.ToText(draft.Style)} need {developer.Need.ByArea.ToText(draft.Style)}: {cure}";
    }

    /// <summary>
    /// A group that is not developed as usual should have a time of its own; taking that of the others is said, not
    /// done in silence.
    /// </summary>
    private IEnumerable<string> Untimed() => draft.Batches
        .Where(batch => batch.Group.Trim() is { Length: > 0 } group
            && !group.Equals(Usual, StringComparison.OrdinalIgnoreCase)
            && batch.Minutes is not null && !draft.Request.Times.HasOwn(group))
        .Select(batch =>
            $"{batch.Group} has no time of its own: {GroupTimes.Clock(batch.Minutes!.Value)}, as for the others; "
                + $"say it with the times, such as {batch.Group}=9")
        .Distinct();

    private IEnumerable<string> Short() => draft.Batches
        .Where(batch => batch.IsShuffled && batch.Minutes <= draft.Practice.ShortMinutes)
        .Select(batch => batch.Minutes!.Value)
        .Distinct()
        .Select(minutes =>
            $"{GroupTimes.Clock(minutes)} is short for sheets in a tray: {draft.Practice.ShortMinutes} minutes or less "
                + "develop unevenly; a weaker dilution or a lower temperature makes it longer");

    private IEnumerable<string> Shallow()
    {
        foreach (var batch in draft.Batches.Where(batch => batch.IsShuffled))
        {
            var least = draft.Practice.LeastIn(batch.Film.Format!);
            if (batch.Developer is { } developer && developer.Need.WorkingVolume < least)
                yield return $"{developer.Need.WorkingVolume.ToText(draft.Style)} of developer covers "
                    + $"{batch.Film.Format} less than {Scaled.ToText(draft.Practice.DepthTenths / 10m, 1)} mm deep; "
                    + $"that takes {least.ToText(draft.Style)}";
        }
    }

    /// <summary>More sheets than the user's hands move: only where the user put them together.</summary>
    private IEnumerable<string> Crowded() => draft.Batches
        .Where(batch => batch.IsShuffled && batch.Sheets.Count > draft.Practice.Limit.Of(batch.Film.Format!))
        .Select(
            batch =>
                $"batch {batch.Number} has {Counted.Of(batch.Sheets.Count, "sheet")}; your limit is "
                    + $"{draft.Practice.Limit.Of(batch.Film.Format!)}");

    /// <summary>
    /// All sheets of one subject in one batch: an accident there takes them all. Said only where it can be changed.
    /// </summary>
    private IEnumerable<string> Together() => Batching.Together(
        [
            .. draft.Batches.Select(batch => (
                $"{batch.Film.Code} {batch.Group}",
                (IReadOnlyList<(string, string)>)[.. batch.Sheets.Select(sheet => (sheet.Subject, sheet.Holder))])),
        ])
        .Select(together =>
            $"{together.Sentence}: put some of them into another batch (\"batch {together.Batch + 1}\" in their line)");
}
