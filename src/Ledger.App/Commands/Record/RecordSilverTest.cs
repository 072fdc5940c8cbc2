using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record silver-test: a silver strip was held into a fixer.</summary>
internal sealed class RecordSilverTest : RecordCommand
{
    private readonly Argument<string> _bath = Typed.Argument("bath", Text.NotEmpty, "the fixer");
    private readonly Argument<decimal?> _grams = Typed.Argument("grams", Text.Number, "grams of silver per litre");

    public RecordSilverTest(Workbench bench)
        : base(bench, "silver-test", "A silver strip was held into a fixer.", """
            The settings silver-limit-film, silver-limit-paper and silver-limit-paper-first
            say at what a bath ends.
            Example: trayledger record silver-test F4 3.5
            """)
    {
        Arguments.Add(_bath);
        Arguments.Add(_grams);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new SilverTest
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Bath = parse.GetRequiredValue(_bath),
        GramsPerLitre = parse.GetValue(_grams)!.Value,
    };
}
