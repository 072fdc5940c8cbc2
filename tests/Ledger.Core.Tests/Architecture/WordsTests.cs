namespace Ledger.Core.Tests.Architecture;

/// <summary>What people read is written in the trade's words and plain English.</summary>
public sealed class WordsTests
{
    /// <summary>What must know an old word: a file of an earlier version says it, or a user may look for it.</summary>
    private static readonly (string File, string Phrase)[] _known =
    [
        ("src/Ledger.Exchange/Import/Identity/FormerFile.cs", "residual fixer"),
        ("src/Ledger.Terminal/Pages/KeyTable.cs", "pour out"),
        ("src/Ledger.Core/Glossary/TradeWords.cs", "pour out"),
        ("src/Ledger.Core/Glossary/TradeWords.cs", "residual fixer"),
        ("src/Ledger.Core/Glossary/TradeWords.cs", "silver test"),
    ];

    /// <summary>The years' files are the user's own words; what stands in them is shown as it is.</summary>
    private static readonly string[] _documents = ["README.md", "CHANGELOG.md", "DEVELOPERS.md"];

    [Fact]
    public void No_text_of_the_program_holds_a_phrase_that_is_not_plain() => Findings.None(
        from file in Repository.Files("src")
        from literal in Literals.In(file.Text)
        from phrase in NeverInText.In(literal.Text)
        where !_known.Contains((file.Path, phrase))
        select $"{file}:{literal.Line}: \"{phrase}\" in {literal.Text}");

    [Fact]
    public void No_document_holds_one() => Findings.None(
        from file in _documents.Select(name => new SourceFile(name)).Concat(Repository.Files("sample-data", "*.csv"))
        from phrase in NeverInText.In(WithoutCode(file.Text))
        select $"{file}: \"{phrase}\"");

    [Fact]
    public void What_must_know_an_old_word_still_does() => Assert.All(_known, known =>
        Assert.Contains(known.Phrase, new SourceFile(known.File).Text, StringComparison.Ordinal));

    [Theory]
    [InlineData("""Say("pour out F4");""", "pour out")]
    [InlineData("""Say($"{x} is mixed {(y ? "anew" : "")}");""", "anew")]
    [InlineData("""Say(@"a ""reckoned"" one");""", "reckoned")]
    [InlineData("Say(\"\"\"\n    stands\n    second\n    \"\"\");", "stands\n    second")]
    public void A_phrase_is_found_wherever_it_stands_in_a_literal(string source, string phrase) =>
        Assert.Equal([phrase], Literals.In(source).SelectMany(literal => NeverInText.In(literal.Text)));

    [Theory]
    [InlineData("// mixed anew\nvar a = 'x';")]
    [InlineData("/* reckoned */ var q = '\"'; var begun = 1;")]
    [InlineData("""Say("residual silver test, canew, one thatis");""")]
    public void Nothing_is_found_that_nobody_reads(string source) =>
        Assert.Empty(Literals.In(source).SelectMany(literal => NeverInText.In(literal.Text)));

    /// <summary>A document without what stands between backticks: names that are quoted, old ones too.</summary>
    private static string WithoutCode(string text) => string.Concat(text.Split('`').Where((_, i) => i % 2 == 0));
}
