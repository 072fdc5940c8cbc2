namespace Ledger.Core.Tests.Measures;

public class UserTextTests
{
    /// <summary>
    /// C0, DEL and C1: ISO/IEC 6429 (ECMA-48, 5th edition, 1991); directions: Unicode Standard Annex 9, table of
    /// explicit formatting characters.
    /// </summary>
    [Theory]
    [InlineData('\u0000', '\u0008')]
    [InlineData('\u000B', '\u000C')]
    [InlineData('\u000E', '\u001F')]
    [InlineData('\u007F', '\u009F')]
    [InlineData('\u202A', '\u202E')]
    [InlineData('\u2066', '\u2069')]
    public void Controls_and_changes_of_direction_are_refused_and_shown_by_number(char first, char last)
    {
        for (var c = first; c <= last; c++)
        {
            UserText.Kept($"ab{c}c", hasLines: true, out var problem);
            Assert.Contains($"U+{(int)c:X4}", problem, StringComparison.Ordinal);
            Assert.Contains("character 3", problem, StringComparison.Ordinal);
            Assert.Equal($"ab\\u{(int)c:X4}c", UserText.Shown($"ab{c}c"));
        }
    }

    [Theory]
    [InlineData("plain")]
    [InlineData("naïve 日本 🎞")]
    [InlineData("marks \u200E and \u200F stay")]
    public void What_can_be_seen_is_kept_and_shown_as_it_is(string text)
    {
        Assert.Equal(text, UserText.Kept(text, hasLines: false, out var problem));
        Assert.Null(problem);
        Assert.Equal(text, UserText.Shown(text));
    }

    [Fact]
    public void A_tab_becomes_a_blank_and_line_breaks_stand_only_where_lines_are()
    {
        Assert.Equal("a b\nc\nd", UserText.Kept("a\tb\r\nc\nd", hasLines: true, out var problem));
        Assert.Null(problem);
        UserText.Kept("a\nb", hasLines: false, out problem);
        Assert.Equal("a line break as its character 2", problem);
        UserText.Kept("a\rb", hasLines: true, out problem);
        Assert.Equal("a line break as its character 2", problem);
    }

    [Fact]
    public void Shown_text_keeps_its_lines_but_no_return_to_their_beginning() =>
        Assert.Equal("a\r\nb\n\\u000Dc\td", UserText.Shown("a\r\nb\n\rc\td"));
}
