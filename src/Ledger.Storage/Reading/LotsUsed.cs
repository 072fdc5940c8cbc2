namespace Ledger.Storage.Reading;

/// <summary>
/// What is known of the lots that sessions used. Each is looked up once: lots are few, and what was taken of them is
/// read many thousand times.
/// </summary>
internal sealed class LotsUsed(Snapshot snapshot)
{
    private readonly Dictionary<long, LotRow> _known = [];

    /// <summary>The lot of that number.</summary>
    public LotRow Of(long lot) => _known.TryGetValue(lot, out var known) ? known
        : _known[lot] = snapshot.Connection.QuerySingle<LotRow>(
            """
            SELECT i.code AS Item, i.kind AS Kind, i.role AS Role, l.batch AS Batch, i.fixer_factor AS FixerFactor,
                l.is_priced AS IsPriced
            FROM lot l CROSS JOIN item i ON i.id = l.item_id WHERE l.id = @lot
            """,
            new { lot });

    /// <summary>A lot, with its item.</summary>
    /// <param name="Item">The item's code.</param>
    /// <param name="Kind">The item's kind.</param>
    /// <param name="Role">A chemical's role; null for none.</param>
    /// <param name="Batch">The number on the package.</param>
    /// <param name="FixerFactor">How much a sheet works a fixer, in thousandths.</param>
    /// <param name="IsPriced">1 where it came with a price.</param>
    internal sealed record LotRow(
        string Item, string Kind, string? Role, string Batch, int FixerFactor, long IsPriced)
    {
        /// <summary>It is a chemical.</summary>
        public bool IsChemical { get; } = Kind == ItemKind.Chemical.Name();

        /// <summary>It develops.</summary>
        public bool IsDeveloper { get; } = Role == ItemRole.Developer.Name();
    }
}
