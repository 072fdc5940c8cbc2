using Ledger.Core.Tests.Architecture;

namespace Ledger.Terminal.Tests.Shell;

/// <summary>
/// The help of a screen says what it is for, shows it with the demo year, and explains the trade's words that the
/// screen uses.
/// </summary>
public sealed class ScreenHelpTests : OnTheDemoYear
{
    /// <summary>
    /// How each screen is reached: its digit or a word that finds it, then keys; a line feed is Enter.
    /// </summary>
    private static readonly string[] _ways =
    [
        "1", "2", "3", "4", "5", "6", "7", "8", "9", "planned sessions:p", "exposed sheets",
        "processes", "waste jugs", "print sessions", "forgotten", "formats", "settings", "2:\n",
        "5:g", "processes:\n", "4:\n", "7:\n", "3:w", "find a sheet", "faults", "3:.",
    ];

    public static TheoryData<string> Ways => [.. _ways];

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_screen_s_example_works_on_the_demo_year_and_its_help_shows_it(string way)
    {
        var screen = Look(120, 60);
        Go(screen, way);
        var model = Assert.IsType<TablePage>(screen.Shell.Page).Model;
        Assert.NotEqual("", model.Example.Does);
        Assert.EndsWith(".", model.Purpose[0], StringComparison.Ordinal);

        var help = screen.Press(Key.F1).Text;
        Assert.Contains("Example, in the demo year", help);
        Assert.Contains(model.Example.Does.Split(' ')[0], help);
        Assert.Empty(NeverInText.In(help));
        screen.Press(Key.Esc);

        var before = screen.Text;
        Keys(screen, model.Example.Keys);
        Assert.Equal(model.Example.Keys.Length == 0, before == screen.Text);
        Assert.Contains(model.Example.Shows, screen.Text);
        Assert.Empty(NeverInText.In(screen.Text));
    }

    /// <summary>
    /// No screen's example is left untried: the ways above lead to every kind of table that there is.
    /// </summary>
    [Fact]
    public void Every_screen_has_a_way_here()
    {
        var reached = _ways.Select(way =>
        {
            var screen = Look(120, 60);
            Go(screen, way);
            return Assert.IsType<TablePage>(screen.Shell.Page).Model.GetType().Name;
        });
        Assert.Equal(
            typeof(TableModel).Assembly.GetTypes()
                .Where(type => type.IsSubclassOf(typeof(TableModel)) && !type.IsAbstract)
                .Select(type => type.Name).Order(StringComparer.Ordinal),
            reached.Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_words_of_a_screen_are_explained_in_its_help()
    {
        using var screen = new Screen(Some.Ledger(), 120, 140);
        var help = screen.Type("3").Press(Key.F1).Text;
        Assert.Contains("Words", help);
        Assert.Contains("How much of a fixer's capacity a film uses", help);
        Assert.Contains("panchromatic film", help);
    }

    private static void Go(Screen screen, string way)
    {
        var (place, keys) = way.Split(':') is [var one, var two] ? (one, two) : (way, "");
        if (place.Length == 1)
            screen.Type(place);
        else if (place == "planned sessions")
            screen.Type("1");
        else
            screen.Find(place);
        Keys(screen, keys);
    }

    private static void Keys(Screen screen, string keys)
    {
        foreach (var key in keys)
            screen.Press(key == '\n' ? Key.Enter : new Key(key));
    }
}
