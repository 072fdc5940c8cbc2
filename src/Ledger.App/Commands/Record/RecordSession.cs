using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Record;

/// <summary>record session: a session of developing.</summary>
internal sealed class RecordSession : RecordCommand
{
    private readonly Argument<string> _session = Typed.Argument("session", Text.NotEmpty, "the session's name, such as S23");
    private readonly Option<string> _process = Typed.Option<string>("--process", "NAME", Text.NotEmpty, "the process");
    private readonly Option<SessionLine[]> _sheets = Typed.Options(
        "--sheets", "LINE", SheetsPhrase.Parse,
        $"what was developed, once for each film, group and fate: \"{SheetsPhrase.Form}\"");

    private readonly Option<Volume?[]> _developer = Typed.Options(
        "--developer", "ML", Text.Volume,
        "the concentrate measured out, once for each batch in the order of the lines; otherwise each line is a batch and takes "
        + "what the process asks for");

    private readonly Option<string?> _bath = Typed.Option<string?>(
        "--bath", "BATH", Text.NotEmpty,
        "the bath the film went through, the first of a pair; otherwise the only one that fits the process");

    private readonly Option<bool> _bookDifference = BookDifference();

    public RecordSession(Workbench bench)
        : base(bench, "session", "A session of developing: sheets, developer, supplies, and the area through the bath.", """
            Fates are negative (unless said), keeper, reject, test, practice. A group that
            is named like one of them is written "group test".
            Example: trayledger record session S23 --process tray
                       --sheets "3 pan100 N keeper 25ml" "1 pan100 N reject: dust"
            """)
    {
        Arguments.Add(_session);
        _process.Required = true;
        _sheets.Required = true;
        AddOwn(_process, _sheets, _developer, _bath, _bookDifference);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new SessionLog
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Session = parse.GetRequiredValue(_session),
        Process = parse.GetRequiredValue(_process),
        Lines = SheetsPhrase.WithDeveloper(parse.GetRequiredValue(_sheets), parse.GetValue(_developer) ?? []),
        Bath = parse.GetValue(_bath),
        BooksDifference = parse.GetValue(_bookDifference),
    };
}
