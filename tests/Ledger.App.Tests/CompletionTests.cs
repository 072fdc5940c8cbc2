using System.CommandLine;

namespace Ledger.App.Tests;

/// <summary>
/// Completion offers the names in the ledger and the words that are accepted, and nothing that is refused.
/// </summary>
public sealed class CompletionTests
{
    [Theory]
    [InlineData("show item ", "syrup")]
    [InlineData("show item sy", "syrup")]
    [InlineData("show bath ", "F4")]
    [InlineData("show sheet ", "E07-2")]
    [InlineData("show prices ", "fen80")]
    [InlineData("show costs --film ", "fen80")]
    [InlineData("show costs --formula ", "lot")]
    [InlineData("show costs --by ", "emulsion number|number")]
    [InlineData("show sheets --fate ", "keeper")]
    [InlineData("show sheets --bath ", "F4")]
    [InlineData("trace ", "F4")]
    [InlineData("plan session --from-plan ", "tarn")]
    [InlineData("print bottle-label ", "syrup/2|F4")]
    [InlineData("print sleeve-labels ", "S22")]
    [InlineData("record clearing-test ", "F4")]
    [InlineData("record clearing-test F4 ", "fen80")]
    [InlineData("record discard ", "F4")]
    [InlineData("record setting ", "liquids")]
    [InlineData("record setting liquids ", "floz")]
    [InlineData("record item new --role ", "wash aid")]
    [InlineData("record print-session P99 --bath ", "PF4")]
    [InlineData("help clea", "clearing time")]
    [InlineData("completion ", "bash")]
    public void It_offers_what_is_accepted_here(string line, string oneOf)
    {
        using var room = Darkroom.WithDemoYear();
        var offered = Offered(room, line);
        Assert.Contains(oneOf.Split('|'), offered.Contains);
    }

    /// <summary>
    /// Inside the quotation marks of a line too, each word behind those that stand there; behind the note's colon, none.
    /// </summary>
    [Theory]
    [InlineData("record session --sheets \"", "")]
    [InlineData("record session --sheets \"2 fen8", "2 fen80|2 fen80-120")]
    [InlineData("record session --sheets \"2 FEN80 ke", "2 FEN80 keeper")]
    [InlineData("record session --sheets \"2 fen80 keeper fr", "2 fen80 keeper from fen80/6")]
    [InlineData("record session --sheets \"2 fen80 keeper from ", "2 fen80 keeper from fen80/6")]
    [InlineData("record session --sheets \"1 fen80\" --sheets \"1 fen80 re", "1 fen80 reject")]
    [InlineData("record session --sheets '2 fen80 ke", "2 fen80 keeper")]
    [InlineData("record session --sheets \"2 fen80 : ke", "")]
    [InlineData("record session --sheets \"2 fen80 from from ke", "")]
    [InlineData("record session --sheets \"2 fen80-", "2 fen80-120 negative|2 fen80-120 from")]
    [InlineData("record delivery --line \"1 sy", "1 syrup at|1 syrup expires")]
    public void Inside_a_quoted_line_it_offers_what_may_follow(string line, string expected)
    {
        using var room = Darkroom.WithDemoYear();
        var offered = Offered(room, line);
        if (expected.Length == 0)
            Assert.Empty(offered);
        else
            Assert.All(expected.Split('|'), word =>
                Assert.Contains(offered, one => one.StartsWith(word, StringComparison.Ordinal)));
        Assert.DoesNotContain(offered, one => one.EndsWith("from fibre-vc/1", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("show costs --formula ")]
    [InlineData("show costs --by ")]
    [InlineData("show sheets --fate ")]
    [InlineData("show sheets --cause ")]
    public void It_offers_no_names_of_the_code(string line)
    {
        using var room = Darkroom.WithDemoYear();
        Assert.All(Offered(room, line), word => Assert.Equal(word.ToLowerInvariant(), word));
    }

    /// <summary>
    /// Every word that an option or argument offers without looking into a ledger is read by it, in capitals too.
    /// </summary>
    [Fact]
    public void Every_word_that_is_offered_is_read_in_any_case()
    {
        using var room = Darkroom.WithEmptyLedger();
        var root = CommandLine.Root(room);
        var tried = 0;
        foreach (var path in CommandLine.All(room).Where(path => path.Length > 0))
        {
            var command = path.Aggregate((Command)root, (at, name) => at.Subcommands.Single(sub => sub.Name == name));
            foreach (var option in command.Options)
                foreach (var word in option.GetCompletions(System.CommandLine.Completions.CompletionContext.Empty)
                    .Select(item => item.Label))
                    foreach (var typed in new[] { word, word.ToUpperInvariant() })
                    {
                        tried++;
                        var errors = root.Parse([.. path, option.Name, typed]).Errors.Select(error => error.Message);
                        Assert.DoesNotContain(errors, error => error.StartsWith(option.Name, StringComparison.Ordinal));
                    }
        }

        Assert.True(tried > 100, $"{tried} words were tried");
    }

    [Theory]
    [InlineData("record setting LIQUIDS ML")]
    [InlineData("record setting theme RED")]
    [InlineData("record setting Graduate EXACT")]
    [InlineData("record setting cost-formula Average")]
    [InlineData("record setting silver-limit-film None")]
    [InlineData("show costs --formula AVERAGE --by Month")]
    [InlineData("completion BASH")]
    [InlineData("import ITEMS --template")]
    [InlineData("help FIXER FACTOR")]
    public void A_word_is_read_in_any_case(string line)
    {
        using var room = Darkroom.WithDemoYear();
        Assert.Equal(0, room.Run([.. CommandLine.Words(line)]).Status);
    }

    [Fact]
    public void A_setting_is_kept_as_its_word_stands_however_it_was_typed()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "setting", "Theme", "RED");
        var settings = room.Run("show", "settings", "--json").Json.GetProperty("settings").EnumerateArray();
        Assert.Equal("red",
            settings.Single(one => one.GetProperty("setting").GetString() == "theme").GetProperty("value").GetString());
        room.Do("check");
    }

    [Fact]
    public void Without_a_ledger_it_makes_none()
    {
        using var room = new Darkroom();
        Assert.DoesNotContain("syrup", Offered(room, "show item "));
        Assert.Empty(room.Names());
    }

    [Theory]
    [InlineData("show shelff", "did you mean shelf?")]
    [InlineData("shwo today", "did you mean show?")]
    [InlineData("show costs --forumla lot", "did you mean --formula?")]
    [InlineData("show costs --formula lott", "did you mean lot?")]
    [InlineData("show sheets mill --fatee keeper", "did you mean --fate?")]
    [InlineData("show item syrp", "did you mean syrup?")]
    [InlineData("record setting liqiuds ml", "did you mean liquids?")]
    [InlineData("import delivries x.csv", "did you mean deliveries?")]
    [InlineData("record clearing-test F4 fen8O 40", "did you mean fen80 or fen80-120?")]
    public void A_slip_names_what_may_have_been_meant(string line, string meant)
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run([.. CommandLine.Words(line)]);
        Assert.NotEqual(0, ran.Status);
        Assert.Contains(meant, ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Required command", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Unrecognized", ran.Error, StringComparison.Ordinal);
    }

    private static string[] Offered(Darkroom room, string rest)
    {
        var line = $"trayledger {rest}";
        room.Variables[LedgerLocation.Variable] = room.Ledger;
        var ran = room.RunAnywhere($"[suggest:{line.Length.ToString(CultureInfo.InvariantCulture)}]", line);
        Assert.Equal((0, ""), (ran.Status, ran.Error));
        return ran.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
