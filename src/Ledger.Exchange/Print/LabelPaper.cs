namespace Ledger.Exchange.Print;

/// <summary>A sheet of paper for labels, in millimetres.</summary>
/// <param name="Name">What it is called: A4, Letter.</param>
/// <param name="Width">Its width.</param>
/// <param name="Height">Its height.</param>
public sealed record LabelPaper(string Name, decimal Width, decimal Height)
{
    /// <summary>210 by 297 mm (ISO 216, from memory).</summary>
    public static LabelPaper A4 { get; } = new("A4", 210, 297);

    /// <summary>8.5 by 11 inches (ANSI/ASME Y14.1, from memory).</summary>
    public static LabelPaper Letter { get; } = new("Letter", 215.9m, 279.4m);

    /// <summary>
    /// Whatever is in the printer: what both A4 and Letter paper have room for, to be cut along lines.
    /// </summary>
    public static LabelPaper Plain { get; } = new("plain paper", 210, 279.4m);
}
