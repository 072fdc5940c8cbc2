using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using NodaTime;

namespace Ledger.App.Commands.Record;

/// <summary>record order place: packs of one or several items are ordered.</summary>
internal sealed class RecordOrderPlacement : RecordCommand
{
    private readonly Argument<string> _order = Typed.Argument("order", Text.NotEmpty, "a name of your own for the order");
    private readonly Argument<OrderedPacks[]> _lines = new("lines")
    {
        HelpName = "LINE",
        Description = $"what is ordered, each in quotes: {OrderPhrase.Form}",
        Arity = ArgumentArity.OneOrMore,
        CustomParser = result =>
        {
            try
            {
                return [.. result.Tokens.Select(token => OrderPhrase.Parse(token.Value))];
            }
            catch (FormatException wrong)
            {
                result.AddError(wrong.Message);
                return [];
            }
        },
    };

    private readonly Option<LocalDate?> _expected = Typed.Option(
        "--expected", "DATE", Text.Date, "the day it is expected; otherwise the item's lead time from the order on");

    private readonly Option<bool> _backOrdered = new("--back-ordered") { Description = "the supplier has none now and sends it later" };
    private readonly Option<string?> _supplier = new("--supplier") { HelpName = "TEXT", Description = "where it is ordered" };
    private readonly Option<bool> _prepaid = new("--prepaid") { Description = "it is paid already" };

    public RecordOrderPlacement(Workbench bench)
        : base(bench, "place", "Packs of one or several items are ordered; they are on order until a delivery names the order.", """
            Example: trayledger record order place spring "2 fen80 at 186" "1 syrup"
                       --supplier "mail-order shop" --expected 2026-04-10
            """)
    {
        Arguments.Add(_order);
        Arguments.Add(_lines);
        AddOwn(_expected, _backOrdered, _supplier, _prepaid);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new OrderPlacement
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Order = parse.GetRequiredValue(_order),
        Supplier = parse.GetValue(_supplier) ?? "",
        IsPrepaid = parse.GetValue(_prepaid),
        Lines =
        [
            .. parse.GetRequiredValue(_lines).Select(line => line with
            {
                ExpectedOn = parse.GetValue(_expected),
                IsBackOrdered = parse.GetValue(_backOrdered),
            }),
        ],
    };
}
