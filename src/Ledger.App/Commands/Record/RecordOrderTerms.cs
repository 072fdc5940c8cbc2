using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;
using NodaTime;

namespace Ledger.App.Commands.Record;

/// <summary>record order-terms: how an item is ordered.</summary>
internal sealed class RecordOrderTerms : RecordCommand
{
    private readonly Argument<string> _item = Typed.Argument("item", Text.NotEmpty, "the item's code");
    private readonly Option<OptionValue<int?>> _cover = OptionValue<int?>.Option("--cover-days", "DAYS", Text.Whole,
        "for how many days an order should last");
    private readonly Option<OptionValue<Window>> _window = OptionValue<Window>.Option(
        "--window", "MM-DD..MM-DD", Window.Parse, "the days of the year on which it can be ordered at all");

    private readonly Option<OptionValue<Money?>> _orderCost = OptionValue<Money?>.Option(
        "--order-cost", "AMOUNT", Text.Money, "what an order costs, however large: shipping, the trip to the shop");

    private readonly Option<OptionValue<decimal?>> _holding = OptionValue<decimal?>.Option(
        "--keeping-percent", "PERCENT", Text.Number, "what a year's keeping costs, in percent of the price");

    public RecordOrderTerms(Workbench bench)
        : base(bench, "order-terms", "How an item is ordered: a yearly window, how long an order lasts, what it costs.", """
            With --order-cost and --keeping-percent the quantity is the one at which both
            cost the least together. What is not said stays as it was; "none" takes it away.
            Example: trayledger record order-terms ortho16 --window 09-15..10-15
            """)
    {
        Arguments.Add(_item);
        AddOwn(_cover, _window, _orderCost, _holding);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings)
    {
        var known = holdings.Orders.Terms(parse.GetRequiredValue(_item));
        var knownWindow = known is { WindowOpens: { } opens, WindowCloses: { } closes } ? new Window(opens, closes) : null;
        var window = parse.GetValue(_window).Or(knownWindow);
        decimal? knownPercent = known.HoldingThousandths is { } thousandths ? thousandths / 10m : null;
        return new OrderTermsSetting
        {
            Key = frame.Key,
            Date = frame.Date,
            Note = frame.Note,
            Terms = new OrderTerms(
                parse.GetRequiredValue(_item),
                parse.GetValue(_cover).Or(known.CoverDays),
                window?.Opens,
                window?.Closes,
                parse.GetValue(_orderCost).Or(known.OrderCost),
                parse.GetValue(_holding).Or(knownPercent) is { } percent ? Thousandths(percent) : null),
        };
    }

    private static int Thousandths(decimal percent) => Scaled.ToBase(percent, 10) is >= 0 and <= 10_000 and var thousandths
        ? (int)thousandths
        : throw new FormatException($"--keeping-percent: {Scaled.ToText(percent, 6)} is not from 0 to 1000 in tenths");

    /// <summary>The days of the year from one to another.</summary>
    private sealed record Window(AnnualDate Opens, AnnualDate Closes)
    {
        public static Window Parse(string text) => text.Split("..") is [var first, var last]
            && Dates.ParseAnnual(first) is { } opens && Dates.ParseAnnual(last) is { } closes
            ? new(opens, closes)
            : throw new FormatException($"\"{text}\" is no window; write its first and last day as 09-15..10-15");
    }
}
