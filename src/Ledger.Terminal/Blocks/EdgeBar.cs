using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Blocks;

/// <summary>
/// The bar at the edge of what is longer than its place: a mark at each end that there is more, and between them a part
/// that says where one is and how much is seen. A press on a mark goes on by a line; a press between them goes there,
/// and drawing goes along.
/// </summary>
/// <param name="Top">The first line that is seen.</param>
/// <param name="All">How many lines there are.</param>
/// <param name="Height">How many are seen, and how high the bar is.</param>
internal readonly record struct EdgeBar(int Top, int All, int Height)
{
    /// <summary>Whether there is anything to scroll.</summary>
    public bool IsNeeded => All > Height && Height > 0;

    /// <summary>The sign on a line of the bar; a blank where there is none.</summary>
    public char At(int line)
    {
        if (!IsNeeded)
            return ' ';
        if (line == 0 && (Top > 0 || Height == 1))
            return Top > 0 ? Signs.Here.Up : Signs.Here.Down;
        if (line == Height - 1 && Top + Height < All)
            return Signs.Here.Down;
        return line > 0 && line < Height - 1 && line - 1 >= ThumbAt && line - 1 < ThumbAt + Thumb
            ? Signs.Here.HeavyUpright
            : ' ';
    }

    /// <summary>The first line that a press leads to; null for anything else that the mouse does.</summary>
    /// <param name="flags">What the mouse does.</param>
    /// <param name="line">The line of the bar that it is at.</param>
    public int? Pressed(MouseFlags flags, int line)
    {
        if (!IsNeeded || !flags.HasFlag(MouseFlags.LeftButtonPressed))
            return null;
        var isDrawn = flags.HasFlag(MouseFlags.PositionReport);
        if (line <= 0)
            return isDrawn ? 0 : Math.Max(0, Top - 1);
        if (line >= Height - 1)
            return isDrawn ? All - Height : Math.Min(All - Height, Top + 1);
        return Height < 4 ? Top : (int)Math.Round((double)(All - Height) * (line - 1) / (Height - 3));
    }

    private int Track => Math.Max(0, Height - 2);

    private int Thumb => Math.Max(1, (int)((long)Track * Height / All));

    private int ThumbAt => (int)((long)(Track - Thumb) * Top / (All - Height));
}
