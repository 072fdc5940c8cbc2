using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using NodaTime;

namespace Ledger.App.Commands.Record;

/// <summary>record storage: a box moves between freezer, fridge and shelf.</summary>
internal sealed class RecordStorage : RecordCommand
{
    private readonly Argument<string> _container = Typed.Argument("container", Text.NotEmpty, "the box or bottle, such as fen80/3");
    private readonly Option<string> _to = Typed.Option<string>("--to", "PLACE", Text.NotEmpty,
        "where it is kept now: freezer, fridge, shelf");
    private readonly Option<LocalDate?> _opensFrom = Typed.Option(
        "--open-from", "DATE", Text.Date, "the first day on which it may be opened; otherwise what the setting thaw-hours gives");

    public RecordStorage(Workbench bench)
        : base(bench, "storage", "A box or bottle is kept somewhere else: freezer, fridge, shelf.", """
            Film that comes out of the cold warms up before its box is opened, or it sweats.
            Example: trayledger record storage fen80/3 --to shelf
            """)
    {
        Arguments.Add(_container);
        _to.Required = true;
        AddOwn(_to, _opensFrom);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new StorageMove
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Container = parse.GetRequiredValue(_container),
        To = parse.GetRequiredValue(_to),
        OpensFrom = parse.GetValue(_opensFrom),
    };
}
