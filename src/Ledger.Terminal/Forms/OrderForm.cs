using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>
/// Packs of one or several items are ordered: as many as are suggested, at the last price; another line is for what
/// else is due.
/// </summary>
internal sealed class OrderForm : KindForm
{
    private readonly IReadOnlyList<ReorderReading> _readings = [];
    private readonly string _item;

    /// <summary>Opens the form.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="readings">The items, the most pressing first, with what is suggested of each.</param>
    /// <param name="item">The item of the first line.</param>
    public OrderForm(ILedger ledger, IReadOnlyList<ReorderReading> readings, string item)
        : base(ledger, "order", ("order", $"{Dates.Text(ledger.Today)}-{item}"), ("item", item))
    {
        (_readings, _item) = (readings, item);
        OfferAll();
    }

    protected override string About => _item;

    protected override void OfferAll()
    {
        base.OfferAll();
        foreach (var line in Lines)
        {
            var reading = _readings?.FirstOrDefault(one => Names(line, one.Item.Code));
            line.Offer("packs", reading?.Suggestion is { } suggestion ? Scaled.ToText(suggestion.Packs, 6) : "1");
            line.Offer("price", reading?.LastPrice?.Pack.Text(Holdings.Settings.Style));
        }
    }

    protected override FormField? Another()
    {
        var due = _readings.FirstOrDefault(one => one.Suggestion is { IsNow: true }
            && !Lines.Any(line => Names(line, one.Item.Code)));
        var added = AddLine();
        if (due is not null)
            added["item"].Begin(due.Item.Code);
        OfferAll();
        return OpenIn(added);
    }

    private static bool Names(FieldBoxes line, string item) =>
        line["item"].Text.Trim().Equals(item, StringComparison.OrdinalIgnoreCase);
}
