using Ledger.Terminal.Tests.Fakes;
using Ledger.Terminal.Themes;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;

namespace Ledger.Terminal.Tests.Shell;

public sealed class ThemesTests
{
    [Fact]
    public void Without_colour_every_role_is_in_the_terminals_own_ink()
    {
        var scheme = Theme.For(new(IsColourUnwanted: true));

        foreach (var role in Enum.GetValues<VisualRole>().Where(role => role <= VisualRole.ReadOnly))
        {
            var attribute = scheme.GetAttributeForRole(role);
            Assert.Equal((Color.None, Color.None), (attribute.Foreground, attribute.Background));
        }
    }

    [Fact]
    public void Without_colour_nothing_on_any_screen_form_or_help_has_a_colour()
    {
        using var screen = new Screen(Some.Ledger(), options: new(IsColourUnwanted: true));

        foreach (var key in "123456789s")
            Assert.All(screen.Type($"{key}").Colours, colour => Assert.Equal(Color.None, colour));
        Assert.All(screen.Press(Key.F1).Colours, colour => Assert.Equal(Color.None, colour));
    }

    [Fact]
    public void A_named_theme_counts_for_more_than_NO_COLOR()
    {
        var scheme = Theme.For(new(Theme: "red", IsColourUnwanted: true));

        Assert.NotEqual(Color.None, scheme.Normal.Foreground);
    }

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
