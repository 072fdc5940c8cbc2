using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;
using Ledger.Terminal.Screens;
using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Forms;

/// <summary>A process is copied under another name, to be changed there.</summary>
internal sealed class CopyProcessForm : FormModel
{
    private readonly Holdings _holdings;
    private readonly Process _process;

    /// <summary>Opens the form.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="process">The process to copy.</param>
    public CopyProcessForm(ILedger ledger, Process process)
        : base(ledger)
    {
        (_holdings, _process) = (ledger.HoldingsOn(ledger.Today), process);
        Rows = [[Name], [Note]];
    }

    public override string Title => $"Copy of {_process.Name}";

    public override IReadOnlyList<string> Purpose =>
        ["A process with the same steps under another name: change the copy for another developer, film or tray. The first one stays as it is."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public FormField Name { get; } = new("New name", 24);

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers)
    {
        var name = answers.Needed(Name);
        if (_holdings.Process(name) is { } there)
            answers.Problem($"New name: there is a process {there.Name} already");
        return new ProcessDefinition { Key = EntryKey, Date = Ledger.Today, Process = name, Steps = _process.Steps, Note = Note.Text };
    }

    protected override IReadOnlyList<Block> More(Posting posting) => posting.Entry is not ProcessDefinition definition ? [] :
        [Block.Facts(definition.Process, definition.Steps.Select(step => ($"  {step.Number} {step.Role.Name()}", (string?)ProcessesModel.Line(step))))];
}
