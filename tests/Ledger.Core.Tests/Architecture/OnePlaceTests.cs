using System.Text.RegularExpressions;

namespace Ledger.Core.Tests.Architecture;

/// <summary>Plurals, lines and numbers are made in one place each.</summary>
public sealed partial class OnePlaceTests
{
    private static IEnumerable<(SourceFile File, int Number, string Text)> Code =>
        from file in Repository.Files("src")
        from line in file.Code
        select (file, line.Number, line.Text);

    [Fact]
    public void A_plural_is_made_by_Counted() => Findings.None(
        from line in Code
        where Plural().IsMatch(line.Text)
        select $"{line.File}:{line.Number}: {line.Text.Trim()}");

    [Fact]
    public void A_number_in_a_sentence_is_written_by_Scaled_whatever_the_culture() => Findings.None(
        from line in Code
        where Formatted().IsMatch(line.Text)
        select $"{line.File}:{line.Number}: {line.Text.Trim()}");

    [Fact]
    public void Lines_are_broken_by_Wrapping() => Findings.None(
        from line in Code
        where line.Text.Contains(".Length + 1 + word.Length", StringComparison.Ordinal)
            && line.File.Path != "src/Ledger.Core/Measures/Wrapping.cs"
        select $"{line.File}:{line.Number}: {line.Text.Trim()}");

    /// <summary>
    /// The runtime's own cryptography asks the system for OpenSSL; where that is missing it ends the program.
    /// </summary>
    [Fact]
    public void A_digest_is_made_by_Sha256() => Findings.None(
        from line in Code
        where line.Text.Contains("Security.Cryptography", StringComparison.Ordinal)
        select $"{line.File}:{line.Number}: {line.Text.Trim()}");

    [GeneratedRegex("""== 1 \? "(?:1 )?(\w+)" : \$?"(?:\{[\w.]+\} )?\1(s|es)"|== 1 \? \$"1 \{one\}""")]
    private static partial Regex Plural();

    [GeneratedRegex("""\$".*\{[^{}"]*[\w)\]]:0(\.[0#]+)?\}""")]
    private static partial Regex Formatted();
}
