using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record residual-test: what is left in film or paper after fixing and washing.</summary>
internal sealed class RecordResidualTest : RecordCommand
{
    private readonly Argument<string> _bath = Typed.Argument("bath", Text.NotEmpty, "the bath it went through");
    private readonly Argument<string> _lookedFor = Typed.Argument("looked-for", Text.NotEmpty, "silver or hypo");
    private readonly Argument<string> _result = Typed.Argument("result", Text.NotEmpty, "what it showed, such as \"no stain\"");
    private readonly Option<bool> _failed = new("--failed") { Description = "it was not good enough; otherwise it was" };
    private readonly Option<string?> _session = Typed.Option<string?>("--session", "SESSION", Text.NotEmpty, "the session it belongs to");

    public RecordResidualTest(Workbench bench)
        : base(bench, "residual-test", "What is left in film or paper after fixing and washing.", """
            Silver that is left ends the fixer; hypo that is left ends the wash aid. A
            figure such as "0.012 g/m2" or "12 mg/m2" above the setting residual-hypo-limit
            has failed, whatever else is said.
            Example: trayledger record residual-test F4 silver "no stain" --session S22
            """)
    {
        Arguments.Add(_bath);
        Arguments.Add(_lookedFor);
        Arguments.Add(_result);
        AddOwn(_failed, _session);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new ResidualCheck
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Bath = parse.GetRequiredValue(_bath),
        LookedFor = parse.GetRequiredValue(_lookedFor),
        Result = parse.GetRequiredValue(_result),
        HasPassed = !parse.GetValue(_failed),
        Session = parse.GetValue(_session),
    };
}
