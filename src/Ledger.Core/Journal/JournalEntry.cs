using Ledger.Core.Film;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>An entry as the journal shows it.</summary>
/// <param name="Number">Its number, in the order of recording.</param>
/// <param name="Key">The caller's name for it.</param>
/// <param name="Kind">The kind's name.</param>
/// <param name="Date">The day it happened.</param>
/// <param name="RecordedAt">When it was recorded.</param>
/// <param name="Summary">What it says in a sentence.</param>
/// <param name="Note">The user's note.</param>
/// <param name="Undoes">The number of the entry it takes back, if it is an undo.</param>
/// <param name="UndoneBy">The number of the undo that took it back, if there is one.</param>
public sealed record JournalEntry(
    long Number, string Key, string Kind, LocalDate Date, Instant RecordedAt, string Summary, string Note,
    long? Undoes, long? UndoneBy)
{
    /// <summary>The number of the entry that it amends, if it is an amendment.</summary>
    public long? Amends { get; init; }

    /// <summary>The number of the last amendment that holds, if it was amended.</summary>
    public long? AmendedBy { get; init; }

    /// <summary>
    /// Whether its words are kept, so that it can be amended, and taken back in any order. An entry of version 0.2.0 or
    /// earlier stays as it was posted.
    /// </summary>
    public bool IsSaid { get; init; }
}

/// <summary>What the rules need to know of the past.</summary>
public interface IPast
{
    /// <summary>The entry of that number, or null.</summary>
    JournalEntry? Find(long number);

    /// <summary>The entry of that key, or null.</summary>
    JournalEntry? Find(string key);

    /// <summary>What that entry moved.</summary>
    IReadOnlyList<Movement> MovementsOf(long number);

    /// <summary>Whether a session of that name stands in the journal and was not taken back.</summary>
    bool HasSession(string session);

    /// <summary>Whether a bath of that name was ever mixed and its mixing not taken back.</summary>
    bool HasBath(string bath);

    /// <summary>The first entry that used a bath or jug that this entry began, or null when there is none.</summary>
    long? FirstUseOfBathMixedBy(long number);

    /// <summary>
    /// The first later entry about a sheet that this entry moved, exposed or developed, or null when there is none.
    /// </summary>
    long? NextAboutSheetsOf(long number) => null;

    /// <summary>
    /// The developed sheet that is filed under that negative's number or has that number itself, or null.
    /// </summary>
    DevelopedSheet? Developed(string sheet) => null;

    /// <summary>
    /// What the last delivery of an item up to a day cost that cost something; null where there was none.
    /// </summary>
    Costing.LotPrice? LastPrice(string item, NodaTime.LocalDate by) => null;

    /// <summary>
    /// The weighted area that a bath had taken by the end of a day; null where that is not known, and what it has taken
    /// by now holds.
    /// </summary>
    Measures.Area? WorkedBy(Stock.PlaceId bath, NodaTime.LocalDate date) => null;

    /// <summary>
    /// The fresh clearing time of a film, in tenths of a second: as measured in that bath, else the last one in a bath
    /// of the same item; null when there is none.
    /// </summary>
    int? FreshClearing(string film, Stock.PlaceId bath) => null;

    /// <summary>Whether a print session of that name stands in the journal and was not taken back.</summary>
    bool HasPrintSession(string session) => false;

    /// <summary>Whether an order of that name was ever placed and its placing not taken back.</summary>
    bool HasOrder(string order);

    /// <summary>
    /// The first entry that delivered or changed the order that this entry placed, or null when there is none.
    /// </summary>
    long? FirstUseOfOrderPlacedBy(long number);
}

/// <summary>A sheet that was developed.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Negative">The number it is filed under; null when it is no negative.</param>
/// <param name="Date">The day of its session.</param>
/// <param name="Fate">What became of it.</param>
public sealed record DevelopedSheet(SheetId Id, string? Negative, LocalDate Date, Fate Fate)
{
    /// <summary>What spoiled it, if that is known.</summary>
    public RejectCause? Cause { get; init; }

    /// <summary>Its lot.</summary>
    public LotId Lot { get; init; }

    /// <summary>What its film cost.</summary>
    public Money Cost { get; init; }

    /// <summary>The side it was loaded into; null when it went straight into the tray.</summary>
    public PlaceId? Side { get; init; }

    /// <summary>What it is called: its negative's number, or its own.</summary>
    public string Name => Negative ?? Id.ToString();
}
