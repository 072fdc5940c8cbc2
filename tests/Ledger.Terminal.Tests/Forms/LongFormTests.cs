namespace Ledger.Terminal.Tests.Forms;

/// <summary>A form that is longer than the screen.</summary>
public sealed class LongFormTests : OnASmallLedger
{
    [Theory]
    [InlineData(80, 24)]
    [InlineData(70, 20)]
    public void Every_field_of_a_chemical_is_seen_while_it_has_the_cursor(int width, int height)
    {
        using var screen = new Screen(Some.EmptyLedger(), width, height);
        screen.Type("2n").Press(Key.Tab, Key.Tab).Type("chemical").Press(Key.Home).Press(Key.Tab);
        var seen = new List<string>();
        while (screen.Shell.MostFocused is FieldBox { Field: var field })
        {
            var kept = field.Text;
            screen.Type("7");
            var shown = screen.Lines;
            Assert.True(shown.Any(line => IsRowOf(line, field)),
                $"{field.Label} is not seen in\n{string.Join('\n', shown)}");
            Assert.Equal("7", field.Text);
            screen.Press(Key.Backspace).Type(kept).Press(Key.Tab);
            seen.Add(field.Label);
        }

        Assert.Contains("Cautions", seen);
        Assert.Contains("[ Save ]", screen.Text);
        Assert.Contains(screen.Lines, line => line.EndsWith('^'));
        Assert.DoesNotContain("Item  ", screen.Lines[2]);
    }

    [Fact]
    public void Marks_say_that_there_is_more_below_or_above()
    {
        using var screen = new Screen(Some.EmptyLedger());
        screen.Type("2n").Press(Key.Tab, Key.Tab).Type("chemical").Press(Key.Tab);
        Assert.EndsWith("v", FieldLines(screen)[^1].TrimEnd());
        Assert.DoesNotContain(FieldLines(screen), line => line.TrimEnd().EndsWith('^'));

        screen.Press([.. Enumerable.Repeat(Key.Tab.WithShift, 4)]);
        Assert.True(FieldLines(screen).Any(line => line.TrimEnd().EndsWith('^')), screen.Text);
    }

    [Fact]
    public void The_last_of_four_lines_of_a_session_is_seen_when_it_is_added()
    {
        var screen = Look(70, 20);
        screen.Type("s").Press(Key.F4, Key.F4, Key.F4, Key.F7);
        var field = Assert.IsType<FieldBox>(screen.Shell.MostFocused).Field;
        screen.Type("9");
        Assert.True(screen.Lines.Any(line => IsRowOf(line, field)), screen.Text);
    }

    [Fact]
    public void A_field_without_the_cursor_shows_its_beginning()
    {
        Screen.Type("s").Type("4").Press(Key.F10);
        Assert.DoesNotContain(" egative", Screen.Text);
        Assert.Equal(2, Screen.Lines.Count(line => line.Contains("became negative", StringComparison.Ordinal)));
    }

    private static bool IsRowOf(string line, FormField field) =>
        line.Contains($"{field.Label} ", StringComparison.Ordinal)
            && line.Contains(field.Text, StringComparison.Ordinal);

    private static string[] FieldLines(Screen screen) =>
        screen.Lines[2..(2 + Array.FindIndex(screen.Lines[2..],
            line => line.Contains("-----", StringComparison.Ordinal)) - 1)];
}
