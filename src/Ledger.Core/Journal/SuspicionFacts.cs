using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>All of a delivery's line is under suspicion, or is no longer.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="IsRaised">Whether it is.</param>
/// <param name="Reason">Why.</param>
public sealed record LotSuspected(LotId Lot, bool IsRaised, string Reason) : PostedFact;

/// <summary>A box, a bottle or a bath is under suspicion, or is no longer.</summary>
/// <param name="Place">Which.</param>
/// <param name="IsRaised">Whether it is.</param>
/// <param name="Reason">Why.</param>
public sealed record PlaceSuspected(PlaceId Place, bool IsRaised, string Reason) : PostedFact;
