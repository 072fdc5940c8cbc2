using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;
using Ledger.Terminal.Screens;
using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Forms;

/// <summary>A step is taken out of a process, which has a new version then.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="process">The process.</param>
/// <param name="step">The step.</param>
internal sealed class DropStepForm(ILedger ledger, Process process, ProcessStep step) : FormModel(ledger)
{
    public override string Title => $"Drop step {step.Number}, {step.Role.Name()}";

    public override IReadOnlyList<string> Purpose => ["A step is taken out of a process. Sessions of the past keep the version they were run with."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => [[Note]];

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new ProcessDefinition
    {
        Key = EntryKey,
        Date = Ledger.Today,
        Note = Note.Text.Trim(),
        Process = process.Name,
        Steps = [.. process.Steps.Where(other => other != step).Select((other, i) => other with { Number = i + 1 })],
    };

    protected override IReadOnlyList<Block> More(Posting posting) => posting.Entry is not ProcessDefinition definition ? [] :
        [Block.Facts("The process then", definition.Steps.Select(other => ($"  {other.Number} {other.Role.Name()}", (string?)ProcessesModel.Line(other))))];
}
