using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>Lays labels on their sheets as it was said; a failure's message says what is accepted.</summary>
/// <param name="Paper">The paper of ready-cut labels; null for plain paper.</param>
/// <param name="Grid">Columns and rows.</param>
/// <param name="Margins">Above and at the sides.</param>
/// <param name="Gaps">Across and down.</param>
/// <param name="Copies">How many of each label.</param>
/// <param name="Used">How many labels are gone from the first sheet already.</param>
internal sealed record LabelPlacing(
    LabelPaper? Paper, (int Columns, int Rows)? Grid, (decimal, decimal)? Margins, (decimal, decimal)? Gaps,
    int Copies, int Used)
{
    private const int Most = 500;

    /// <summary>The papers of ready-cut labels, by what is written for them.</summary>
    public static IReadOnlyDictionary<string, LabelPaper> Papers { get; } =
        new Dictionary<string, LabelPaper> { ["a4"] = LabelPaper.A4, ["letter"] = LabelPaper.Letter };

    /// <summary>So many of each label.</summary>
    /// <exception cref="FormatException">They are none, or more than are printed at once.</exception>
    public IReadOnlyList<Label> Copied(IEnumerable<Label> labels)
    {
        var all = labels.SelectMany(label => Enumerable.Repeat(label, Math.Clamp(Copies, 0, Most + 1)))
            .Take(Most + 1).ToList();
        return Copies is >= 1 and <= Most && all.Count <= Most ? all
            : throw new FormatException($"{Copies} copies: from 1 to {Most} labels are printed at once");
    }

    /// <summary>The sheet that was said, or else the one for plain paper, with room for all the labels.</summary>
    /// <exception cref="FormatException">It cannot be divided so, or labels have no room.</exception>
    public LabelSheet On(LabelSheet plain, IReadOnlyList<Label> labels)
    {
        var sheet = Divided(plain);
        if (LabelType.Refusal(labels, sheet) is { } refusal)
            throw new FormatException(refusal);
        return Used >= 0 && Used < sheet.PerSheet ? sheet with { Used = Used }
            : throw new FormatException(
                $"{Used} labels gone: a sheet has {sheet.PerSheet} labels; from 0 to {sheet.PerSheet - 1} can be gone");
    }

    private LabelSheet Divided(LabelSheet plain) => (Paper, Grid, Margins, Gaps) switch
    {
        ({ } paper, { } grid, var margins, var gaps) => LabelSheet.Of(paper, grid.Columns, grid.Rows, margins, gaps),
        (null, null, null, null) => plain,
        _ => throw new FormatException(
            "the place of a label is measured from the edges of its paper: say both paper and grid, such as --paper a4 "
                + "--grid 3x8"),
    };
}
