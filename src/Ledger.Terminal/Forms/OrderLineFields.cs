using Ledger.Core.Journal.Entries;
using Ledger.Core.Reordering;

namespace Ledger.Terminal.Forms;

/// <summary>One line of an order on the form: packs of one item, at what price, and when they are expected.</summary>
internal sealed class OrderLineFields : ILineFields
{
    private readonly IReadOnlyList<ReorderReading> _readings;

    /// <summary>Opens a line.</summary>
    /// <param name="readings">The items, with what is suggested of each.</param>
    /// <param name="item">The item that is offered; null for none.</param>
    public OrderLineFields(IReadOnlyList<ReorderReading> readings, string? item)
    {
        _readings = readings;
        Item = new("Item", 16, FieldKind.Choice)
        {
            Choices = () => readings.Select(reading => reading.Item.Code),
            Hint = "Up and Down choose; a beginning is enough.",
        };
        Item.Offer(item);
        OfferSuggested();
    }

    public FormField Item { get; }

    public FormField Packs { get; } = new("Packs", 6, FieldKind.Figure);

    public FormField Price { get; } = new("Price of a pack", 10, FieldKind.Figure);

    public FormField Expected { get; } = new("Expected", 10, FieldKind.Date)
    {
        Hint = "The day it is expected; empty for the item's delivery time.",
    };

    public FormField BackOrdered { get; } = YesNoField.Field("Back-ordered", "Yes when the supplier has none now and sends it later.");

    public IReadOnlyList<IReadOnlyList<FormField>> Rows => [[Item, Packs, Price], [Expected, BackOrdered]];

    public FormField First => Item.IsEmpty ? Item : Packs;

    /// <summary>The item is another: what is suggested of it is offered.</summary>
    public void Edited(FormField field)
    {
        if (field == Item)
            OfferSuggested();
    }

    /// <summary>The line as an order takes it.</summary>
    public OrderedPacks Read(Answers answers) => new()
    {
        Item = answers.Needed(Item),
        Packs = answers.Whole(Packs),
        Price = answers.Money(Price),
        ExpectedOn = answers.OptionalDate(Expected),
        IsBackOrdered = answers.IsYes(BackOrdered),
    };

    private void OfferSuggested()
    {
        var reading = _readings.FirstOrDefault(one => one.Item.Code.Equals(Item.Text.Trim(), StringComparison.OrdinalIgnoreCase));
        Packs.Offer(reading?.Suggestion is { } suggestion ? $"{suggestion.Packs}" : "1");
        Price.Offer(reading?.LastPrice?.Pack.Rounded());
    }
}
