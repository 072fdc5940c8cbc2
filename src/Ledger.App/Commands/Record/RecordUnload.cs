using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record unload: sheets leave their holders.</summary>
internal sealed class RecordUnload : RecordCommand
{
    private readonly Names _from = new("from", "holder sides such as E07-2, sheets such as #12, or a box of exposed sheets: \"fen80 N\"");
    private readonly Option<string?> _group = new("--group")
    {
        HelpName = "GROUP",
        Description = "another group than the exposure notes say, which are corrected",
    };

    private readonly Option<string?> _to = Typed.Option<string?>(
        "--to", "BOX", Text.NotEmpty, "the box for sheets that were not exposed; otherwise the one they came out of");

    public RecordUnload(Workbench bench)
        : base(bench, "unload", "Sheets leave their holders: exposed ones for the box of their group, the others back to their box.", """
            A box of exposed sheets with a wrong label is put right in the same way.
            Example: trayledger record unload E01 E02-1
                     trayledger record unload "fen80 N" --group N+1
            """)
    {
        Arguments.Add(_from);
        AddOwn(_group, _to);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new Unload
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        From = _from.In(parse),
        Group = parse.GetValue(_group) ?? "",
        To = parse.GetValue(_to),
    };
}
