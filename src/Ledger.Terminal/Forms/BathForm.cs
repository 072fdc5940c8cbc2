namespace Ledger.Terminal.Forms;

/// <summary>
/// A working solution is mixed that will be used again: like the bath whose successor it is, and into its pair.
/// </summary>
internal sealed class BathForm : KindForm
{
    private readonly Bath? _like;

    /// <param name="ledger">The ledger.</param>
    /// <param name="like">The bath whose successor is mixed; null for the one mixed last.</param>
    public BathForm(ILedger ledger, string? like)
        : base(ledger, "bath")
    {
        _like = like is null ? Holdings.Baths.LastOrDefault() : ledger.Bath(like, ledger.Today);
        Own.Offer("item", _like?.Item ?? this["item"].Text);
        OfferAll();
    }

    protected override string About => _like?.Code ?? "";

    protected override void OfferAll()
    {
        var item = this["item"].Text;
        base.OfferAll();
        Own.Offer("item", item);
        if (_like is not { } like || !like.Item.Equals(this["item"].Text.Trim(), StringComparison.OrdinalIgnoreCase))
            return;
        Own.Offer("bath", NextName.After(like.Code, name => Ledger.Bath(name, Ledger.Today) is not null));
        Own.Offer("working_ml", $"{Scaled.ToText(like.WorkingVolume.Millilitres, 3)} ml");
        Own.Offer("dilution", like.Dilution.Text);
        Own.Offer("material", like.Material.Name());
        Own.Offer("paired_with", WasOfAPair(like) ? Alone(like)?.Code : null);
    }

    private bool WasOfAPair(Bath bath) => bath.PairedWith is not null || Holdings.SecondAfter(bath) is not null;

    /// <summary>A bath of the same item that has no second one yet: after a rotation, the one that moved up.</summary>
    private Bath? Alone(Bath like) => Holdings.WorkingBaths.LastOrDefault(bath =>
        bath.Item.Equals(like.Item, StringComparison.OrdinalIgnoreCase)
        && bath.Material == like.Material
        && Holdings.SecondAfter(bath) is null);
}
