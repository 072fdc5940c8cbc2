using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>Sheets are loaded: one into each side, never a second one on top.</summary>
internal static class LoadRules
{
    public static void Post(Load load, Draft draft)
    {
        var container = draft.Holdings.Item(load.From) is null ? draft.Container(load.From) : null;
        var film = draft.Item(container?.Lot.Item ?? load.From);
        Require.That(film is { Kind: ItemKind.Film, Unit: Unit.Sheet },
            $"{film.Code} is not sheet film and cannot be loaded; name sheet film");
        var sides = draft.Film.Sides(load.Sides);
        foreach (var side in sides)
            RequireFree(side, draft);
        foreach (var holder in sides.Select(side => draft.Holdings.Film.Holder(side.Holder)!)
            .DistinctBy(holder => holder.Id))
            Question(holder, sides, film, draft);

        var draws = draft.Take(film, film.Of(1), container?.Code, sides[0].Place, booksDifference: false).ToList();
        foreach (var side in sides.Skip(1))
            draws.AddRange(draft.Take(film, film.Of(1), container?.Code, side.Place, booksDifference: false));
        for (var i = 0; i < sides.Count; i++)
        {
            var (from, side) = (draws[i].From, sides[i]);
            draft.Add(new SheetLoaded(new(
                draft.Film.NewSheet(side.Code), from.Lot, draws[i].Cost, from.Place, from.Code,
                side.Place, side.Code, load.Date, side.Place, load.Date, null)));
            draft.Film.Show(side, "empty", film.Code);
        }

        draft.Summary = $"loaded {film.Code} into {string.Join(", ", sides.Select(side => side.Code))}";
    }

    private static void RequireFree(HolderSide side, Draft draft)
    {
        if (draft.Holdings.Film.In(side) is { } there)
            throw new RefusedException(
                RefusalKind.Occupied,
                $"{side.Code} holds a sheet of {there.Item} since {Dates.Text(there.LoadedOn)}"
                + $"{(there.Exposure is null ? "" : ", exposed")}; unload it first");
        Require.That(
            side.LastUsedOn is null || draft.Date >= side.LastUsedOn,
            $"{side.Code} was used on {Dates.Text(side.LastUsedOn ?? draft.Date)}, after {Dates.Text(draft.Date)}; "
                + "date the loading then or later");
    }

    private static void Question(Holder holder, IReadOnlyList<HolderSide> sides, Item film, Draft draft)
    {
        if (film.Format != holder.Format)
            draft.Doubt($"{film.Code} is {film.Format}, and {holder.Code} takes {holder.Format}");
        foreach (var side in sides.Where(side => side.Holder == holder.Code && side.OutOfService is not null))
            draft.Doubt($"{side.Code} is out of service: {side.OutOfService}");
        if (holder.CleanBeforeLoad is { } dirty)
            draft.Remark($"clean before you load: {dirty}");
    }
}
