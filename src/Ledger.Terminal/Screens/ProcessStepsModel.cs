using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>The steps of one process, to be read and edited.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="process">The process's name.</param>
internal sealed class ProcessStepsModel(ILedger ledger, string process) : TableModel(ledger)
{
    private Process? _process;

    public override string Name => "Process steps";

    public override string Title => $"Process {_process?.VersionName ?? process}";

    public override IReadOnlyList<string> Purpose =>
    [
        "The steps of a process in their order. Enter edits the selected one; every change makes a new version of the "
            + "process, and sessions keep theirs.",
    ];

    public override WorkedExample Example { get; } = new(
        "\n", "Enter on the first step opens it for editing; saving makes a new version of the process.", "Step 1");

    public override string Empty => "The process is not there.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Step", 4, IsFigure: true), new("What", 14), new("Item", 14, Least: 8), new("Dilution", 8),
        new("Amount", 9, IsFigure: true), new("In", 8, IsFigure: true), new("Time", 10, IsFigure: true),
        new("°C", 4, IsFigure: true),
    ];

    public override int Count => _process?.Steps.Count ?? 0;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.Of(KeyTable.New, "adds a step after the selected one",
            row => new FormStep(new StepForm(Ledger, process, null, row + 2))),
        ScreenAction.Rare("Take step away", "takes the selected step away",
            row => row < 0 || _process is not { Steps.Count: > 1 } known ? null
                : new FormStep(new DropStepForm(Ledger, known, known.Steps[row]))),
    ];

    public override string? OpenLabel => "Edit";

    public override void Refresh() => _process = Ledger.HoldingsOn(Today).Process(process);

    public override string IdOf(int row) => _process!.Steps[row].Number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The first step that is another than before: the next one is added after it.</summary>
    public override string? IdOf(Saving saving)
    {
        if (saving.Entry is not ProcessDefinition definition
            || !definition.Process.Equals(process, StringComparison.OrdinalIgnoreCase))
            return null;
        var before = _process?.Steps ?? [];
        return definition.Steps.Where((step, i) => i >= before.Count || step != before[i])
            .FirstOrDefault() is { } changed
            ? Scaled.ToText(changed.Number, 0) : null;
    }

    public override string Cell(int row, int column)
    {
        var step = _process!.Steps[row];
        return column switch
        {
            0 => step.Number.ToString(CultureInfo.InvariantCulture),
            1 => step.Role.Name(),
            2 => step.Item ?? "",
            3 => step.Dilution?.Text ?? "",
            4 => step.Amount?.ToString() ?? "",
            5 => step.WorkingVolume?.ToString() ?? "",
            6 => step.Minutes is { } minutes ? GroupTimes.Clock(minutes) : "",
            _ => step.Celsius is { } celsius ? Scaled.ToText(celsius, 1) : "",
        };
    }

    public override Step? Open(int row) =>
        row < 0 ? null : new FormStep(new StepForm(Ledger, process, _process!.Steps[row]));

    public override IReadOnlyList<Block> Details(int row) => row < 0 ? [] :
        [Block.Of($"Step {row + 1}, {_process!.Steps[row].Role.Name()}", ProcessBlocks.Line(_process.Steps[row]))];
}
