using System.Text.RegularExpressions;

namespace Ledger.Core.Tests.Architecture;

/// <summary>How a source file looks.</summary>
public sealed partial class TidinessTests
{
    private const int LongestLine = 120;

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
    public void No_line_is_longer_than_120_characters() => Findings.None(
        from file in Sources
        from line in file.Lines.Select((text, i) => (Number: i + 1, Text: text))
        where line.Text.Length > LongestLine
        select $"{file}:{line.Number}: {line.Text.Length}");

    [Fact]
    public void A_test_is_named_by_a_sentence() => Findings.None(
        from file in Repository.Files("tests")
        from test in Test().Matches(file.Text)
        where Humps().IsMatch(test.Groups["name"].Value)
        select $"{file}: {test.Groups["name"].Value}");

    [Fact]
    public void What_is_not_public_inherits_no_words() => Findings.None(
        from file in Sources
        where !file.Lines.Any(line => line.StartsWith("public ", StringComparison.Ordinal))
        from line in file.Lines.Select((text, i) => (Number: i + 1, Text: text))
        where line.Text.Contains("<inheritdoc", StringComparison.Ordinal)
        select $"{file}:{line.Number}: only what is public is documented for others");

    [GeneratedRegex(@"\[(Fact|Theory)[^\]]*\](\s*\[[^\n]*\])*\s*public (async )?(void|Task) (?<name>\w+)\(",
        RegexOptions.ExplicitCapture)]
    private static partial Regex Test();

    /// <summary>Words that run into one another instead of standing apart.</summary>
    [GeneratedRegex("^[A-Za-z0-9]*[a-z][A-Z][A-Za-z0-9]*$")]
    private static partial Regex Humps();
}
