using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>
/// A delivery: what came, what it cost, what is printed on it; another line is for what else is to come of the same
/// order.
/// </summary>
/// <param name="ledger">The ledger.</param>
/// <param name="item">The item of the first line; null for none.</param>
internal sealed class DeliveryForm(ILedger ledger, string? item) : KindForm(ledger, "delivery", ("item", item))
{
    /// <summary>How many packs came is what is mostly written: the item and the price are offered.</summary>
    public override FormField First => OpenIn(Lines[0]);

    protected override IReadOnlyList<Block> More(Posting posting) => LandedBlocks.Of(posting, Holdings.Settings);

    protected override FormField? Another()
    {
        var order = Holdings.Orders.Order(Lines[^1]["order"].Text.Trim());
        var next = order?.Lines.FirstOrDefault(line => line.IsOpen && !Lines.Any(one => Names(one, line)));
        var added = AddLine();
        if (next is null)
            return OpenIn(added);
        added["item"].Begin(next.Item);
        added["order"].Begin(order!.Code);
        added.Offer();
        return OpenIn(added);
    }

    protected override FormField OpenIn(FieldBoxes line) => line[line["item"].IsEmpty ? "item" : "packs"];

    private static bool Names(FieldBoxes line, OrderLine ordered) =>
        line["item"].Text.Trim().Equals(ordered.Item, StringComparison.OrdinalIgnoreCase);
}
