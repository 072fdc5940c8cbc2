namespace Ledger.Core.Tests.Baths;

/// <summary>
/// Which waste a jug is for, and what must not go into it unasked. The hazards are from memory: usual statements of
/// makers' safety data sheets.
/// </summary>
public sealed class WasteKindTests
{
    [Theory]
    [InlineData("used fixer", WasteKind.Fixer)]
    [InlineData("Spent HYPO", WasteKind.Fixer)]
    [InlineData("used developer", WasteKind.Developer)]
    [InlineData("used stop bath", WasteKind.Stop)]
    [InlineData("used toner", WasteKind.Toner)]
    [InlineData("selenium, used", WasteKind.Toner)]
    [InlineData("hypo clearing agent", WasteKind.Other)]
    [InlineData("first rinse", null)]
    public void Its_words_tell_the_kind(string words, WasteKind? kind) => Assert.Equal(kind, WasteKinds.Told(words));

    [Theory]
    [InlineData("used fixer", "jug-filling what=household_bleach", "chlorine or chloramine")]
    [InlineData("used fixer", "jug-filling what=sodium_hypochlorite", "chlorine or chloramine")]
    [InlineData("used fixer", "jug-filling what=citric_acid", "sulfur dioxide")]
    [InlineData("used fixer", "jug-filling what=used_developer", "ammonia")]
    [InlineData("used fixer", "jug-filling what=used_stop_bath", "sulfur dioxide")]
    [InlineData("used stop bath", "jug-filling what=bleach", "chlorine")]
    [InlineData("used developer", "discard what=F1 jug=J1", "ammonia")]
    [InlineData("used toner", "discard what=F1 jug=J1", "toner's metals")]
    [InlineData("other waste", "discard what=F1 jug=J1", "may refuse them")]
    public void Unlike_waste_acid_and_bleach_are_asked_about(string contents, string entry, string hazard)
    {
        var ledger = With(contents);
        var asked = ledger.Refuse(entry).Sentence;
        Assert.Contains(hazard, asked, StringComparison.Ordinal);
        Assert.Contains("maker's safety data sheet", asked, StringComparison.Ordinal);
        Assert.Contains(ledger.Post($"{entry} anyway=yes").Remarks,
            remark => remark.Contains(hazard, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("used fixer", "jug-filling what=first_rinse")]
    [InlineData("used fixer", "jug-filling what=paper_fixer")]
    [InlineData("used fixer", "discard what=F1 jug=J1")]
    [InlineData("used stop bath", "jug-filling what=citric_acid_stop")]
    public void Like_waste_goes_in_without_a_word(string contents, string entry) =>
        Assert.Empty(With(contents).Post(entry).Remarks);

    [Fact]
    public void Where_a_bath_went_stands_in_the_journal_or_is_asked_for()
    {
        Assert.Equal("discarded bath F1 into jug J1: spent", With("used fixer").Post("discard what=F1 jug=J1").Summary);
        var to = With("used fixer").Post("discard what=F1 to=collection_point");
        Assert.Equal(("discarded bath F1 to collection point: spent", 0), (to.Summary, to.Remarks.Count));
        Assert.Contains("jug J1 (used fixer) has room for it",
            Assert.Single(With("used fixer").Post("discard what=F1").Remarks), StringComparison.Ordinal);
        Assert.Contains("name a jug for fixer waste",
            Assert.Single(With("used developer").Post("discard what=F1").Remarks), StringComparison.Ordinal);
        Assert.Contains("not both", With("used fixer").Refuse("discard what=F1 jug=J1 to=collection_point").Sentence,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_bottle_that_is_discarded_unused_is_waste_of_its_role()
    {
        Assert.Equal(
            "discarded 500 ml of fix/1 into jug J1: spent",
            With("used fixer").Post("discard what=fix/1 quantity=500ml jug=J1").Summary);
        Assert.Contains("ammonia", With("used developer").Refuse("discard what=fix/1 quantity=500ml jug=J1").Sentence,
            StringComparison.Ordinal);
    }

    /// <summary>A ledger with the fixer bath F1 and a jug of 20 litres.</summary>
    private static InMemoryLedger With(string contents)
    {
        var ledger = Shelves.WithBath();
        ledger.Post($"jug-start contents={contents.Replace(' ', '_')}");
        return ledger;
    }
}
