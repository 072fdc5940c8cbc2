using Ledger.Core.Costing;
using Ledger.Core.Film;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>What the ledger remembers of sheets and of where things are.</summary>
public interface IFilmRecords
{
    /// <summary>
    /// A sheet's story: by its number (#12), its negative's number, or the holder side that it is or was last in.
    /// </summary>
    SheetStory? Story(string sheet, LocalDate asOf);

    /// <summary>
    /// What became of a negative's number that no negative has: it was given once, and is never given again. Null when
    /// it was never given.
    /// </summary>
    /// <param name="negative">The number, as the ledger's pattern writes it.</param>
    FormerNegative? Former(string negative) => null;

    /// <summary>
    /// The sheets that a session developed, in the order in which they went through the trays; rolls are not among
    /// them.
    /// </summary>
    IReadOnlyList<SheetFate> SheetsOf(string session, LocalDate asOf) => [];

    /// <summary>Where all of an item is and went: the places add up to what was received.</summary>
    IReadOnlyList<PlaceHeld> PlacesOf(string item, LocalDate asOf);

    /// <summary>
    /// What left an item's stock for good, the last day first: used, developed, discarded or lost. What only went from
    /// one box, bottle, holder or another to the next is not among it, nor is what was taken back. Of one container it
    /// is all that left it, wherever it went.
    /// </summary>
    IReadOnlyList<StockLeft> LeftOf(string item, string? container, LocalDate since, LocalDate asOf) => [];

    /// <summary>
    /// The containers that hold something and were not touched since a day, the longest forgotten first.
    /// </summary>
    IReadOnlyList<Untouched> UntouchedSince(LocalDate day, LocalDate asOf);
}

/// <summary>So much of an item at one place.</summary>
/// <param name="Place">The place's name.</param>
/// <param name="Kind">What sort of place it is: container, holder side, exposed box, jug, jug handed over, or one of
/// the single places.</param>
/// <param name="Held">How much.</param>
/// <param name="Value">What it cost.</param>
public sealed record PlaceHeld(string Place, string Kind, Quantity Held, Money Value);

/// <summary>So much of an item that left the stock for good.</summary>
/// <param name="Date">The day.</param>
/// <param name="Quantity">How much, in base units.</param>
public sealed record StockLeft(LocalDate Date, long Quantity);

/// <summary>A container that nobody has touched for long.</summary>
/// <param name="Container">The container.</param>
/// <param name="LastTouched">The day on which something last came, went, or was opened.</param>
public sealed record Untouched(Container Container, LocalDate LastTouched);

/// <summary>A sheet as a session developed it.</summary>
/// <param name="Sheet">Its number.</param>
/// <param name="Position">Its place in the order of the session, counting from 1; rolls are counted too.</param>
/// <param name="Item">The film's code.</param>
/// <param name="Batch">The batch it was in, counting from 1.</param>
/// <param name="Fate">What became of it; a negative that was named a keeper later is one.</param>
/// <param name="Cause">What spoiled it, if that is known.</param>
/// <param name="Negative">The number it is filed under; null when it is no negative.</param>
/// <param name="Side">The side it was loaded into, if any.</param>
/// <param name="Subject">What its exposure note says; may be empty.</param>
public sealed record SheetFate(
    SheetId Sheet, long Position, string Item, int Batch, Fate Fate, RejectCause? Cause, string? Negative,
    string? Side, string Subject);

/// <summary>All that is known of one sheet.</summary>
public sealed record SheetStory
{
    /// <summary>Its number.</summary>
    public required SheetId Id { get; init; }

    /// <summary>The film's code.</summary>
    public required string Item { get; init; }

    /// <summary>The maker's batch or emulsion number.</summary>
    public required string Batch { get; init; }

    /// <summary>The box it came out of; empty when that is not known.</summary>
    public required string Box { get; init; }

    /// <summary>Where it is now.</summary>
    public required string Place { get; init; }

    /// <summary>What its film cost.</summary>
    public required Money Film { get; init; }

    /// <summary>Whether its film had a price; otherwise what it cost is unknown.</summary>
    public bool IsPriced { get; init; } = true;

    /// <summary>The day it was loaded; null when it went straight from the box into the tray.</summary>
    public LocalDate? LoadedOn { get; init; }

    /// <summary>The side it was loaded into.</summary>
    public string? Side { get; init; }

    /// <summary>The exposure note that holds.</summary>
    public Exposure? Exposure { get; init; }

    /// <summary>Its development; null before it.</summary>
    public SheetDevelopment? Development { get; init; }

    /// <summary>Where it is filed, in the user's words; null where nobody said.</summary>
    public string? FiledIn { get; init; }

    /// <summary>What was done to it after its session or found out about it, in order.</summary>
    public IReadOnlyList<SheetFinding> Findings { get; init; } = [];

    /// <summary>Every step it took, in order.</summary>
    public required IReadOnlyList<SheetStep> Steps { get; init; }
}

/// <summary>One thing that happened to a sheet.</summary>
/// <param name="Entry">The entry's number.</param>
/// <param name="Date">Its day.</param>
/// <param name="Summary">What it says.</param>
public sealed record SheetStep(long Entry, LocalDate Date, string Summary);

/// <summary>How a sheet was developed, and what became of it.</summary>
/// <param name="Session">The session.</param>
/// <param name="Date">Its day.</param>
/// <param name="Name">The sheet's name in the session: S02-03.</param>
/// <param name="Group">The development group.</param>
/// <param name="Fate">What became of it.</param>
/// <param name="Cause">What spoiled it, if that is known.</param>
/// <param name="Negative">The number it is filed under; null when it is no negative.</param>
/// <param name="TrayMates">The sheets that shared its batch.</param>
/// <param name="Cost">What it cost with its share of the session.</param>
public sealed record SheetDevelopment(
    string Session, LocalDate Date, string Name, string Group, Fate Fate, RejectCause? Cause, string? Negative,
    IReadOnlyList<string> TrayMates, SheetCost? Cost);
