using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record clearing-test: how long a strip of film took to clear.</summary>
internal sealed class RecordClearingTest : RecordCommand
{
    private readonly Argument<string> _bath = Typed.Argument("bath", Text.NotEmpty, "the fixer");
    private readonly Argument<string> _film = Typed.Argument("film", Text.NotEmpty, "the film the strip is of");
    private readonly Argument<decimal?> _seconds = Typed.Argument("seconds", Text.Number, "the time until it cleared, in seconds");
    private readonly Option<bool> _fresh = new(
        "--fresh") { Description = "the bath is fresh: later tests of this film are measured against it" };
    private readonly Option<int?> _sheets = Typed.Option(
        "--sheets", "COUNT", Text.Whole, "sheets cut up for it; none when a scrap was used");
    private readonly Option<string?> _from = Typed.Option<string?>(
        "--from", "BOX", Text.NotEmpty, "the box they come from; otherwise the one that is reached for first");

    public RecordClearingTest(Workbench bench)
        : base(bench, "clearing-test", "A strip of film is timed until it clears in a fixer.", """
            The setting exhausted-multiple says at how many times the fresh time a bath is
            spent, and fixing-multiple for how many times the clearing time to fix.
            Example: trayledger record clearing-test F4 fen80 55
            """)
    {
        Arguments.Add(_bath);
        Arguments.Add(_film);
        Arguments.Add(_seconds);
        AddOwn(_fresh, _sheets, _from);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new ClearingTest
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Bath = parse.GetRequiredValue(_bath),
        Film = parse.GetRequiredValue(_film),
        Seconds = parse.GetValue(_seconds)!.Value,
        IsFresh = parse.GetValue(_fresh),
        Sheets = parse.GetValue(_sheets) ?? 0,
        Container = parse.GetValue(_from),
    };
}
