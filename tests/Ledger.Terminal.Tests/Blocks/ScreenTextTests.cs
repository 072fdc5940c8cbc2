using Ledger.Terminal.Blocks;

namespace Ledger.Terminal.Tests.Blocks;

public class ScreenTextTests
{
    /// <summary>A name is shown as its owner writes it, at the beginning of a sentence too.</summary>
    [Theory]
    [InlineData("the bath is spent", "The bath is spent.")]
    [InlineData("fen80/7 is kept in the freezer", "fen80/7 is kept in the freezer.")]
    [InlineData("fen80 is paper.", "fen80 is paper.")]
    [InlineData("", "")]
    public void A_sentence_begins_with_a_capital_and_a_name_as_it_is_written(string text, string sentence) =>
        Assert.Equal(sentence, ScreenText.Sentence(text));
}
