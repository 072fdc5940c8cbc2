using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record exposure: sheets in holders were exposed.</summary>
internal sealed class RecordExposure : RecordCommand
{
    private readonly Names _sides = new("sides", "holder sides such as E07-2, or holders for all their sides");
    private readonly Option<string?> _group = new("--group")
    {
        HelpName = "GROUP",
        Description = "how they will be developed: N+1, N-1; otherwise N",
    };

    private readonly Option<string?> _subject = new("--subject") { HelpName = "TEXT", Description = "what is on the picture" };
    private readonly Option<bool> _anyway = AnywayOption.New();

    public RecordExposure(Workbench bench)
        : base(bench, "exposure", "Sheets in holders were exposed: side, group, subject.", """
            Example: trayledger record exposure E01-1 --group N-1 --subject "mill at noon"
            """)
    {
        Arguments.Add(_sides);
        AddOwn(_group, _subject, _anyway);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new ExposureNote
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Sides = _sides.In(parse),
        Group = parse.GetValue(_group) ?? "",
        Subject = parse.GetValue(_subject) ?? "",
        Anyway = parse.GetValue(_anyway),
    };
}
