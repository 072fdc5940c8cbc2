using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>How labels are laid on their sheets.</summary>
internal sealed class LabelOptions
{
    private const int Most = 500;

    private readonly Option<int?> _copies = Typed.Option("--copies", "N", Text.Whole, "how many of each label; otherwise one");
    private readonly Option<int?> _skip = Typed.Option("--skip", "N", Text.Whole, "how many labels are gone from the first sheet already");

    private readonly Option<LabelPaper?> _paper;

    private readonly Option<(int, int)?> _grid = Typed.Option("--grid", "COLUMNSxROWS", LabelLengths.Grid,
        "labels on a sheet: 3x8 is three side by side, eight below each other; needs --paper");

    private readonly Option<(decimal, decimal)?> _margins = Typed.Option("--margins", "\"TOP SIDE\"", LabelLengths.Pair,
        "from the paper's edge to the first label, in mm or as 0.5in; needed where the grid is not a common one");

    private readonly Option<(decimal, decimal)?> _gaps = Typed.Option("--gaps", "\"ACROSS DOWN\"", LabelLengths.Pair,
        "between two labels, in mm or as 0.1in; otherwise those of the common grid, or none");

    public LabelOptions()
    {
        _paper = Typed.Option<LabelPaper?>("--paper", "PAPER", text => Papers[Text.OneOf(Words, "paper")(text)],
            $"ready-cut labels: {Known(LabelPaper.A4)}; {Known(LabelPaper.Letter)}; other grids with --margins. "
            + "Otherwise plain paper with lines to cut along");
        _paper.CompletionSources.Add(Words);
    }

    private static string[] Words { get; } = ["a4", "letter"];

    private static Dictionary<string, LabelPaper> Papers { get; } =
        new() { ["a4"] = LabelPaper.A4, ["letter"] = LabelPaper.Letter };

    public void AddTo(Command command)
    {
        command.Options.Add(_paper);
        command.Options.Add(_grid);
        command.Options.Add(_margins);
        command.Options.Add(_gaps);
        command.Options.Add(_copies);
        command.Options.Add(_skip);
    }

    public IReadOnlyList<Label> Copies(IEnumerable<Label> labels, ParseResult parse)
    {
        var copies = parse.GetValue(_copies) ?? 1;
        var all = labels.SelectMany(label => Enumerable.Repeat(label, Math.Clamp(copies, 0, Most + 1))).Take(Most + 1).ToList();
        return copies is >= 1 and <= Most && all.Count <= Most ? all
            : throw new FormatException($"--copies {copies}: from 1 to {Most} labels are printed at once");
    }

    /// <summary>The sheet that was said, or else the one for plain paper, with room for all the labels.</summary>
    public LabelSheet On(LabelSheet plain, IReadOnlyList<Label> labels, ParseResult parse)
    {
        var sheet = Divided(plain, parse);
        if (LabelType.Refusal(labels, sheet) is { } refusal)
            throw new FormatException(refusal);
        var used = parse.GetValue(_skip) ?? 0;
        return used >= 0 && used < sheet.PerSheet ? sheet with { Used = used }
            : throw new FormatException($"--skip {used}: a sheet has {sheet.PerSheet} labels; from 0 to {sheet.PerSheet - 1} can be gone");
    }

    private LabelSheet Divided(LabelSheet plain, ParseResult parse) =>
        (parse.GetValue(_paper), parse.GetValue(_grid), parse.GetValue(_margins), parse.GetValue(_gaps)) switch
        {
            ({ } paper, { } grid, var margins, var gaps) => LabelSheet.Of(paper, grid.Item1, grid.Item2, margins, gaps),
            (null, null, null, null) => plain,
            _ => throw new FormatException(
                "the place of a label is measured from the edges of its paper: "
                + "say both, such as --paper a4 --grid 3x8"),
        };

    private static string Known(LabelPaper paper) =>
        $"{paper.Name.ToLowerInvariant()} with --grid "
        + string.Join(", ", LabelSheet.Common.Where(sheet => sheet.Paper == paper).Select(sheet => sheet.Grid));
}
