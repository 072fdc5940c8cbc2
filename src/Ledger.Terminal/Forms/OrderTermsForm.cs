using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;
using NodaTime;

namespace Ledger.Terminal.Forms;

/// <summary>How an item is ordered: for how long an order should last, in which days of the year, at what cost.</summary>
internal sealed class OrderTermsForm : FormModel
{
    public OrderTermsForm(ILedger ledger, string item)
        : base(ledger)
    {
        var holdings = ledger.HoldingsOn(ledger.Today);
        Item = new("Item", 16, FieldKind.Choice) { Choices = () => holdings.Items.Select(known => known.Code) };
        Item.Offer(item);
        Offer(holdings.Orders.Terms(item));
        Rows = [[Date, Item], [Cover], [Opens, Closes], [Cost, Keeping], [Note]];
    }

    public override string Title => "Order terms";

    public override IReadOnlyList<string> Purpose =>
    [
        "How an item is ordered. What is left empty is not reckoned with; without anything an order should last 60 days.",
        "With the cost of an order and of keeping, the quantity is the one at which both cost the least together.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Cover;

    public FormField Item { get; }

    public FormField Cover { get; } = new("Days it should last", 5, FieldKind.Figure);

    public FormField Opens { get; } = new("Yearly window from", 6) { Hint = "Month and day on which it can first be ordered, such as 09-15." };

    public FormField Closes { get; } = new("to", 6) { Hint = "Month and day on which it can last be ordered, such as 10-15." };

    public FormField Cost { get; } = new("An order costs", 8, FieldKind.Figure) { Hint = "However large it is: shipping, the trip to the shop." };

    public FormField Keeping { get; } = new("keeping, percent a year", 6, FieldKind.Figure) { Hint = "Of the price." };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new OrderTermsSetting
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Note = Note.Text,
        Terms = new(
            answers.Needed(Item), Cover.IsEmpty ? null : answers.Whole(Cover), Annual(Opens, answers), Annual(Closes, answers),
            Cost.IsEmpty ? null : answers.Money(Cost), Thousandths(answers)),
    };

    private void Offer(OrderTerms terms)
    {
        Cover.Offer(terms.CoverDays is { } days ? Scaled.ToText(days, 0) : "");
        Opens.Offer(terms.WindowOpens is { } opens ? Dates.Text(opens) : "");
        Closes.Offer(terms.WindowCloses is { } closes ? Dates.Text(closes) : "");
        Cost.Offer(terms.OrderCost?.Rounded());
        Keeping.Offer(terms.HoldingThousandths is { } thousandths ? Scaled.ToText(thousandths / 10m, 1) : "");
    }

    private static AnnualDate? Annual(FormField field, Answers answers)
    {
        if (field.IsEmpty)
            return null;
        if (Dates.ParseAnnual(field.Text) is { } day)
            return day;
        answers.Problem($"{field.Label}: \"{field.Text.Trim()}\" is not accepted; write a month and a day such as 09-15");
        return null;
    }

    private int? Thousandths(Answers answers)
    {
        if (answers.OptionalFigure(Keeping) is not { } percent)
            return null;
        if (Scaled.ToBase(percent, 10) is >= 0 and <= 10_000 and var thousandths)
            return (int)thousandths;
        answers.Problem($"{Keeping.Label}: {Scaled.ToText(percent, 6)} is not from 0 to 1000 in tenths");
        return null;
    }
}
