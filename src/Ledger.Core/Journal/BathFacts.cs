using Ledger.Core.Baths;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>Something was learned about a bath.</summary>
/// <param name="Place">The bath.</param>
public abstract record BathFact(PlaceId Place) : PostedFact;

/// <summary>A clearing test was made in it.</summary>
/// <param name="Place">The bath.</param>
/// <param name="Film">The film's code.</param>
/// <param name="Tenths">The time in tenths of a second.</param>
/// <param name="IsFresh">Whether it is a baseline.</param>
/// <param name="FreshTenths">The baseline it is measured against, if there is one.</param>
public sealed record ClearingTested(PlaceId Place, string Film, int Tenths, bool IsFresh,
    int? FreshTenths) : BathFact(Place);

/// <summary>Something was seen at it.</summary>
/// <param name="Place">The bath.</param>
/// <param name="Sign">What.</param>
/// <param name="EndsUse">Whether it is not to be used any more.</param>
public sealed record BathObserved(PlaceId Place, string Sign, bool EndsUse) : BathFact(Place);

/// <summary>Its silver was measured.</summary>
/// <param name="Place">The bath.</param>
/// <param name="MilligramsPerLitre">The silver.</param>
public sealed record SilverMeasured(PlaceId Place, int MilligramsPerLitre) : BathFact(Place);

/// <summary>A residual test was made of what went through it.</summary>
/// <param name="Place">The bath.</param>
/// <param name="Test">The test.</param>
public sealed record ResidualTested(PlaceId Place, ResidualTest Test) : BathFact(Place);

/// <summary>A control strip was developed in it.</summary>
/// <param name="Place">The bath.</param>
/// <param name="Strip">The strip.</param>
public sealed record ControlStripDeveloped(PlaceId Place, ControlStrip Strip) : BathFact(Place);

/// <summary>It stands in another container.</summary>
/// <param name="Place">The bath.</param>
/// <param name="Container">What it stands in now.</param>
public sealed record BathStands(PlaceId Place, WorkingContainer Container) : BathFact(Place);

/// <summary>It was topped up.</summary>
/// <param name="Place">The bath.</param>
/// <param name="Added">The fresh solution.</param>
/// <param name="Bled">What was poured off for it.</param>
public sealed record BathToppedUp(PlaceId Place, Volume Added, Volume Bled) : BathFact(Place);

/// <summary>A stock solution was mixed.</summary>
/// <param name="Lot">The new lot.</param>
/// <param name="From">The code of what it was mixed from.</param>
public sealed record LotMixed(Lot Lot, string From) : PostedFact;

/// <summary>A waste jug was started.</summary>
/// <param name="Jug">The jug, empty.</param>
public sealed record JugStarted(WasteJug Jug) : PostedFact;

/// <summary>Used solution went into a jug.</summary>
/// <param name="Jug">The jug.</param>
/// <param name="Volume">How much.</param>
/// <param name="What">What it was.</param>
/// <param name="Material">What had passed through it; null when it was no bath.</param>
public sealed record JugFilled(PlaceId Jug, Volume Volume, string What, BathMaterial? Material) : PostedFact;

/// <summary>A jug was handed over.</summary>
/// <param name="Jug">The jug.</param>
/// <param name="Code">What is written on it.</param>
/// <param name="To">Where it went.</param>
public sealed record JugHandedOver(PlaceId Jug, string Code, string To) : PostedFact;
