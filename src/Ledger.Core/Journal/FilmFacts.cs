using Ledger.Core.Film;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>What an entry establishes about holders and sheets.</summary>
public abstract record FilmFact : PostedFact;

/// <summary>A holder is this now.</summary>
/// <param name="Holder">The holder; its number and its sides are new when it was not known before.</param>
/// <param name="IsNew">Whether it was not known before.</param>
public sealed record HolderDefined(Holder Holder, bool IsNew) : FilmFact;

/// <summary>A holder was cleaned.</summary>
/// <param name="Holder">The holder.</param>
/// <param name="IsBagged">Whether it was bagged.</param>
public sealed record HolderCleaned(Holder Holder, bool IsBagged) : FilmFact;

/// <summary>A side is in service or out of it.</summary>
/// <param name="Side">The side.</param>
/// <param name="IsInService">Whether it is in service.</param>
/// <param name="Reason">Why.</param>
public sealed record SideServed(HolderSide Side, bool IsInService, string Reason) : FilmFact;

/// <summary>A box for exposed sheets was put up.</summary>
/// <param name="Box">The box.</param>
public sealed record ExposedBoxStarted(ExposedBox Box) : FilmFact;

/// <summary>A sheet left its box for a holder.</summary>
/// <param name="Sheet">The sheet.</param>
public sealed record SheetLoaded(Sheet Sheet) : FilmFact;

/// <summary>A sheet went from one place to another.</summary>
/// <param name="Sheet">The sheet as it was.</param>
/// <param name="To">Where it is now.</param>
public sealed record SheetMoved(Sheet Sheet, PlaceId To) : FilmFact;

/// <summary>A sheet was exposed, or its exposure note was corrected.</summary>
/// <param name="Sheet">The sheet as it was.</param>
/// <param name="Exposure">The note that holds now.</param>
public sealed record SheetExposed(Sheet Sheet, Exposure Exposure) : FilmFact;

/// <summary>A sheet was developed.</summary>
/// <param name="Sheet">Its number.</param>
/// <param name="Lot">Its lot.</param>
/// <param name="Cost">What its film cost.</param>
/// <param name="Box">The box it came straight out of; null when it was known before.</param>
/// <param name="Position">Its position among the session's sheets, counting from 1.</param>
/// <param name="Batch">The batch it was in, counting from 1.</param>
/// <param name="Fate">What became of it.</param>
/// <param name="Cause">What spoiled it, if that is known.</param>
/// <param name="Side">The side it was loaded into, if any.</param>
/// <param name="Negative">The number it is filed under; null when it is no negative.</param>
public sealed record SheetDeveloped(
    SheetId Sheet, LotId Lot, Money Cost, PlaceId? Box, int Position, int Batch, Fate Fate,
    RejectCause? Cause, PlaceId? Side, NegativeNumber? Negative) : FilmFact;

/// <summary>A negative's number, which is never given again.</summary>
/// <param name="Name">As it is written on the negative.</param>
/// <param name="Year">The year of the session.</param>
/// <param name="Running">The running number in it.</param>
public sealed record NegativeNumber(string Name, int Year, long Running);

/// <summary>Sheets that were developed before went through the fixer again, to keep a lone sheet company.</summary>
/// <param name="Line">The position in the session, counting from 1.</param>
/// <param name="Item">The film.</param>
/// <param name="Sheets">How many.</param>
/// <param name="Area">Their area.</param>
/// <param name="Group">The development group.</param>
/// <param name="Note">The user's note.</param>
public sealed record DummyUsed(int Line, string Item, int Sheets, Area Area, string Group, string Note) : FilmFact;

/// <summary>A developed sheet has another fate from the entry's day on.</summary>
/// <param name="Sheet">The sheet as it was.</param>
/// <param name="Fate">What it is now.</param>
/// <param name="Cause">What spoiled it, if that is known.</param>
public sealed record FateChanged(DevelopedSheet Sheet, Fate Fate, RejectCause? Cause) : FilmFact
{
    /// <summary>Where it was.</summary>
    public PlaceId From => PlaceOf(Sheet.Fate);

    /// <summary>Where it is now: a reject is no longer among the negatives.</summary>
    public PlaceId To => PlaceOf(Fate);

    private static PlaceId PlaceOf(Fate fate) => fate.IsNegative() ? Places.FiledNegatives : Places.Rejects;
}

/// <summary>Something was done to a sheet or found out about it.</summary>
/// <param name="Sheet">The sheet's number.</param>
/// <param name="What">What.</param>
/// <param name="Result">What it showed; may be empty.</param>
/// <param name="HasPassed">Whether a test was passed; null where nothing was tested.</param>
public sealed record SheetNoted(SheetId Sheet, SheetWork What, string Result, bool? HasPassed) : FilmFact;

/// <summary>A sheet is kept somewhere.</summary>
/// <param name="Sheet">The sheet's number.</param>
/// <param name="Place">Where, in the user's words.</param>
public sealed record SheetFiled(SheetId Sheet, string Place) : FilmFact;

/// <summary>A container is kept somewhere else.</summary>
/// <param name="Container">The container.</param>
/// <param name="Storage">Where.</param>
/// <param name="OpensFrom">The first day on which it may be opened after the cold.</param>
public sealed record ContainerStored(PlaceId Container, string Storage, LocalDate? OpensFrom) : FilmFact;

/// <summary>A lot has an exposure index of the user's own.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="ExposureIndex">The exposure index.</param>
public sealed record ExposureIndexSet(LotId Lot, int ExposureIndex) : FilmFact;
