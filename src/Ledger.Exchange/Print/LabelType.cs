namespace Ledger.Exchange.Print;

/// <summary>
/// The sizes of a label's letters: the largest with which all of it has room. Cautions keep at least 9 points; a
/// label that has no room even
/// for the smallest letters is refused, for what is cut off might be the caution. One without cautions or warning
/// has smaller letters of its own, and where even these have no room, the longest of its lines end in "…".
/// </summary>
/// <param name="Title">The title, in points.</param>
/// <param name="Warning">The warning in its black field, in points.</param>
/// <param name="Text">The lines, in points.</param>
/// <param name="Small">The small print, in points.</param>
public sealed record LabelType(decimal Title, decimal Warning, decimal Text, decimal Small)
{
    /// <summary>Between the edge of a label and its letters, in millimetres.</summary>
    public const decimal Above = 2, Beside = 4;

    /// <summary>How high a line is, in sizes of its letters.</summary>
    public const decimal LineHeight = 1.15m;

    /// <summary>The least size of a caution, in points.</summary>
    public const decimal Least = 9;

    private const decimal Point = 25.4m / 72;

    /// <summary>
    /// The mean width of a sign in sizes of its letters, for a wide sans serif face, so that an estimate is on the
    /// safe side.
    /// </summary>
    private const decimal Sign = 0.6m, BoldSign = 0.7m, Capital = 0.78m;

    private static readonly LabelType[] Sizes =
    [
        new(15, 13, 11, 9), new(13, 12, 10, 9), new(12, 11, 9, 9), new(10, 10, 8, 9), new(9, 9, 7, 9),
    ];

    /// <summary>
    /// For a single label without cautions that has no room otherwise: from memory, 6 points are still read.
    /// </summary>
    internal static IReadOnlyList<LabelType> Closest { get; } = [new(8, 9, 6.5m, 9), new(7, 9, 6, 9)];

    /// <summary>
    /// A label as it has room on a sheet, and the sizes of its own that it takes for that; null for those of all.
    /// </summary>
    /// <param name="label">The label.</param>
    /// <param name="sheet">The sheet.</param>
    internal (Label Label, LabelType? Own) Fitted(Label label, LabelSheet sheet)
    {
        if (HasRoom(label, sheet))
            return (label, null);
        if (Closest.FirstOrDefault(size => size.HasRoom(label, sheet)) is { } own)
            return (label, own);
        var lines = label.Lines.ToList();
        while (!Closest[^1].HasRoom(label with { Lines = lines }, sheet)
            && lines.MaxBy(line => line.Length) is { Length: > 2 } longest)
            lines[lines.IndexOf(longest)] = Shortened(longest);
        return (label with { Lines = lines }, Closest[^1]);
    }

    /// <summary>
    /// Without its last word, or its last letters where it is one word, which the sign at its end tells.
    /// </summary>
    private static string Shortened(string line)
    {
        var words = line.TrimEnd('…', ' ');
        return $"{words[..(words.LastIndexOf(' ') is > 0 and var blank ? blank : words.Length / 2)]}…";
    }

    /// <summary>
    /// The sizes for all labels of a sheet, so that they look alike; null where a caution has no room.
    /// </summary>
    public static LabelType? Of(IEnumerable<Label> labels, LabelSheet sheet)
    {
        var all = labels.ToList();
        return Sizes.FirstOrDefault(size => all.All(label => size.HasRoom(label, sheet)))
            ?? (Unfit(all, sheet) is null ? Sizes[^1] : null);
    }

    /// <summary>Why labels have no room on a sheet, with what to do; null where they have.</summary>
    public static string? Refusal(IReadOnlyList<Label> labels, LabelSheet sheet)
    {
        if (Unfit(labels, sheet) is not { } label)
            return null;
        return $"the label \"{label.Title}\" has no room: its words need "
            + $"{Rounded(Sizes[^1].HeightOf(label, sheet.LabelWidth))} mm of height, "
            + $"a label of {sheet.Grid} on {sheet.Paper.Name} is "
            + $"{Rounded(sheet.LabelWidth)} x {Rounded(sheet.LabelHeight)} mm, "
            + $"and cautions are not printed below {Least} point; take a grid of larger labels";
    }

    /// <summary>How high a label's words are at these sizes, in millimetres.</summary>
    public decimal HeightOf(Label label, decimal width)
    {
        var room = width - 2 * Beside;
        var height = 2 * Above + 1 + Block([label.Title], Title, BoldSign, room)
            + Block(label.Lines, Text, Sign, room) + Block(label.SmallPrint, Small, Sign, room);
        return label.Warning.Length == 0 ? height : height + 3.5m + Block([label.Warning], Warning, Capital, room - 4);
    }

    private static Label? Unfit(IEnumerable<Label> labels, LabelSheet sheet) => labels.FirstOrDefault(label =>
        (label.SmallPrint.Count > 0 || label.Warning.Length > 0) && !Sizes[^1].HasRoom(label, sheet));

    private bool HasRoom(Label label, LabelSheet sheet) => HeightOf(label, sheet.LabelWidth) <= sheet.LabelHeight;

    private static decimal Block(IEnumerable<string> lines, decimal size, decimal sign, decimal room)
    {
        var signs = Math.Max(1, (int)(room / (size * Point * sign)));
        var rows = lines.Where(line => line.Length > 0)
            .Sum(line => Wrapping.Of(PrintedText.Plain(line), signs).Count());
        return rows * size * Point * LineHeight;
    }

    private static string Rounded(decimal millimetres) =>
        Math.Round(millimetres, 1).ToString("0.#", CultureInfo.InvariantCulture);
}
