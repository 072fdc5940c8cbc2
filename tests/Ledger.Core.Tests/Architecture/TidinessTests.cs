namespace Ledger.Core.Tests.Architecture;

/// <summary>How a source file looks.</summary>
public sealed class TidinessTests
{
    private const int LongestLine = 160;

    private static IEnumerable<SourceFile> Sources => Repository.Files("src");

    [Fact]
    public void A_file_ends_with_one_newline() => Assert.All(Sources, file =>
    {
        Assert.EndsWith("\n", file.Text, StringComparison.Ordinal);
        Assert.False(file.Text.EndsWith("\n\n", StringComparison.Ordinal), "more than one newline at the end");
    });

    [Fact]
    public void A_file_holds_no_tab_and_no_blank_at_a_lines_end() => Findings.None(
        from file in Sources
        from line in file.Lines.Select((text, i) => (Number: i + 1, Text: text))
        where line.Text.Contains('\t', StringComparison.Ordinal) || line.Text.EndsWith(' ') || line.Text.EndsWith('\r')
        select $"{file}:{line.Number}");

    [Fact]
    public void No_line_is_longer_than_160_characters() => Findings.None(
        from file in Sources
        from line in file.Lines.Select((text, i) => (Number: i + 1, Text: text))
        where line.Text.Length > LongestLine
        select $"{file}:{line.Number}: {line.Text.Length}");
}
