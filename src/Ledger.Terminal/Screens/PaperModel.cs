using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>The pages that can be put on paper from where the user is.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="papers">Each page's name, what it is for, and the step that writes it.</param>
internal sealed class PaperModel(ILedger ledger, IEnumerable<(string Name, string What, Step Write)> papers)
    : TableModel(ledger)
{
    private readonly List<(string Name, string What, Step Write)> _papers = [.. papers];

    public override string Name => "On paper";

    public override IReadOnlyList<string> Purpose =>
    [
        "A screen fogs film: read the page before lights-out and fill it in afterwards.",
        "Enter writes it, as HTML for a browser and as plain text, and says where; of a label it asks first which "
            + "paper it lies on.",
    ];

    public override WorkedExample Example { get; } = new("\n",
        "Enter asks which paper the label lies on; F8 writes it and says where.", "Labels of");

    public override string Empty => "There is no page to write.";

    public override IReadOnlyList<TableColumn> Columns { get; } = [new("Page", 24, Least: 14),
        new("What it is", 56, Least: 20)];

    public override int Count => _papers.Count;

    public override string? OpenLabel => "Write it";

    public override void Refresh()
    {
    }

    public override string IdOf(int row) => _papers[row].Name;

    public override string Cell(int row, int column) => column == 0 ? _papers[row].Name : _papers[row].What;

    public override Step? Open(int row) => row < 0 ? null : _papers[row].Write;

    public override IReadOnlyList<Block> Details(int row) => [];
}
