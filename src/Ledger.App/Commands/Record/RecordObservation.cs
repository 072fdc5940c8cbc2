using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record observation: something was seen or smelled at a bath.</summary>
internal sealed class RecordObservation : RecordCommand
{
    private readonly Argument<string> _bath = Typed.Argument("bath", Text.NotEmpty, "the bath");
    private readonly Argument<string> _sign = Typed.Argument("sign", Text.NotEmpty, "what it was: yellow, specks, smell");
    private readonly Option<bool> _stillUsed = new("--still-used") { Description = "the bath is used on; otherwise it has ended" };

    public RecordObservation(Workbench bench)
        : base(bench, "observation", "Something was seen or smelled at a bath; it is not used any more.", """
            The bath stays where it is until it is poured out.
            Example: trayledger record observation F4 "yellow, with specks"
            """)
    {
        Arguments.Add(_bath);
        Arguments.Add(_sign);
        AddOwn(_stillUsed);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new BathObservation
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Bath = parse.GetRequiredValue(_bath),
        Sign = parse.GetRequiredValue(_sign),
        EndsUse = !parse.GetValue(_stillUsed),
    };
}
