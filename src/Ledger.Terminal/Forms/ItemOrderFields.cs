using System.Globalization;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Terminal.Forms;

/// <summary>When an item is to be ordered.</summary>
internal sealed class ItemOrderFields
{
    /// <summary>The fields, row by row.</summary>
    public IReadOnlyList<IReadOnlyList<FormField>> Rows => [[LeadTime, Service, Minimum]];

    public FormField LeadTime { get; } = new("Delivery days", 5, FieldKind.Figure) { Hint = "From the order to the delivery." };

    public FormField Service { get; } = new("service level", 6, FieldKind.Figure)
    {
        Hint = "How often stock should last until the delivery, such as 0.95.",
    };

    public FormField Minimum { get; } = new("minimum", 8, FieldKind.Figure) { Hint = "Your own lower limit: less than this calls for an order." };

    /// <summary>Shows what is known.</summary>
    public void Offer(Item item)
    {
        LeadTime.Offer(item.LeadTimeDays?.ToString(CultureInfo.InvariantCulture));
        Service.Offer(item.ServiceLevel is { } level ? Scaled.ToText(level, 6) : "");
        Minimum.Offer(item.MinimumOnHand is { } minimum ? Scaled.ToText(minimum.Value, 3) : "");
    }

    /// <summary>The item with what was written.</summary>
    public Item Read(Answers answers, Item item) => item with
    {
        LeadTimeDays = answers.OptionalWhole(LeadTime),
        ServiceLevel = answers.OptionalFigure(Service),
        MinimumOnHand = answers.Quantity(Minimum, item.Unit),
    };
}
