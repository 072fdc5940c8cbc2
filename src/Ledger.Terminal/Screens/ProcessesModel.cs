using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>The processes; the details show the steps, Enter opens them for editing.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class ProcessesModel(ILedger ledger) : TableModel(ledger)
{
    private List<Process> _processes = [];

    public override string Name => "Processes";

    public override IReadOnlyList<string> Purpose =>
    [
        "Your processes: named recipes of steps, from the presoak to the final rinse. Enter opens the steps of the "
            + "selected one for editing.",
        "A session keeps the version of the process it was run with: changing a process changes no session of the "
            + "past.",
    ];

    public override WorkedExample Example { get; } = new("\n",
        "Enter on film shows its steps, from the presoak to the final rinse.", "presoak");

    public override string Empty => "No process yet. Press N to write down the first step of one.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
        [new("Process", 24, Least: 12), new("Version", 7, IsFigure: true), new("Steps", 5, IsFigure: true),
            new("Developer", 20, Least: 12)];

    public override int Count => _processes.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.Of(KeyTable.New, "writes down the first step of a new process",
            _ => new FormStep(new StepForm(Ledger, null, null))),
        ScreenAction.RareOnRow("Copy process", "copies the selected process under another name",
            row => new CopyProcessForm(Ledger, _processes[row])),
        Entries.TakeBack(
            "takes back the last change of the process; the first one takes it out, where nothing uses it"),
        Entries.Entries,
    ];

    private EntryKeys Entries => new(Ledger, row => new(SubjectKind.Process, IdOf(row)));

    public override string? OpenLabel => "Steps";

    public override void Refresh() => _processes = [.. Ledger.HoldingsOn(Today).Processes];

    public override string IdOf(int row) => _processes[row].Name;

    public override string Cell(int row, int column)
    {
        var process = _processes[row];
        return column switch
        {
            0 => process.Name,
            1 => process.Version.ToString(CultureInfo.InvariantCulture),
            2 => process.Steps.Count.ToString(CultureInfo.InvariantCulture),
            _ => process.Developer?.Item ?? "",
        };
    }

    public override Step? Open(int row) =>
        row < 0 ? null : new TableStep(new ProcessStepsModel(Ledger, _processes[row].Name));

    public override IReadOnlyList<Block> Details(int row) => row < 0 ? [] :
    [
        ProcessBlocks.Steps(_processes[row].VersionName, _processes[row].Steps),
    ];
}
