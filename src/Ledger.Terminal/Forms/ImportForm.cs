using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>Entries are read from CSV.</summary>
internal sealed class ImportForm : WorkForm
{
    private const string Folder = "folder";
    private readonly IUpkeep _upkeep;

    /// <summary>Opens the form.</summary>
    /// <param name="upkeep">Who does it.</param>
    public ImportForm(IUpkeep upkeep)
    {
        _upkeep = upkeep;
        Kind = new("Kind", 16, FieldKind.Choice)
        {
            Choices = () => upkeep.ImportKinds.Prepend(Folder),
            Hint = "What the rows of the file are; folder for all known files of a folder.",
        };
        OnlyTry.Offer("yes");
    }

    public override string Title => "Import";

    public override IReadOnlyList<string> Purpose =>
    [
        "Entries from a CSV file, or from all known files of a folder: everything or nothing. Every bad row is listed.",
        "What stands in the journal already is not recorded again. Each file has a header row.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => [[Path], [Kind], [OnlyTry]];

    public FormField Path { get; } = new("File or folder", 56);

    public FormField Kind { get; }

    public FormField OnlyTry { get; } = new("Only try", 4, FieldKind.Tick)
    {
        Hint = "Shows what would happen and writes nothing.",
    };

    public override void Edited(FormField field)
    {
        if (field != Path)
            return;
        var name = System.IO.Path.GetFileNameWithoutExtension(Path.Text.Trim());
        Kind.Offer(_upkeep.ImportKinds.FirstOrDefault(kind => kind.Equals(name, StringComparison.OrdinalIgnoreCase))
            ?? Folder);
    }

    protected override string Promise => !OnlyTry.IsTicked
        ? "The rows are recorded, all of them or none."
        : "The rows are read and tried, and nothing is written.";

    protected override Work Work()
    {
        var (path, isDry) = (Path.Text.Trim(), OnlyTry.IsTicked);
        var kind = Kind.Choices().First(kind => kind.Equals(Kind.Text.Trim(), StringComparison.OrdinalIgnoreCase));
        return new(isDry ? "Import, only tried" : "Import", (progress, cancel) =>
            _upkeep.Import(path, kind == Folder ? null : kind, isDry, progress, cancel));
    }
}
