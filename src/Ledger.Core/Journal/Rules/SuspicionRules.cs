using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>Suspicion is raised of a bath, a box, a bottle or a number, and cleared again. Nothing moves and nothing
/// loses its value.</summary>
internal static class SuspicionRules
{
    private const int MostNamed = 12;

    public static void Post(SuspicionRaising raising, Draft draft)
    {
        var reason = Require.Reason(raising.Reason);
        var (what, facts) = Found(raising.What, raising.Item, isRaised: true, reason, draft);
        if (facts.All(fact => Of(fact, draft) is not null))
            throw new RefusedException(RefusalKind.AlreadyThere, $"{what} is {Of(facts[0], draft)!.Text} already");
        foreach (var fact in facts)
            draft.Add(fact);
        Show(facts, draft, "under suspicion");
        RemarkOnHolders(facts, draft);
        RemarkOnBaths(facts, draft);
        draft.Summary = $"{what} is under suspicion: {reason}";
    }

    public static void Post(SuspicionClearing clearing, Draft draft)
    {
        var reason = Require.Reason(clearing.Reason);
        var (what, facts) = Found(clearing.What, clearing.Item, isRaised: false, reason, draft);
        var suspected = facts.Where(fact => Of(fact, draft) is not null).ToList();
        if (suspected.Count == 0)
            throw new RefusedException(
                RefusalKind.NotAccepted,
                facts is [PlaceSuspected { Place: var place }]
                    && draft.Holdings.Container(place) is { Lot: { Suspicion: { } suspicion } lot }
                    ? $"{what} itself is not: all of its delivery is {suspicion.Text}; clear its number"
                        + $"{(lot.Batch.Length > 0 ? $", {lot.Batch}" : "")}"
                    : $"{what} is not under suspicion");
        foreach (var fact in suspected)
            draft.Add(fact);
        Show(suspected, draft, "cleared");
        draft.Summary = $"{what} is cleared: {reason}";
    }

    /// <summary>Refuses the use of a box or bottle that is under suspicion.</summary>
    public static void RequireClear(Container container, Draft draft)
    {
        if (container.Suspicion is { } suspicion && suspicion.Since <= draft.Date)
            throw RefusedException.Suspect(
                container.Code, suspicion,
                container.OwnSuspicion is null && container.Lot.Batch.Length > 0 ? container.Lot.Batch
                    : container.Code);
    }

    private static (string What, IReadOnlyList<PostedFact> Facts) Found(string text, string? item, bool isRaised,
        string reason, Draft draft)
    {
        var what = text.Trim();
        if (item is null && draft.Holdings.Bath(what) is { } bath)
            return ($"bath {bath.Code}", [new PlaceSuspected(bath.Place, isRaised, reason)]);
        if (item is null && draft.Holdings.Container(what) is { } container)
            return (draft.Container(container.Code).Code, [new PlaceSuspected(container.Place, isRaised, reason)]);
        var lots = draft.Holdings.Containers.Select(one => one.Lot)
            .Concat(draft.Holdings.Film.Sheets.Select(sheet => sheet.Lot))
            .Where(lot => lot.Batch.Equals(what, StringComparison.OrdinalIgnoreCase) && what.Length > 0
                && (item is null || lot.Item.Equals(item.Trim(), StringComparison.OrdinalIgnoreCase)))
            .DistinctBy(lot => lot.Id).OrderBy(lot => lot.Id.Value).ToList();
        if (lots.Count == 0)
            throw new RefusedException(
                RefusalKind.Unknown,
                $"nothing is left of \"{what}\"{(item is null ? "" : $" of {item.Trim()}")}: name a bath in use, a box "
                    + "or bottle that holds something, or the emulsion or batch number of a delivery of which "
                    + "something is left");
        var items = lots.Select(lot => lot.Item).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        Require.That(items.Count == 1,
            $"{what} is a number of {string.Join(" and of ", items)}; say which with --item");
        return (
            lots[0].NumberText(draft.Item(items[0]).Kind) + $" of {items[0]}",
            [.. lots.Select(lot => new LotSuspected(lot.Id, isRaised, reason))]);
    }

    private static Suspicion? Of(PostedFact fact, Draft draft) => fact switch
    {
        LotSuspected lot => draft.Holdings.SuspicionOf(lot.Lot),
        PlaceSuspected place => draft.Holdings.SuspicionOf(place.Place),
        _ => null,
    };

    private static void Show(IReadOnlyList<PostedFact> facts, Draft draft, string after)
    {
        foreach (var container in draft.Holdings.Containers.Where(container =>
            IsAbout(facts, container.Place, container.Lot.Id)))
            draft.Show(container.Code,
                $"{container.Held.ToText(draft.Style)}, {(container.Suspicion is null ? "in use" : "under suspicion")}",
                after);
        foreach (var bath in draft.Holdings.Baths.Where(bath => facts.OfType<PlaceSuspected>()
            .Any(fact => fact.Place == bath.Place)))
            draft.Show(bath.Code, bath.Suspicion is null ? "in use" : "under suspicion", after);
    }

    /// <summary>What already sits in holders, or waits for its development.</summary>
    private static void RemarkOnHolders(IReadOnlyList<PostedFact> facts, Draft draft)
    {
        var sheets = draft.Holdings.Film.Sheets.Where(sheet => IsAbout(facts, sheet.Box, sheet.Lot.Id)).ToList();
        if (sheets.Count == 0)
            return;
        var places = sheets.Select(draft.Film.Whereabouts).Distinct().ToList();
        draft.Remark(
            $"{Counted.Of(sheets.Count, "sheet")} of it sit in {string.Join(", ", places.Take(MostNamed))}"
            + (places.Count > MostNamed ? $" and {places.Count - MostNamed} more" : ""));
    }

    private static void RemarkOnBaths(IReadOnlyList<PostedFact> facts, Draft draft)
    {
        var lots = facts.OfType<LotSuspected>().Select(fact => fact.Lot)
            .Concat(facts.OfType<PlaceSuspected>().Select(fact =>
                draft.Holdings.Container(fact.Place)?.Lot.Id).OfType<LotId>()).ToHashSet();
        foreach (var bath in draft.Holdings.Baths.Where(bath =>
            bath.Contents.Any(content => lots.Contains(content.Lot))))
            draft.Remark(
                $"bath {bath.Code}, mixed on {Dates.Text(bath.MixedOn)}, holds some of that delivery; it is used on "
                    + "unless suspicion is raised of it too");
    }

    private static bool IsAbout(IReadOnlyList<PostedFact> facts, PlaceId place, LotId lot) =>
        facts.Any(fact => fact switch
    {
        LotSuspected suspected => suspected.Lot == lot,
        PlaceSuspected suspected => suspected.Place == place,
        _ => false,
    });
}
