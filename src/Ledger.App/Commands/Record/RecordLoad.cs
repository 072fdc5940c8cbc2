using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record load: sheets go into holders.</summary>
internal sealed class RecordLoad : RecordCommand
{
    private readonly Names _sides = new("sides", "holder sides such as E07-2, or holders for all their sides");
    private readonly Option<string> _from = Typed.Option<string>(
        "--from", "FILM|BOX", Text.NotEmpty, "the film, for the box that is reached for first; or a box, such as fen80/3");

    private readonly Option<bool> _anyway = AnywayOption.New();

    public RecordLoad(Workbench bench)
        : base(bench, "load", "Sheets are loaded into holders, one into each side.", """
            A side that holds a sheet is never loaded again before it is unloaded.
            Example: trayledger record load E01 E02-1 --from fen80
            """)
    {
        Arguments.Add(_sides);
        _from.Required = true;
        AddOwn(_from, _anyway);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new Load
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Sides = _sides.In(parse),
        From = parse.GetRequiredValue(_from),
        Anyway = parse.GetValue(_anyway),
    };
}
