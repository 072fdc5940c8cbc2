using Ledger.Core.Film;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>Brings the register of holders and sheets up to date with what an entry established.</summary>
internal static class FilmChange
{
    public static void Apply(FilmFact fact, LocalDate date, Holdings holdings)
    {
        var film = holdings.Film;
        switch (fact)
        {
            case HolderDefined defined:
                film.Put(defined.Holder);
                holdings.LastPlace = Math.Max(holdings.LastPlace, defined.Holder.Sides.Max(side => side.Place.Value));
                break;
            case HolderCleaned cleaned when film.Holder(cleaned.Holder.Code) is { } holder:
                film.Put(holder with { CleanedOn = Later(holder.CleanedOn, date), IsBagged = cleaned.IsBagged });
                break;
            case SideServed served when film.Side(served.Side.Place) is { } side:
                film.Put(side with { OutOfService = served.IsInService ? null : served.Reason });
                break;
            case ExposedBoxStarted started:
                film.Put(started.Box);
                holdings.LastPlace = Math.Max(holdings.LastPlace, started.Box.Place.Value);
                break;
            case SheetLoaded loaded:
                film.Put(loaded.Sheet);
                if (film.Side(loaded.Sheet.Side) is { } filled)
                    film.Put(filled with { LastUsedOn = date });
                break;
            case SheetMoved moved:
                film.Move(moved.Sheet.Id, moved.To, date);
                break;
            case SheetExposed exposed when film.Sheet(exposed.Sheet.Id) is { } sheet:
                film.Put(sheet with { Exposure = exposed.Exposure });
                break;
            case SheetDeveloped developed:
                Apply(developed, film);
                break;
            case FateChanged changed:
                Apply(changed, film);
                break;
            case ContainerStored stored when holdings.Container(stored.Container) is { } container:
                holdings.Put(container with { Moves = [.. container.Moves, new(date, stored.Storage)],
                    OpensFrom = stored.OpensFrom });
                break;
            case ExposureIndexSet rated:
                foreach (var container in holdings.Containers.Where(container => container.Lot.Id == rated.Lot)
                    .ToList())
                    holdings.Put(container with { Lot = container.Lot with { ExposureIndex = rated.ExposureIndex } });
                foreach (var taken in film.Sheets.Where(sheet => sheet.Lot.Id == rated.Lot).ToList())
                    film.Put(taken with { Lot = taken.Lot with { ExposureIndex = rated.ExposureIndex } });
                break;
        }
    }

    private static void Apply(SheetDeveloped developed, FilmRegister film)
    {
        film.LastSheet = Math.Max(film.LastSheet, developed.Sheet.Value);
        if (developed.Negative is { } negative)
            film.Give(negative.Year, negative.Running);
        Count(developed.Cause, developed.Side, +1, film);
    }

    /// <summary>A sheet that is a reject later counts against its side from then on, and one that is good again does
    /// not.</summary>
    private static void Apply(FateChanged changed, FilmRegister film)
    {
        Count(changed.Sheet.Cause, changed.Sheet.Side, -1, film);
        Count(changed.Cause, changed.Sheet.Side, +1, film);
    }

    private static void Count(RejectCause? spoiledBy, PlaceId? place, int sheets, FilmRegister film)
    {
        if (spoiledBy is not { } cause || place is not { } known || film.Side(known) is not { } side)
            return;
        var before = side.Faults.FirstOrDefault(fault => fault.Cause == cause);
        var after = sheets + (before?.Sheets ?? 0);
        film.Put(side with { Faults = [.. side.Faults.Where(fault => fault != before), .. after > 0
            ? [new SideFault(cause, after)] : Array.Empty<SideFault>()] });
    }

    private static LocalDate Later(LocalDate? known, LocalDate date) => known is { } day && day > date ? day : date;
}
