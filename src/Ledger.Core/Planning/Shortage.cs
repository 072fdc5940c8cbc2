using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Planning;

/// <summary>Something that a session needs more of than there is.</summary>
/// <param name="Item">The item.</param>
/// <param name="Needed">What is needed.</param>
/// <param name="Usable">What there is that is still good.</param>
/// <param name="Cure">What would help.</param>
public sealed record Shortage(Item Item, Quantity Needed, Quantity Usable, string Cure)
{
    /// <summary>By how much it is short.</summary>
    public Quantity Missing => Needed - Usable;
}
