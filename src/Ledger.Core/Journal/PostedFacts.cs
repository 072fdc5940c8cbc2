using Ledger.Core.Baths;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>What an entry establishes beside its movements.</summary>
public abstract record PostedFact;

/// <summary>An item has these settings now.</summary>
/// <param name="Item">The item; its number is new when it was not known before.</param>
public sealed record ItemDefined(Item Item) : PostedFact;

/// <summary>A format counts with this area now.</summary>
/// <param name="Format">The format.</param>
public sealed record FormatDefined(Format Format) : PostedFact;

/// <summary>A process has these steps now.</summary>
/// <param name="Process">The process; its number is new when it was not known before.</param>
public sealed record ProcessDefined(Process Process) : PostedFact;

/// <summary>The ledger's settings are these now.</summary>
/// <param name="Name">The setting that changed.</param>
/// <param name="Value">Its value.</param>
/// <param name="Settings">All settings.</param>
/// <param name="IsImplied">Whether it follows from an entry that is no setting, and goes with that entry.</param>
public sealed record SettingChanged(string Name, string Value, Settings Settings, bool IsImplied = false) : PostedFact;

/// <summary>A delivery arrived.</summary>
/// <param name="Lot">The new lot.</param>
/// <param name="Paid">What was paid and how.</param>
public sealed record LotReceived(Lot Lot, Paid Paid) : PostedFact;

/// <summary>What was paid for a lot.</summary>
/// <param name="Landed">The price and the packs, with the lot's share of what was paid for the whole delivery.</param>
/// <param name="Currency">The currency the amounts are in (ISO 4217); null for the ledger's own.</param>
/// <param name="Rate">What one unit of that currency is worth in the ledger's own; null when they are the same.</param>
public sealed record Paid(Costing.LandedCost Landed, string? Currency, decimal? Rate);

/// <summary>A container came with a lot.</summary>
/// <param name="Place">Its number.</param>
/// <param name="Code">What is written on it.</param>
/// <param name="Number">Its running number among the item's containers.</param>
/// <param name="Lot">Its lot.</param>
/// <param name="Size">What it holds when full.</param>
public sealed record ContainerArrived(PlaceId Place, string Code, long Number, Lot Lot, Quantity Size) : PostedFact;

/// <summary>A container is open from the entry's date on.</summary>
/// <param name="Place">The container.</param>
public sealed record ContainerOpened(PlaceId Place) : PostedFact;

/// <summary>A bath was mixed.</summary>
/// <param name="Bath">The bath, without contents or work.</param>
public sealed record BathMixed(Bath Bath) : PostedFact;

/// <summary>An area passed through a bath.</summary>
/// <param name="Place">The bath.</param>
/// <param name="IsFirst">Whether it counts: false for the second bath of a pair.</param>
/// <param name="Area">The area.</param>
/// <param name="Weighted">The same, weighted by film.</param>
public sealed record BathWorked(PlaceId Place, bool IsFirst, Area Area, Area Weighted) : PostedFact;

/// <summary>A bath was discarded.</summary>
/// <param name="Place">The bath.</param>
/// <param name="Code">Its name.</param>
/// <param name="Reason">Why.</param>
public sealed record BathEnded(PlaceId Place, string Code, string Reason) : PostedFact;

/// <summary>A session or trip is planned from now on, in place of an open plan of the same name.</summary>
/// <param name="Plan">The plan.</param>
public sealed record PlanMade(OpenPlan Plan) : PostedFact;

/// <summary>A plan is no longer open.</summary>
/// <param name="Plan">Its name.</param>
/// <param name="Reason">The session that realised it, or why it was given up.</param>
public sealed record PlanEnded(string Plan, string Reason) : PostedFact;

/// <summary>A session was held.</summary>
/// <param name="Session">Its name.</param>
/// <param name="Process">The process.</param>
/// <param name="Bath">The bath the film went through, if any.</param>
/// <param name="Developer">The developer concentrate used.</param>
public sealed record SessionHeld(string Session, Process Process, PlaceId? Bath, Volume Developer) : PostedFact;

/// <summary>Sheets of one lot and fate were developed.</summary>
/// <param name="Line">The position in the session, counting from 1.</param>
/// <param name="Lot">The film's lot.</param>
/// <param name="Sheets">How many.</param>
/// <param name="Area">Their area.</param>
/// <param name="Cost">What the film cost.</param>
/// <param name="Group">The development group.</param>
/// <param name="Fate">What became of them.</param>
/// <param name="Note">The user's note.</param>
public sealed record SheetsDeveloped(
    int Line, LotId Lot, long Sheets, Area Area, Money Cost, string Group, Fate Fate, string Note) : PostedFact;
