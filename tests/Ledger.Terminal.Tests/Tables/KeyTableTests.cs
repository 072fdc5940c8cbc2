namespace Ledger.Terminal.Tests.Tables;

/// <summary>A letter is one verb: the table of keys holds on every screen.</summary>
public sealed class KeyTableTests
{
    [Fact]
    public void No_key_has_two_verbs_and_no_verb_two_keys()
    {
        Assert.Equal(KeyTable.Verbs.Count,
            KeyTable.Verbs.Select(verb => char.ToUpperInvariant(verb.Letter)).Distinct().Count());
        Assert.Equal(KeyTable.Verbs.Count, KeyTable.Verbs.Select(verb => verb.Word).Distinct().Count());
        Assert.DoesNotContain(KeyTable.Verbs, verb => char.IsDigit(verb.Letter) || verb.Letter == ' ');
    }

    [Fact]
    public void Every_verb_of_the_table_is_in_the_list()
    {
        var named = typeof(KeyTable).GetProperties().Where(property => property.PropertyType == typeof(Verb))
            .Select(property => property.GetValue(null));
        Assert.Equal(named.ToHashSet(), KeyTable.Verbs.ToHashSet<object?>());
    }

    [Fact]
    public void Every_key_of_every_screen_is_the_verb_of_the_table()
    {
        var screens = Screens();
        Assert.Equal(
            typeof(TableModel).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(TableModel))).ToHashSet(),
            screens.Select(screen => screen.GetType()).ToHashSet());

        var keys = screens.SelectMany(screen => screen.Actions.Where(action => action.Key is not null))
            .Concat(Common().Work).ToList();

        Assert.True(keys.Count > 50, "the screens lost their keys");
        Assert.All(keys, key =>
        {
            var verb = Assert.Single(KeyTable.Verbs, verb => verb.Letter.ToString() == key.Name);
            Assert.Equal(verb.Word, key.Label);
            Assert.Equal(new Key(char.ToLowerInvariant(verb.Letter)), key.Key);
        });
    }

    [Fact]
    public void On_no_screen_is_a_key_or_a_name_given_twice() => Assert.All(Screens(), screen =>
    {
        var keys = screen.Actions.Where(action => action.Key is not null).Select(action => action.Name).ToList();
        Assert.Equal(keys.Distinct(), keys);
        Assert.Equal(screen.Actions.Select(action => action.Label).Distinct(),
            screen.Actions.Select(action => action.Label));
    });

    [Fact]
    public void Every_verb_is_on_some_screen()
    {
        using var screen = new Screen(Some.Ledger());
        var used = Screens().SelectMany(one => one.Actions).Concat(Common().Work).Concat(screen.Shell.Page.Actions)
            .Select(action => action.Name).ToHashSet();
        Assert.All(KeyTable.Verbs, verb => Assert.Contains(verb.Letter.ToString(), used));
    }

    private static CommonKeys Common() => new(Some.Ledger(), []);

    /// <summary>All there are, so that a new one is held against the table too.</summary>
    private static List<TableModel> Screens()
    {
        var ledger = Some.Ledger();
        List<TableModel> screens =
        [
            .. MainScreens.Of(ledger, new FakeUpkeep(), "ledger.db"), .. MainScreens.Others(ledger),
            new ContainersModel(ledger, "fen80"), new ProcessStepsModel(ledger, "tray-bw"),
            new SheetsModel(ledger, "E01"), new SessionSheetsModel(ledger, "S1"),
            new CostPartsModel(ledger, CostPeriod.On(Some.Today)[0], default),
                new PaperModel(ledger, []), new TraceModel(ledger, "E01"),
        ];
        screens.ForEach(screen => screen.Refresh());
        return screens;
    }
}
