using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>A step is taken out of a process, which has a new version then.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="process">The process.</param>
/// <param name="step">The step.</param>
internal sealed class DropStepForm(ILedger ledger, Process process, ProcessStep step) : ProcessForm(ledger,
    ("process", process.Name))
{
    public override string Title => $"Drop step {step.Number}, {step.Role.Name()}";

    public override IReadOnlyList<string> Purpose =>
        ["A step is taken out of a process. Sessions of the past keep the version they were run with."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => [.. FromDayRow, [Own["note"]]];

    public override FormField First => Own["note"];

    protected override IReadOnlyList<EntryText> Steps(EntryText written) =>
        [.. Texts(process.Steps.Where(other => other != step))];
}
