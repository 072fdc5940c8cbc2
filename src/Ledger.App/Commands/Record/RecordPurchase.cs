using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Record;

/// <summary>record purchase: several items that were paid together.</summary>
internal sealed class RecordPurchase : RecordCommand
{
    private readonly Argument<string> _name = Typed.Argument("purchase", Text.NotEmpty, "its name, such as the invoice's number");
    private readonly Option<PurchaseLine[]> _lines = Typed.Options(
        "--line", "LINE", PurchasePhrase.Parse, $"what came, once for each item: \"{PurchasePhrase.Form}\"");

    private readonly Option<Money?> _discount = Typed.Option("--discount", "AMOUNT", Text.Money, "taken off for all lines together");
    private readonly Option<Money?> _shipping = Typed.Option("--shipping", "AMOUNT", Text.Money, "the shipping of all lines");
    private readonly Option<Money?> _duty = Typed.Option("--duty", "AMOUNT", Text.Money, "duty and tax of all lines");
    private readonly Option<string?> _currency = Typed.Option<string?>(
        "--currency", "CODE", Text.NotEmpty, "the currency of the amounts, such as EUR; otherwise the ledger's own");

    private readonly Option<decimal?> _rate = Typed.Option(
        "--rate", "NUMBER", Text.Number, "what one unit of that currency is worth in the ledger's own");

    public RecordPurchase(Workbench bench)
        : base(bench, "purchase", "A delivery of several items that were paid together.", """
            The discount, the shipping, duty and tax are shared over the lines by their
            value; the lines add up to what was paid, to the last millionth.
            Example: trayledger record purchase inv-4711 --shipping 14.50
                       --line "2 fen80 at 186 in freezer" "1 syrup at 42"
            """)
    {
        Arguments.Add(_name);
        _lines.Required = true;
        AddOwn(_lines, _discount, _shipping, _duty, _currency, _rate);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new Purchase
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Name = parse.GetRequiredValue(_name),
        Lines = parse.GetRequiredValue(_lines),
        Discount = parse.GetValue(_discount) ?? Money.Zero,
        Shipping = parse.GetValue(_shipping) ?? Money.Zero,
        Duty = parse.GetValue(_duty) ?? Money.Zero,
        Currency = parse.GetValue(_currency),
        Rate = parse.GetValue(_rate),
    };
}
