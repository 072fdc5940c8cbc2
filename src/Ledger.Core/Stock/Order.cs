namespace Ledger.Core.Stock;

/// <summary>An order as it stands on a day: what was ordered, and what has come of it.</summary>
/// <param name="Code">Its name.</param>
/// <param name="PlacedOn">The day it was placed.</param>
/// <param name="Supplier">Where; may be empty.</param>
/// <param name="IsPrepaid">Whether it is paid already.</param>
/// <param name="Lines">What was ordered, each item once.</param>
public sealed record Order(string Code, LocalDate PlacedOn, string Supplier, bool IsPrepaid,
    IReadOnlyList<OrderLine> Lines)
{
    /// <summary>Whether something is still to come.</summary>
    public bool IsOpen => Lines.Any(line => line.IsOpen);

    /// <summary>The lines that are still to come.</summary>
    public IEnumerable<OrderLine> OpenLines => Lines.Where(line => line.IsOpen);

    /// <summary>The line of an item, or null.</summary>
    public OrderLine? LineOf(string item) =>
        Lines.FirstOrDefault(line => line.Item.Equals(item.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The order with one of its lines replaced.</summary>
    public Order With(OrderLine changed) =>
        this with { Lines = [.. Lines.Select(line => line.Item == changed.Item ? changed : line)] };
}
