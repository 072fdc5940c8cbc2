using System.CommandLine;
using Ledger.App.Values;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Record;

/// <summary>When an item is to be ordered.</summary>
internal sealed class OrderOptions
{
    private readonly Option<int?> _leadTime = Typed.Option(
        "--lead-time-days", "DAYS", Text.OrNone(Text.Whole), "days from order to delivery");

    private readonly Option<decimal?> _serviceLevel = Typed.Option(
        "--service-level", "SHARE", Text.OrNone(Text.Number), "how often stock should last until the delivery, such as 0.95");

    private readonly Option<Amount?> _minimum = Typed.Option(
        "--minimum-on-hand", "AMOUNT", Text.OrNone<Amount?>(Amount.Parse), "your own lower limit: less than this calls for an order");

    public IEnumerable<Option> All => [_leadTime, _serviceLevel, _minimum];

    public Item Read(ParseResult parse, Item item) => item with
    {
        LeadTimeDays = _leadTime.Or(item.LeadTimeDays, parse),
        ServiceLevel = _serviceLevel.Or(item.ServiceLevel, parse),
        MinimumOnHand = parse.GetResult(_minimum) is null ? item.MinimumOnHand : parse.GetValue(_minimum)?.For(item),
    };
}
