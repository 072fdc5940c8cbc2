using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.App.Commands.Record;

/// <summary>record process: the steps of a process.</summary>
internal sealed class RecordProcess : RecordCommand
{
    private readonly Argument<string> _process = Typed.Argument("process", Text.NotEmpty, "the process's name");
    private readonly Option<StepPhrase[]> _steps = Typed.Options(
        "--step", "LINE", StepPhrase.Parse, $"each step, in order: \"{StepPhrase.Form}\"");

    public RecordProcess(Workbench bench)
        : base(bench, "process", "The steps of a process, for a new one or in place of those it had.", """
            A step that is reused passes through a bath; any other uses up its amount, or
            what its dilution asks for, once a session unless it says per batch, sheet or
            litre; a developer is measured out for each batch.
            Example: trayledger record process tray
                       --step "developer syrup 1+49 in 1250ml for 11 per batch"
                       --step "stop citric 30g in 1l for 1"
                       --step "fixer tarnfix in 1.5l reused for 5" --step "water for 30"
            """)
    {
        Arguments.Add(_process);
        _steps.Required = true;
        AddOwn(_steps);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new ProcessDefinition
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Process = parse.GetRequiredValue(_process),
        Steps = [.. parse.GetRequiredValue(_steps).Select((step, i) => step.At(i + 1, holdings))],
    };
}
