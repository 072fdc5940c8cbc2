using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record order cancel: what has not come is cancelled.</summary>
internal sealed class RecordOrderCancellation : RecordCommand
{
    private readonly Argument<string> _order = Typed.Argument("order", Text.NotEmpty, "the order's name");
    private readonly Option<string?> _item = Typed.Option<string?>("--item", "ITEM", Text.NotEmpty,
        "the item; otherwise all that is still to come");
    private readonly Option<string> _reason = Typed.Option<string>("--reason", "TEXT", Text.NotEmpty,
        "why: too late, found elsewhere, no longer made");

    public RecordOrderCancellation(Workbench bench)
        : base(bench, "cancel", "What has not come of an order is cancelled.", """
            Example: trayledger record order cancel spring --item syrup --reason "no longer made"
            """)
    {
        Arguments.Add(_order);
        _reason.Required = true;
        AddOwn(_item, _reason);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new OrderCancellation
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Order = parse.GetRequiredValue(_order),
        Item = parse.GetValue(_item),
        Reason = parse.GetRequiredValue(_reason),
    };
}
