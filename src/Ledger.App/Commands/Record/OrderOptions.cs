using System.CommandLine;
using Ledger.App.Values;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Record;

/// <summary>When an item is to be ordered.</summary>
internal sealed class OrderOptions
{
    private readonly Option<Said<int?>> _leadTime = Said<int?>.Option(
        "--lead-time-days", "DAYS", Text.Whole, "days from order to delivery");

    private readonly Option<Said<decimal?>> _serviceLevel = Said<decimal?>.Option(
        "--service-level", "SHARE", Text.Number, "how often stock should last until the delivery, such as 0.95");

    private readonly Option<Said<Amount>> _minimum = Said<Amount>.Option(
        "--minimum-on-hand", "AMOUNT", Amount.Parse, "your own lower limit: less than this calls for an order");

    public IEnumerable<Option> All => [_leadTime, _serviceLevel, _minimum];

    public Item Read(ParseResult parse, Item item) => item with
    {
        LeadTimeDays = parse.GetValue(_leadTime).Or(item.LeadTimeDays),
        ServiceLevel = parse.GetValue(_serviceLevel).Or(item.ServiceLevel),
        MinimumOnHand = parse.GetValue(_minimum) is { IsSaid: true } said ? said.Value?.For(item) : item.MinimumOnHand,
    };
}
