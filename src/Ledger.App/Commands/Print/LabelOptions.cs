using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>How labels are laid on their sheets.</summary>
internal sealed class LabelOptions
{
    private readonly Option<int?> _copies = Typed.Option("--copies", "N", Text.Whole,
        "how many of each label; otherwise one");
    private readonly Option<int?> _skip = Typed.Option("--skip", "N", Text.Whole,
        "how many labels are gone from the first sheet already");

    private readonly Option<LabelPaper?> _paper;

    private readonly Option<(int, int)?> _grid = Typed.Option("--grid", "COLUMNSxROWS", LabelLengths.Grid,
        "labels on a sheet: 3x8 is three side by side, eight below each other; needs --paper");

    private readonly Option<(decimal, decimal)?> _margins = Typed.Option("--margins", "\"TOP SIDE\"", LabelLengths.Pair,
        "from the paper's edge to the first label, in mm or as 0.5in; needed where the grid is not a common one");

    private readonly Option<(decimal, decimal)?> _gaps = Typed.Option("--gaps", "\"ACROSS DOWN\"", LabelLengths.Pair,
        "between two labels, in mm or as 0.1in; otherwise those of the common grid, or none");

    public LabelOptions()
    {
        _paper = Typed.Option<LabelPaper?>("--paper", "PAPER",
            text => LabelPlacing.Papers[Text.OneOf(Words, "paper")(text)],
            $"ready-cut labels: {Known(LabelPaper.A4)}; {Known(LabelPaper.Letter)}; other grids with --margins. "
            + "Otherwise plain paper with lines to cut along");
        _paper.CompletionSources.Add(Words);
    }

    private static string[] Words { get; } = [.. LabelPlacing.Papers.Keys];

    public void AddTo(Command command)
    {
        command.Options.Add(_paper);
        command.Options.Add(_grid);
        command.Options.Add(_margins);
        command.Options.Add(_gaps);
        command.Options.Add(_copies);
        command.Options.Add(_skip);
    }

    /// <summary>What was said.</summary>
    public LabelPlacing Placing(ParseResult parse) => new(
        parse.GetValue(_paper), parse.GetValue(_grid), parse.GetValue(_margins), parse.GetValue(_gaps),
        parse.GetValue(_copies) ?? 1, parse.GetValue(_skip) ?? 0);

    private static string Known(LabelPaper paper) =>
        $"{paper.Name.ToLowerInvariant()} with --grid "
        + string.Join(", ", LabelSheet.Common.Where(sheet => sheet.Paper == paper).Select(sheet => sheet.Grid));
}
