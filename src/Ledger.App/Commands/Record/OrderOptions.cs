using System.CommandLine;
using Ledger.App.Values;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Record;

/// <summary>When an item is to be ordered.</summary>
internal sealed class OrderOptions
{
    private readonly Option<OptionValue<int?>> _leadTime = OptionValue<int?>.Option(
        "--lead-time-days", "DAYS", Text.Whole, "days from order to delivery");

    private readonly Option<OptionValue<decimal?>> _serviceLevel = OptionValue<decimal?>.Option(
        "--service-level", "SHARE", Text.Number, "how often stock should last until the delivery, such as 0.95");

    private readonly Option<OptionValue<Amount>> _minimum = OptionValue<Amount>.Option(
        "--minimum-on-hand", "AMOUNT", Amount.Parse, "your own lower limit: less than this calls for an order");

    public IEnumerable<Option> All => [_leadTime, _serviceLevel, _minimum];

    public Item Read(ParseResult parse, Item item) => item with
    {
        LeadTimeDays = parse.GetValue(_leadTime).Or(item.LeadTimeDays),
        ServiceLevel = parse.GetValue(_serviceLevel).Or(item.ServiceLevel),
        MinimumOnHand = parse.GetValue(_minimum) is { IsGiven: true } said ? said.Value?.For(item) : item.MinimumOnHand,
    };
}
