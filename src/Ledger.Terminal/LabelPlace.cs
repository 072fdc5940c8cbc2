namespace Ledger.Terminal;

/// <summary>Where labels are to lie on their paper, as somebody typed it.</summary>
/// <param name="Paper">The paper: one of <see cref="IPaper.LabelPapers"/>.</param>
/// <param name="Grid">Columns by rows, 3x8; empty for plain paper.</param>
/// <param name="Margins">Above and at the side, in mm or inches; empty for those of a common grid.</param>
/// <param name="Gaps">Across and down; empty for those of a common grid, or none.</param>
/// <param name="Copies">How many of each label.</param>
/// <param name="Used">How many labels are gone from the first sheet already.</param>
public sealed record LabelPlace(string Paper, string Grid, string Margins, string Gaps, int Copies, int Used)
{
    /// <summary>One of each on plain paper, to be cut along lines.</summary>
    public static LabelPlace Plain { get; } = new("plain", "", "", "", 1, 0);

    /// <summary>Whether it is plain paper.</summary>
    public bool IsPlain => Paper == Plain.Paper;
}
