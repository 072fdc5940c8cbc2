using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>Every table is written as CSV.</summary>
internal sealed class ExportForm : WorkForm
{
    private readonly IUpkeep _upkeep;

    /// <summary>Opens the form.</summary>
    /// <param name="upkeep">Who does it.</param>
    /// <param name="folder">The folder that is offered.</param>
    public ExportForm(IUpkeep upkeep, string folder)
    {
        _upkeep = upkeep;
        Folder.Offer(folder);
    }

    public override string Title => "Export";

    public override IReadOnlyList<string> Purpose =>
        ["Every table of the ledger as a CSV file, plain text that any program can read in decades. The files appear "
            + "when all of them are whole."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => [[Folder], [Replace]];

    public FormField Folder { get; } = new("Folder", 60) { Hint = "It is made if it is not there." };

    public FormField Replace { get; } = new("Replace the files of an earlier export", 4, FieldKind.Tick);

    protected override string Promise => $"Every table is written into {Folder.Text.Trim()}.";

    protected override Work Work()
    {
        var (folder, isReplacing) = (Folder.Text.Trim(), Replace.IsTicked);
        return new("Export", (progress, cancel) => _upkeep.Export(folder, isReplacing, progress, cancel));
    }
}
