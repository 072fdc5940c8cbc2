namespace Ledger.Exchange.Print;

/// <summary>
/// A page for paper: what stands on it, in order. It is written as plain text for any printer, or as HTML that loads
/// nothing.
/// </summary>
/// <param name="Title">Its title.</param>
/// <param name="Blocks">What stands on it.</param>
public sealed record PrintedPage(string Title, IReadOnlyList<PageBlock> Blocks)
{
    /// <summary>Whether it is set close, so that what is usual fits on one sheet of A4 or Letter paper.</summary>
    public bool IsClose { get; init; }
}

/// <summary>A part of a page.</summary>
public abstract record PageBlock;

/// <summary>A heading.</summary>
/// <param name="Text">The heading.</param>
public sealed record Heading(string Text) : PageBlock;

/// <summary>A sentence or two.</summary>
/// <param name="Text">The sentences.</param>
public sealed record Paragraph(string Text) : PageBlock;

/// <summary>Sentences one below the other.</summary>
/// <param name="Items">The sentences.</param>
/// <param name="AreCautions">Whether they are cautions, which stand in a frame.</param>
public sealed record Points(IReadOnlyList<string> Items, bool AreCautions = false) : PageBlock;

/// <summary>Figures large enough to be read in red light at arm's length: 26 points.</summary>
/// <param name="Items">The figures.</param>
public sealed record LargeFigures(IReadOnlyList<Figure> Items) : PageBlock;

/// <summary>
/// What is done in the dark, step below step: names, amounts and times of 20 points, read in red light at arm's
/// length.
/// </summary>
/// <param name="Items">The steps, in order.</param>
public sealed record Stations(IReadOnlyList<Station> Items) : PageBlock;

/// <summary>A step: a tray, or a batch beside the tray whose time is its own.</summary>
/// <param name="Name">What it is called: 2. developer.</param>
/// <param name="Figures">What goes into it, or what is done with it.</param>
/// <param name="Note">What stands small below the name; may be empty.</param>
public sealed record Station(string Name, IReadOnlyList<Figure> Figures, string Note)
{
    /// <summary>How long, with how warm or what for below it; null where nothing is said.</summary>
    public Figure? Time { get; init; }

    /// <summary>What is ticked off there, such as the sheets of a batch.</summary>
    public IReadOnlyList<string> Ticks { get; init; } = [];

    /// <summary>Whether it belongs to the step above it.</summary>
    public bool IsWithin { get; init; }
}

/// <summary>A figure with what it is of.</summary>
/// <param name="Value">The figure: 25 ml.</param>
/// <param name="Label">What it is: syrup.</param>
/// <param name="Beside">What stands smaller beside it, such as the exact figure; may be empty.</param>
public sealed record Figure(string Value, string Label, string Beside = "");

/// <summary>Rows and columns.</summary>
/// <param name="Titles">The titles of the columns.</param>
/// <param name="Rows">The rows.</param>
public sealed record Grid(IReadOnlyList<string> Titles, IReadOnlyList<IReadOnlyList<string>> Rows) : PageBlock
{
    /// <summary>
    /// From which column on figures stand, some with words between them; a column of nothing but figures is found
    /// without it.
    /// </summary>
    public int FiguresFrom { get; init; } = int.MaxValue;

    /// <summary>Whether it is a table of sums, which is set closer than others.</summary>
    public bool IsSums => FiguresFrom < Titles.Count;

    /// <summary>Whether a column holds figures, which stand below each other at its right edge.</summary>
    public bool IsFigure(int column) => column >= FiguresFrom || Rows.All(row => decimal.TryParse(
        row[column], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _));
}

/// <summary>Lines with a box for a pencil before each.</summary>
/// <param name="Items">What to tick off, in order.</param>
public sealed record Ticks(IReadOnlyList<string> Items) : PageBlock;

/// <summary>Bare boxes for a pencil, ten in a row.</summary>
/// <param name="Count">How many.</param>
public sealed record PencilBoxes(int Count) : PageBlock;

/// <summary>Places to write in.</summary>
/// <param name="Items">What is written there.</param>
public sealed record Blanks(IReadOnlyList<string> Items) : PageBlock;

/// <summary>Labels on a sheet of them.</summary>
/// <param name="Items">The labels.</param>
/// <param name="Sheet">How the sheet is divided.</param>
public sealed record Labels(IReadOnlyList<Label> Items, LabelSheet Sheet) : PageBlock;

/// <summary>One label.</summary>
/// <param name="Title">What must be seen first.</param>
/// <param name="Lines">What stands below.</param>
/// <param name="SmallPrint">What stands at the foot.</param>
/// <param name="Warning">What must not be overlooked; may be empty.</param>
public sealed record Label(string Title, IReadOnlyList<string> Lines, IReadOnlyList<string> SmallPrint,
    string Warning = "");
