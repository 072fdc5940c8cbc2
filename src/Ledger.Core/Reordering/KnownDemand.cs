using Ledger.Core.Measures;
using NodaTime;

namespace Ledger.Core.Reordering;

/// <summary>Use that is known beforehand: a planned session, a trip.</summary>
/// <param name="Item">The item's code.</param>
/// <param name="Date">The day it is needed.</param>
/// <param name="Quantity">How much.</param>
public sealed record KnownDemand(string Item, LocalDate Date, Quantity Quantity);
