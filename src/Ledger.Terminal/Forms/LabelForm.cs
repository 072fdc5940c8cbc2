using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>
/// Asks which paper labels are to lie on before they are written: plain paper, or a sheet of ready-cut labels.
/// </summary>
internal sealed class LabelForm : Form
{
    private readonly LabelStep _step;
    private readonly IPaper _paper;
    private readonly Action<LabelPlace> _taken;
    private readonly FormField _on, _grid;

    private readonly FormField _margins = new("Margins", 16)
    {
        Hint = "From the paper's edge to the first label, above and at the side, in mm or inches: 13 8.5; empty for a "
            + "common grid.",
    };

    private readonly FormField _gaps = new("Gaps", 16)
    {
        Hint = "Between two labels, across and down, in mm or inches: 2.5 0; empty for those of a common grid, or "
            + "none.",
    };

    private readonly FormField _copies = new("Copies", 5, FieldKind.Figure) { Hint = "How many of each label." };
    private readonly FormField _used = new("Gone", 5,
        FieldKind.Figure) { Hint = "How many labels are gone from the first sheet already." };

    /// <param name="step">What is to be written.</param>
    /// <param name="paper">What writes it.</param>
    /// <param name="last">The place that was taken last.</param>
    /// <param name="taken">Told the place that is taken now.</param>
    public LabelForm(LabelStep step, IPaper paper, LabelPlace last, Action<LabelPlace> taken)
    {
        (_step, _paper, _taken) = (step, paper, taken);
        _on = new("Paper", 8, FieldKind.Choice)
        {
            Hint = "Plain paper with lines to cut along, or ready-cut labels on A4 or Letter.",
            Choices = () => paper.LabelPapers,
        };
        _grid = new("Grid", 8)
        {
            Hint = "Labels side by side and one below the other: 3x8. Up and Down offer common grids; others need "
                + "their margins.",
            Choices = () => paper.LabelGrids(_on!.Text.Trim()),
        };
        _on.Begin(last.Paper);
        _grid.Begin(last.Grid);
        _margins.Begin(last.Margins);
        _gaps.Begin(last.Gaps);
        _copies.Begin("1");
        _used.Begin("0");
    }

    public override string Title => $"Labels of {_step.What}";

    public override IReadOnlyList<string> Purpose =>
        ["Labels are written as HTML for a browser to print, and as plain text. Print without scaling, so that they "
            + "lie where they are cut."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => [[_on, _grid, _copies, _used], [_margins, _gaps]];

    public override string SaveLabel => "Write";

    public override bool IsTouched => false;

    public override Verdict Judge()
    {
        List<string> problems =
        [
            .. _paper.LabelPapers.Contains(Place().Paper)
                ? []
                : new[] { $"Paper: found \"{_on.Text}\"; accepted is {string.Join(", ", _paper.LabelPapers)}" },
            .. Place() is { IsPlain: false, Grid.Length: 0 }
                ? ["Grid: found nothing; accepted is columns and rows, such as 3x8"]
                : Array.Empty<string>(),
            .. new[] { _copies, _used }.Where(field => Whole(field) is null)
                .Select(field => $"{field.Label}: found \"{field.Text}\"; accepted is a whole number"),
        ];
        return problems.Count > 0 ? new Incomplete(problems)
            : _paper.LabelProblem(Place()) is { } problem ? new Incomplete([problem]) : new Placed(Place());
    }

    public override Saving Save()
    {
        switch (Judge())
        {
            case Placed placed:
                _taken(placed.Place);
                return new(true, 0, "") { Next = new PaperStep(paper => _step.Write(paper, placed.Place)) };
            case Incomplete incomplete:
                return Saving.Not(ScreenText.Sentence(incomplete.Problems[0]));
            default:
                return Saving.Not("Nothing was written.");
        }
    }

    /// <summary>Plain paper has a grid of its own for each sort of label.</summary>
    private LabelPlace Place()
    {
        var place = new LabelPlace(
            _on.Text.Trim().ToLowerInvariant(), _grid.Text.Trim(), _margins.Text.Trim(), _gaps.Text.Trim(),
            Whole(_copies) ?? 1, Whole(_used) ?? 0);
        return place.IsPlain ? LabelPlace.Plain with { Copies = place.Copies, Used = place.Used } : place;
    }

    private static int? Whole(FormField field) =>
        int.TryParse(field.Text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;
}

/// <summary>Labels can lie there.</summary>
/// <param name="Place">Where.</param>
internal sealed record Placed(LabelPlace Place) : Verdict
{
    public override IReadOnlyList<Block> Blocks =>
    [
        Block.Of("When you write them",
            Place.IsPlain
                ? "  They lie on plain paper, with lines to cut along; grid, margins and gaps are for ready-cut labels."
                : $"  They lie on {Place.Paper} paper with {Place.Grid} labels: print one sheet on plain paper first "
                    + "and hold both against the light."),
    ];
}
