using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;

namespace Ledger.App.Commands.Record;

/// <summary>record bath-storage: a bath stands in another container from that day on.</summary>
internal sealed class RecordBathStorage : RecordCommand
{
    private readonly Argument<string> _bath = Typed.Argument("bath", Text.NotEmpty, "the bath");
    private readonly Argument<WorkingContainer?> _container = Typed.Argument(
        "container", Text.OneOf<WorkingContainer>(WorkingContainers.Names, "container"), string.Join(", ", WorkingContainers.Names));

    public RecordBathStorage(Workbench bench)
        : base(bench, "bath-storage", "A bath stands in another container from that day on.", """
            Each container has its own limit, a setting of the item.
            Example: trayledger record bath-storage F4 "part-full bottle"
            """)
    {
        Arguments.Add(_bath);
        Arguments.Add(_container);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new BathStorage
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Bath = parse.GetRequiredValue(_bath),
        Container = parse.GetValue(_container)!.Value,
    };
}
