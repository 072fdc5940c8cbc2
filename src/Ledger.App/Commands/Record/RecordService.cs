using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record service: holder sides go out of service, or back into it.</summary>
internal sealed class RecordService : RecordCommand
{
    private readonly Names _sides = new("sides", "holder sides such as E07-2, or holders for all their sides");
    private readonly Option<bool> _back = new("--back") { Description = "they are in service again; otherwise they go out of it" };
    private readonly Option<string> _reason = Typed.Option<string>(
        "--reason", "TEXT", Text.NotEmpty, "why: light leak, stiff slide, repaired");

    public RecordService(Workbench bench)
        : base(bench, "service", "Holder sides are taken out of service, or put back into it.", """
            A side that is out of service keeps the film that is in it.
            Example: trayledger record service E07-2 --reason "light leak"
            """)
    {
        Arguments.Add(_sides);
        _reason.Required = true;
        AddOwn(_reason, _back);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new SideService
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Sides = _sides.In(parse),
        IsInService = parse.GetValue(_back),
        Reason = parse.GetRequiredValue(_reason),
    };
}
