using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using NodaTime;

namespace Ledger.App.Commands.Record;

/// <summary>record holder: a film holder is registered.</summary>
internal sealed class RecordHolder : RecordCommand
{
    private readonly Argument<string> _holder = Typed.Argument("holder", Text.NotEmpty, "the name on it, such as E07");
    private readonly Option<string> _format = Typed.Option("--format", "FORMAT", Text.NotEmpty, "the film it takes, such as 8x10");
    private readonly Option<string?> _sides = Typed.Option<string?>(
        "--sides", "NAMES", Text.NotEmpty, "the names of its sides, such as 1/2 or A/B; otherwise those of the setting side-names");

    private readonly Option<string?> _notch = new("--notch") { HelpName = "TEXT", Description = "the notches filed into its flap" };
    private readonly Option<LocalDate?> _bought = Typed.Option("--bought", "DATE", Text.Date, "the day it was bought");

    public RecordHolder(Workbench bench)
        : base(bench, "holder", "A film holder, new or in place of what was written of it.", """
            A side is called by its holder and its own name: E07-2. A holder of six
            sheets has six sides: --sides 1/2/3/4/5/6
            Example: trayledger record holder E07 --format 8x10 --notch VU
            """)
    {
        Arguments.Add(_holder);
        _format.Required = true;
        AddOwn(_format, _sides, _notch, _bought);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new HolderDefinition
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Holder = parse.GetRequiredValue(_holder),
        Format = holdings.Formats.Find(parse.GetRequiredValue(_format)),
        Sides = parse.GetValue(_sides)?.Split('/', StringSplitOptions.TrimEntries) ?? [],
        Notch = parse.GetValue(_notch) ?? "",
        BoughtOn = parse.GetValue(_bought),
    };
}
