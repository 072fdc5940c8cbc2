namespace Ledger.Core.Tests.Measures;

public sealed class CountedTests
{
    [Theory]
    [InlineData(0, "day", "0 days")]
    [InlineData(1, "day", "1 day")]
    [InlineData(2, "batch", "2 batches")]
    [InlineData(3, "entry", "3 entries")]
    [InlineData(4, "delivery", "4 deliveries")]
    [InlineData(5, "box", "5 boxes")]
    [InlineData(1, "box", "1 box")]
    public void A_count_has_the_right_word(long count, string one, string text) =>
        Assert.Equal(text, Counted.Of(count, one));

    [Theory]
    [InlineData("a long line of words", 8, "", "", "a long|line of|words")]
    [InlineData("a long line of words", 10, "- ", "  ", "- a long|  line of|  words")]
    [InlineData("unbreakable", 5, "", "", "unbre|akabl|e")]
    [InlineData("", 5, "", "", "")]
    public void A_line_is_broken_at_blanks(string text, int width, string lead, string further, string lines) =>
        Assert.Equal(lines, string.Join('|', Wrapping.Of(text, width, lead, further)));

    [Fact]
    public void A_path_is_never_broken() =>
        Assert.Equal(["in", "/a/long/path"], Wrapping.Of("in /a/long/path", 6, breaksWords: false));
}
