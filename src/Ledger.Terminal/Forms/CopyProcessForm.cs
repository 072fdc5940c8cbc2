using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>A process is copied under another name, to be changed there.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="process">The process to copy.</param>
internal sealed class CopyProcessForm(ILedger ledger, Process process) : ProcessForm(ledger)
{
    public override string Title => $"Copy of {process.Name}";

    public override IReadOnlyList<string> Purpose =>
        ["A process with the same steps under another name: change the copy for another developer, film or tray. The "
            + "first one stays as it is."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => [[this["process"]], [Own["note"]]];

    public override FormField First => this["process"];

    protected override IReadOnlyList<EntryText> Steps(EntryText written) => [.. Texts(process.Steps)];

    protected override Entry? Read(ICollection<string> problems)
    {
        if (Holdings.Process(this["process"].Text.Trim()) is not { } there)
            return base.Read(problems);
        problems.Add($"{this["process"].Label}: there is a process {there.Name} already");
        return null;
    }
}
