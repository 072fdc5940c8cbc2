namespace Ledger.Terminal.Tests.Forms;

/// <summary>No sentence ends a way: each refusal names the key that mends it, and none a command.</summary>
public sealed class MendingTests : OnTheDemoYear
{
    private const string AKey = @"F[0-9]+|Ctrl\+[A-Z]|Tab|Up and Down|Esc";

    [Fact]
    public void What_need_not_be_named_is_not_asked_for_and_what_was_said_already_is_not_in_question()
    {
        FormField Bath(bool isNeeded) => new("Bath", 8, FieldKind.Choice) { Makes = "bath",
            IsNeeded = isNeeded, Choices = () => [] };
        Assert.False(Bath(isNeeded: false).IsUnknown);
        Assert.True(Bath(isNeeded: true).IsUnknown);
        var said = Bath(isNeeded: false);
        said.Put("F1", isTouched: false, isGiven: false);
        Assert.False(said.IsUnknown);
        said.Type("F9");
        Assert.True(said.IsUnknown);
    }

    [Fact]
    public void Every_kind_of_refusal_has_a_key_that_mends_it() => Assert.All(Enum.GetValues<RefusalKind>(), kind =>
    {
        foreach (var hasDifference in new[] { true, false })
            Assert.Matches(AKey, Mending.Of(new(kind, "no"), hasDifference));
        Assert.Contains("Ctrl+O opens entry 53", Mending.Of(new(kind, "no") { Entry = 53 }, false));
    });

    [Theory]
    [InlineData("there is no entry 9; `show journal` lists them", "There is no entry 9; Journal (6) lists them.")]
    [InlineData("if it was really there, book the difference with --book-difference",
        "If it was really there, F6 books the difference.")]
    [InlineData("x has no density: `record item x --density` says it", "X has no density: E on the Shelf (x) says it.")]
    [InlineData(
        "count it first: `record count fen80/1 20sheet --reason ...`",
        "Count it first: (C on the Shelf: fen80/1 20sheet).")]
    public void What_the_rules_say_of_commands_is_said_of_keys(string said, string here) =>
        Assert.Equal(here, RefusalText.Of(said));

    /// <summary>
    /// The sentences of the rules, as they stand in the source: none names a command that the screens do not put in
    /// their own words.
    /// </summary>
    [Fact]
    public void No_sentence_of_the_rules_reaches_the_screens_with_a_command_in_it()
    {
        var root = Root();
        var sentences = Directory.EnumerateFiles(Path.Combine(root, "src/Ledger.Core"), "*.cs",
            SearchOption.AllDirectories)
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal)
                && !file.Contains("/Kinds/", StringComparison.Ordinal))
            .SelectMany(File.ReadLines)
            .Where(line => !line.TrimStart().StartsWith("//", StringComparison.Ordinal) && line.Contains('"')
                && (line.Contains('`') || line.Contains(" --", StringComparison.Ordinal)))
            .Select(line => System.Text.RegularExpressions.Regex.Replace(line[line.IndexOf('"')..],
                @"\{[^{}`]*?(\{[^{}]*\}[^{}`]*?)*\}", "x")).ToList();

        Assert.NotEmpty(sentences);
        Assert.All(sentences,
            sentence => Assert.DoesNotMatch("`(show|record|trayledger) | --[a-z]", RefusalText.Of(sentence)));
    }

    [Fact]
    public void The_digits_are_those_of_the_screens() =>
        Assert.Equal(MainDigits.Names,
            MainScreens.Of(Some.Ledger(), new FakeUpkeep(), "ledger.db").Select(screen => screen.Name));

    [Fact]
    public void Ctrl_O_opens_the_entry_that_stands_in_the_way_and_the_form_waits()
    {
        var screen = Look(100, 40);

        screen.Find("processes").Type("u");
        Assert.Contains("What mends it", screen.Text);
        var number = System.Text.RegularExpressions.Regex.Match(screen.Text,
            @"Ctrl\+O opens entry ([0-9]+)").Groups[1].Value;
        screen.Press(Key.O.WithCtrl);

        Assert.StartsWith($" Entry {number}", screen.Title);
        Assert.Matches($"^ +{number} 20", screen.Lines[4]);
        Assert.StartsWith($" Amend entry {number}", screen.Type("e").Title);
        screen.Press(Key.Esc, Key.Esc);
        Assert.StartsWith(" Undo entry", screen.Title);
    }

    [Fact]
    public void A_side_that_is_taken_says_which_key_takes_the_sheet_out()
    {
        var form = new KindForm(Ledger, "load", ("sides", "E01-1"), ("from", "fen80"));
        var screen = Look(100, 40);

        Assert.Equal(RefusalKind.Occupied, Assert.IsType<Rejected>(form.Judge()).Refusal.Kind);
        screen.Type("7l");
        var shown = Assert.IsType<FormPage>(screen.Shell.Page).Form;
        shown.Fields.First(field => field.Label == "Sides").Type("E01-1");
        screen.Shell.Page.Refresh();
        Assert.Contains("M on Holders (7) takes the sheet out",
            string.Join(' ', screen.Text.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries)));
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "DEVELOPERS.md")))
            folder = folder.Parent!;
        return folder.FullName;
    }
}
