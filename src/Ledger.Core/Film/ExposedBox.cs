using Ledger.Core.Stock;

namespace Ledger.Core.Film;

/// <summary>
/// The box for the exposed sheets of one film and one development group. Empty, it has no label and is not shown.
/// </summary>
/// <param name="Place">Its number as a place.</param>
/// <param name="Item">The film's code.</param>
/// <param name="Group">The group.</param>
public sealed record ExposedBox(PlaceId Place, string Item, string Group)
{
    /// <summary>What its label says: fen80 N+1.</summary>
    public string Code => CodeOf(Item, Group);

    /// <summary>What the label of a film and group says.</summary>
    public static string CodeOf(string item, string group) => $"{item} {group}";
}
