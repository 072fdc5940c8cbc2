using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record print-session: paper and test strips go through the baths for paper.</summary>
internal sealed class RecordPrintSession : RecordCommand
{
    private readonly Argument<string> _session = Typed.Argument("session", Text.NotEmpty, "the session's name, such as P12");
    private readonly Option<PrintLine[]> _sheets = Typed.Options(
        "--sheets", "SHEETS", PrintPhrase.Parse, $"what was printed: {PrintPhrase.Form}");
    private readonly Option<string?> _bath = Typed.Option<string?>(
        "--bath", "BATH", Text.NotEmpty, "the fixer for paper; not needed while there is only one");

    public RecordPrintSession(Workbench bench)
        : base(bench, "print-session", "Paper and test strips go through the baths for paper.", """
            Paper never goes through a bath for film. Its capacity depends on the paper and
            on how long the prints are to last: set each basis you use on the item.
            Example: trayledger record print-session P12 --sheets "3 fibre-vc final"
                       "1 fibre-vc strip 3 of 4"
            """)
    {
        Arguments.Add(_session);
        _sheets.Required = true;
        AddOwn(_sheets, _bath);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new PrintSession
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Session = parse.GetRequiredValue(_session),
        Lines = parse.GetRequiredValue(_sheets),
        Bath = parse.GetValue(_bath),
    };
}
