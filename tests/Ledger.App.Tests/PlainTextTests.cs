namespace Ledger.App.Tests;

/// <summary>What goes to a pipe is plain: no colour, no boxes, and at most 80 columns.</summary>
public class PlainTextTests
{
    public static TheoryData<string> Commands =>
    [
        "show today", "show shelf", "show baths", "show sessions", "show costs", "show journal",
        "show item syrup", "show item fen80", "show bath F4", "show holders", "show sheet E07-2",
        "show forgotten", "record load --help", "record exposure --help", "record unload --help",
        "record holder --help", "record cleaning --help", "record service --help", "record storage --help",
        "record exposure-index --help", "record keeper --help", "show bath F1", "--help", "show --help",
        "show costs --help", "record --help", "record item --help", "record session --help", "record process --help",
        "record setting --help", "import --help", "export --help", "check --help", "backup --help",
        "demo --help", "record delivery --help", "record bath --help", "record discard --help",
        "record count --help", "record undo --help", "record opening --help",
    ];

    [Theory]
    [MemberData(nameof(Commands))]
    public void Text_fits_80_plain_columns(string line)
    {
        using var room = Darkroom.WithDemoYear();
        var text = room.Do(line.Split(' '));
        Assert.DoesNotContain(text,
            c => c is '\e' or (>= '\u2500' and <= '\u25FF') || (char.IsControl(c) && c != '\n'));
        Assert.All(text.Split('\n'),
            written => Assert.True(written.Length <= 80, $"{written.Length} columns: {written}"));
    }

    [Theory]
    [InlineData("today", "No entries yet.")]
    [InlineData("shelf", "The shelf is empty")]
    [InlineData("baths", "No bath is in use")]
    [InlineData("sessions", "No session yet")]
    [InlineData("costs", "Nothing was bought and nothing was used.")]
    [InlineData("journal", "The journal is empty")]
    public void An_empty_ledger_says_so(string what, string sentence)
    {
        using var room = Darkroom.WithEmptyLedger();
        Assert.Contains(sentence, room.Do("show", what), StringComparison.Ordinal);
    }

    [Fact]
    public void The_version_is_told()
    {
        using var room = new Darkroom();
        Assert.Matches(@"^\d+\.\d+\.\d+\S*\n$", room.Do("--version"));
    }

    [Fact]
    public void Units_are_the_users()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "setting", "liquids", "floz");
        room.Do("record", "setting", "areas", "cm2");
        Assert.Contains("2.16 fl oz", room.Do("show", "shelf"), StringComparison.Ordinal);
        Assert.Contains("cm²", room.Do("show", "baths"), StringComparison.Ordinal);
        Assert.Contains("\"unit\": \"ml\"", room.Do("show", "item", "syrup", "--json"), StringComparison.Ordinal);
    }
}
