using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record cleaning: holders were cleaned.</summary>
internal sealed class RecordCleaning : RecordCommand
{
    private readonly Names _holders = new("holders", "the holders, such as E01 E02");
    private readonly Option<bool> _bagged = new("--bagged") { Description = "they were put into bags afterwards" };

    public RecordCleaning(Workbench bench)
        : base(bench, "cleaning", "Holders were cleaned.", """
            Example: trayledger record cleaning E01 E02 --bagged
            """)
    {
        Arguments.Add(_holders);
        AddOwn(_bagged);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new Cleaning
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Holders = _holders.In(parse),
        IsBagged = parse.GetValue(_bagged),
    };
}
