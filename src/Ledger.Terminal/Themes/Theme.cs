using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Ledger.Terminal.Themes;

/// <summary>
/// How the screen is coloured. Whatever a colour says, a word or a sign says too; what is selected is reversed, so that every theme works
/// without colour.
/// </summary>
public static class Theme
{
    /// <summary>
    /// The theme that the options ask for; NO_COLOR gives the monochrome one unless a theme is named. Red has no share of green or blue,
    /// which the named colours of a terminal often have.
    /// </summary>
    internal static Scheme For(TerminalOptions options) => (options.Theme ?? (options.IsColourUnwanted ? "mono" : "terminal")) switch
    {
        "mono" => Of(Color.None, Color.None, Color.None),
        "red" => Of(new(170, 0, 0), new(0, 0, 0), new(255, 0, 0)),
        _ => Of(Color.None, Color.None, new(ColorName16.Cyan)),
    };

    /// <summary>All black in every theme, without colour too: a terminal's own ground may be light, and light fogs film.</summary>
    internal static Scheme Dark { get; } = new(new Attribute(new Color(ColorName16.Black), new Color(ColorName16.Black)));

    /// <summary>One attribute in every role, so that the library derives no colours of its own.</summary>
    internal static Scheme Plain(Attribute one) => new(one)
    {
        HotNormal = one, Focus = one, HotFocus = one, Active = one, HotActive = one, Highlight = one, Editable = one, ReadOnly = one, Disabled = one,
    };

    private static Scheme Of(Color ink, Color ground, Color accent)
    {
        var normal = new Attribute(ink, ground);
        var strong = new Attribute(accent, ground, TextStyle.Bold);
        var selected = new Attribute(ink, ground, TextStyle.Reverse);
        var field = new Attribute(ink, ground, TextStyle.Underline);
        return new(normal)
        {
            HotNormal = strong,
            Focus = selected,
            HotFocus = selected,
            Active = new Attribute(ink, ground, TextStyle.Bold | TextStyle.Underline),
            HotActive = strong,
            Highlight = strong,
            Editable = field,
            ReadOnly = normal,
            Disabled = normal,
        };
    }
}
