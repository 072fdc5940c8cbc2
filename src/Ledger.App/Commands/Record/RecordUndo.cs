using System.CommandLine;
using System.Globalization;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record undo: an earlier entry is taken back.</summary>
internal sealed class RecordUndo : RecordCommand
{
    private readonly Argument<string> _entry = Typed.Argument(
        "entry", Text.NotEmpty, "the number of the entry to take back, as `show journal` lists it, or its reference");
    private readonly Option<string> _reason = Typed.Option<string>("--reason", "TEXT", Text.NotEmpty, "why: wrong bath, typed twice");

    public RecordUndo(Workbench bench)
        : base(bench, "undo", "Takes an earlier entry back and names it; nothing is ever deleted.", """
            It stands on the day of the entry that it takes back.
            Examples: trayledger record undo 57 --reason "wrong bath"
                      trayledger record undo sessions:S23 --reason "typed twice"
            """, hasDate: false)
    {
        Arguments.Add(_entry);
        _reason.Required = true;
        AddOwn(_reason);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings)
    {
        var entry = parse.GetRequiredValue(_entry).Trim();
        var isNumber = long.TryParse(entry, NumberStyles.None, CultureInfo.InvariantCulture, out var number);
        return new Undo
        {
            Key = frame.Key,
            Date = frame.Date,
            Note = frame.Note,
            Number = number,
            Reference = isNumber ? null : entry,
            Reason = parse.GetRequiredValue(_reason),
        };
    }
}
