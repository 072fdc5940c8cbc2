using Terminal.Gui.Drawing;

namespace Ledger.Terminal.Themes;

/// <summary>
/// What things on the screens look like, by what they are: the one style sheet. <see cref="Theme"/> gives each its
/// weight and colour.
/// </summary>
internal static class Style
{
    /// <summary>Plain text, and the values beside labels.</summary>
    public const VisualRole Text = VisualRole.Normal;

    /// <summary>The name of a value; what is known and only reminded of.</summary>
    public const VisualRole Label = VisualRole.ReadOnly;

    /// <summary>Where the user is.</summary>
    public const VisualRole Title = VisualRole.Active;

    /// <summary>The heading of a block or a column.</summary>
    public const VisualRole Heading = VisualRole.HotNormal;

    /// <summary>A key that can be pressed.</summary>
    public const VisualRole Key = VisualRole.HotNormal;

    /// <summary>What is selected, or where the keys go.</summary>
    public const VisualRole Selected = VisualRole.Focus;

    /// <summary>What needs the user now.</summary>
    public const VisualRole Now = VisualRole.Highlight;

    /// <summary>What will need the user soon.</summary>
    public const VisualRole Soon = VisualRole.HotActive;

    /// <summary>A picture: a gauge, a bar, a curve.</summary>
    public const VisualRole Picture = VisualRole.Disabled;

    /// <summary>The mark before what needs the user now.</summary>
    public const string NowMark = "!! ";

    /// <summary>The mark before what will need the user soon.</summary>
    public const string SoonMark = "! ";

    /// <summary>How a text looks by the mark that it begins with; null for one without.</summary>
    public static VisualRole? Marked(string text) =>
        text.StartsWith(NowMark, StringComparison.Ordinal)
            ? Now
            : text.StartsWith(SoonMark, StringComparison.Ordinal) ? Soon : null;
}
