using Ledger.Terminal.Themes;
using Terminal.Gui.Drawing;

namespace Ledger.Terminal.Tests.Shell;

public sealed class ThemesTests
{
    [Fact]
    public void Without_colour_nothing_on_any_screen_form_or_help_has_a_colour()
    {
        using var screen = new Screen(Some.Ledger(), options: new(IsColourUnwanted: true));

        foreach (var key in "123456789s")
            Assert.All(screen.Type($"{key}").Colours, colour => Assert.Equal(Color.None, colour));
        Assert.All(screen.Press(Key.F1).Colours, colour => Assert.Equal(Color.None, colour));
    }

    [Fact]
    public void A_named_theme_counts_for_more_than_NO_COLOR_and_that_for_more_than_the_setting()
    {
        Assert.Equal("red", Theme.Name(new(Theme: "red", IsColourUnwanted: true), "light"));
        Assert.Equal("mono", Theme.Name(new(IsColourUnwanted: true), "light"));
        Assert.Equal("light", Theme.Name(new(), "light"));
    }

    [Fact]
    public void The_setting_has_the_themes_that_the_screens_have() => Assert.All(
        TerminalOptions.Themes, name => Assert.NotNull(Core.Journal.Settings.Default.With("theme", name)));

    /// <summary>
    /// Contrast as WCAG 2.2, 1.4.3 (W3C, 2023) has it, at least 4.5 to 1, against the usual palette of xterm (its
    /// manual: color0 to color15).
    /// </summary>
    [Theory]
    [InlineData("light", null, 255, 255, 255)]
    [InlineData("dark", null, 0, 0, 0)]
    [InlineData("red", null, 0, 0, 0)]
    [InlineData("mono", null, 255, 255, 255)]
    [InlineData("mono", null, 0, 0, 0)]
    [InlineData("terminal", true, 0, 0, 0)]
    [InlineData("terminal", false, 255, 255, 255)]
    [InlineData("terminal", false, 253, 246, 227)]
    [InlineData("terminal", null, 255, 255, 255)]
    [InlineData("terminal", null, 0, 0, 0)]
    public void Every_role_of_every_theme_is_readable(string theme, bool? isDark, int red, int green, int blue)
    {
        var scheme = Theme.Of(theme, isDark);
        var ground = (red, green, blue);
        // What a terminal writes with when it is not told: black on a light ground, light grey on a dark one.
        var ink = red > 127 ? (0, 0, 0) : (229, 229, 229);
        foreach (var role in Enum.GetValues<VisualRole>().Where(role => role <= VisualRole.ReadOnly))
        {
            var attribute = scheme.GetAttributeForRole(role);
            var contrast = Contrast(Seen(attribute.Foreground, ink, Theme.IsExact(theme)),
                Seen(attribute.Background, ground, Theme.IsExact(theme)));
            Assert.True(contrast >= 4.5, $"{theme}, {role}: {contrast:0.00}");
        }
    }

    [Fact]
    public void Red_is_235_0_0_or_brighter() => Assert.All(
        Enum.GetValues<VisualRole>().Where(role => role <= VisualRole.ReadOnly)
            .Select(role => Theme.Of("red").GetAttributeForRole(role)),
        attribute => Assert.True(attribute.Foreground is { R: >= 235, G: 0, B: 0 }));

    [Fact]
    public void The_theme_is_chosen_on_the_settings_screen_seen_at_once_and_remembered()
    {
        var ledger = Some.Ledger();
        using (var screen = new Screen(ledger))
        {
            screen.Find("settings").Type("/theme").Press(Key.Enter, Key.Enter).Type("red");
            Assert.Contains(screen.Colours, colour => colour.G > 0 || colour == Color.None);
            screen.Press(Key.F8);
            Assert.All(screen.Colours, colour => Assert.Equal((0, 0), (colour.G, colour.B)));
        }

        using var again = new Screen(ledger);
        Assert.All(again.Colours, colour => Assert.Equal((0, 0), (colour.G, colour.B)));
    }

    private static (int R, int G, int B) Seen(Color colour, (int, int, int) own, bool isExact) =>
        colour == Color.None ? own
            : isExact
                ? (colour.R, colour.G, colour.B)
                : Palette.FirstOrDefault(known => new Color(known.Name) == colour) is { Name: var name, Rgb: var rgb }
                    && new Color(name) == colour
                    ? rgb : (colour.R, colour.G, colour.B);

    private static double Contrast((int R, int G, int B) one, (int R, int G, int B) other)
    {
        var (light, dark) = (Math.Max(Luminance(one), Luminance(other)), Math.Min(Luminance(one), Luminance(other)));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double Luminance((int R, int G, int B) colour) =>
        0.2126 * Part(colour.R) + 0.7152 * Part(colour.G) + 0.0722 * Part(colour.B);

    private static double Part(int value) =>
        value / 255.0 is var part && part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4);

    private static readonly (ColorName16 Name, (int, int, int) Rgb)[] Palette =
    [
        (ColorName16.Black, (0, 0, 0)), (ColorName16.Red, (205, 0, 0)), (ColorName16.Green, (0, 205, 0)),
        (ColorName16.Yellow, (205, 205, 0)), (ColorName16.Blue, (0, 0, 238)), (ColorName16.Magenta, (205, 0, 205)),
        (ColorName16.Cyan, (0, 205, 205)), (ColorName16.Gray, (229, 229, 229)), (ColorName16.DarkGray, (127, 127, 127)),
        (ColorName16.BrightRed, (255, 0, 0)), (ColorName16.BrightGreen, (0, 255, 0)),
        (ColorName16.BrightYellow, (255, 255, 0)), (ColorName16.BrightBlue, (92, 92, 255)),
        (ColorName16.BrightMagenta, (255, 0, 255)), (ColorName16.BrightCyan, (0, 255, 255)),
        (ColorName16.White, (255, 255, 255)),
    ];

    [Fact]
    public void Red_on_black_has_no_other_light_in_it()
    {
        using var screen = new Screen(Some.Ledger(), options: new("red"));

        Assert.All(screen.Colours, colour => Assert.Equal((0, 0), (colour.G, colour.B)));
    }

    [Fact]
    public void Every_named_theme_draws_the_same_words()
    {
        var texts = TerminalOptions.Themes.Select(name =>
        {
            using var screen = new Screen(Some.Ledger(), options: new(name, File: "ledger.db"));
            return screen.Type("3").Text;
        });

        Assert.Single(texts.Distinct());
    }

    [Fact]
    public void The_blank_screen_is_black_in_every_theme()
    {
        foreach (var name in TerminalOptions.Themes)
        {
            using var screen = new Screen(Some.Ledger(), options: new(name));
            screen.Press(Key.Space, Key.Space);

            Assert.All(screen.Backgrounds, background => Assert.Equal(new Color(ColorName16.Black), background));
        }
    }
}
