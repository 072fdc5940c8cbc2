using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Ledger.Terminal.Themes;

/// <summary>
/// How the screens are coloured, from the terminal's own palette; red alone is mixed here, since a palette's red may
/// have other light in it. Whatever a colour says, a sign or a word says too, and what is selected is reversed, so that
/// every theme works without colour.
/// </summary>
internal static class Theme
{
    /// <summary>
    /// The theme that the options ask for; without one NO_COLOR gives the monochrome one, and then the ledger's setting
    /// decides.
    /// </summary>
    /// <param name="options">How the screens were started.</param>
    /// <param name="setting">The ledger's setting.</param>
    public static string Name(TerminalOptions options, string setting) =>
        options.Theme ?? (options.IsColourUnwanted ? "mono" : setting);

    /// <summary>
    /// Whether the colours of a theme go out as they are, not as the nearest of the terminal's palette.
    /// </summary>
    public static bool IsExact(string name) => name == "red";

    /// <summary>The theme of a name.</summary>
    /// <param name="name">One of <see cref="TerminalOptions.Themes"/>.</param>
    /// <param name="isDark">Whether the terminal's own ground is dark; null where it does not say.</param>
    public static Scheme Of(string name, bool? isDark = null) => name switch
    {
        "mono" => Plain(),
        "red" => Made(new Color(235, 0, 0), new Color(0, 0, 0), Red(255), Red(255), Red(255), Red(235), Red(235)),
        "light" => OnLight(new(ColorName16.Black), new(ColorName16.White)),
        "dark" => OnDark(new(ColorName16.White), new(ColorName16.Black)),
        // A colour that is readable on white is not on black: where the ground is not known, weight alone tells things
        // apart.
        _ => isDark is not { } dark ? Plain() : dark ? OnDark(Color.None, Color.None) : OnLight(Color.None, Color.None),
    };

    /// <summary>
    /// All black in every theme, without colour too: a terminal's own ground may be light, and light fogs film.
    /// </summary>
    public static Scheme Dark { get; } = new(new Attribute(new Color(ColorName16.Black), new Color(ColorName16.Black)));

    /// <summary>One attribute in every role, so that the library derives no colours of its own.</summary>
    public static Scheme Plain(Attribute one) => new(one)
    {
        HotNormal = one, Focus = one, HotFocus = one, Active = one, HotActive = one, Highlight = one,
        Editable = one, ReadOnly = one, Disabled = one,
    };

    private static Scheme Plain() =>
        Made(Color.None, Color.None, Color.None, Color.None, Color.None, Color.None, Color.None);

    private static Scheme OnDark(Color ink, Color ground) => Made(
        ink, ground, new(ColorName16.BrightCyan), new(ColorName16.BrightRed), new(ColorName16.BrightYellow),
        new(ColorName16.DarkGray), new(ColorName16.Cyan));

    /// <summary>
    /// Nothing is bold on a light ground: some terminals brighten bold colours, and bright ones are too pale there.
    /// </summary>
    private static Scheme OnLight(Color ink, Color ground) => Made(
        ink, ground, new(ColorName16.Blue), new(ColorName16.Red), new(ColorName16.Red), ink,
        new(ColorName16.Blue), TextStyle.None);

    private static Color Red(int strength) => new(strength, 0, 0);

    /// <summary>
    /// The style sheet: what each role of <see cref="Style"/> looks like, from the few colours of a theme.
    /// </summary>
    private static Scheme Made(Color ink, Color ground, Color accent, Color now, Color soon, Color label, Color picture,
        TextStyle strong = TextStyle.Bold)
    {
        var selected = In(ink, TextStyle.Reverse);
        return new(In(ink, TextStyle.None))
        {
            HotNormal = In(accent, strong),
            Focus = selected,
            HotFocus = selected,
            Active = In(ink, strong | TextStyle.Underline),
            HotActive = In(soon, strong),
            Highlight = In(now, strong | TextStyle.Underline),
            Editable = In(ink, TextStyle.Underline),
            ReadOnly = In(label, TextStyle.None),
            Disabled = In(picture, TextStyle.None),
        };

        Attribute In(Color colour, TextStyle style) => new(colour, ground, style);
    }
}
