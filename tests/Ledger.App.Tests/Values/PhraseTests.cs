using Ledger.App.Values;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.App.Tests.Values;

public class PhraseTests
{
    [Theory]
    [InlineData("4 fen80", 4, "fen80", "", Fate.Negative, null, null, "")]
    [InlineData("4 fen80 N", 4, "fen80", "N", Fate.Negative, null, null, "")]
    [InlineData("2 fen80 N-1 reject: dust", 2, "fen80", "N-1", Fate.Reject, null, null, "dust")]
    [InlineData("6  reed400 Keeper 12.5ml from reed400/3", 6, "reed400", "", Fate.Keeper, 12500L, "reed400/3", "")]
    [InlineData("4 ortho16 group test test 0.025l : at 1:2", 4, "ortho16", "test", Fate.Test, 25000L, null, "at 1:2")]
    public void Sheets_are_read_word_by_word(
        string text, int sheets, string item, string group, Fate fate, long? developer, string? box, string note) =>
        Assert.Equal(
            new SessionLine
            {
                Sheets = sheets, Item = item, Group = group, Fate = fate, Container = box, Note = note,
                Developer = developer is { } microlitres ? Volume.FromMicrolitres(microlitres) : null,
            },
            SheetsPhrase.Parse(text));

    [Fact]
    public void A_blank_may_stand_before_the_unit_of_a_step()
    {
        Assert.Equal(new Amount(1, Unit.Piece, 1), StepPhrase.Parse("other gloves 1 piece per session").Amount);
        Assert.Equal(Volume.FromMicrolitres(1_250_000), StepPhrase.Parse("developer syrup 1+49 in 1250 ml for 11").Step.WorkingVolume);
        Assert.Contains(
            "\"fen80\" has no place here",
            Assert.Throws<FormatException>(() => StepPhrase.Parse("other gloves 1 fen80")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "how many sheets or rolls is missing")]
    [InlineData("four fen80", "not a whole number")]
    [InlineData("4", "the film is missing")]
    [InlineData("4 fen80 N N-1", "\"N-1\" is neither a fate")]
    [InlineData("4 fen80 from", "the box or holder side after \"from\" is missing")]
    [InlineData("4 fen80 25sheets", "not a volume")]
    public void Sheets_that_cannot_be_read_are_refused_in_a_sentence(string text, string why) =>
        Assert.Contains(why, Assert.Throws<FormatException>(() => SheetsPhrase.Parse(text)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_developer_is_measured_or_weighed()
    {
        var line = SheetsPhrase.Parse("4 fen80 N 31.25g");
        Assert.Equal((null, Quantity.Of(31.25m, Unit.Gram)), (line.Developer, line.DeveloperWeight));
    }

    [Fact]
    public void A_step_that_develops_is_read()
    {
        var step = StepPhrase.Parse("developer syrup 1+49 in 1250ml for 11min per batch: 9 for N-1").At(3, Empty);
        Assert.Equal((3, ItemRole.Developer, "syrup", "1+49"), (step.Number, step.Role, step.Item, step.Dilution?.Text));
        Assert.Equal((1250m, 11m, StepPer.Batch, StepUse.OneShot), (step.WorkingVolume?.Millilitres, step.Minutes, step.Per, step.Use));
        Assert.Equal("9 for N-1", step.Note);
    }

    [Theory]
    [InlineData("developer syrup 1+49 in 1250ml", StepPer.Batch)]
    [InlineData("stop citric 30g in 1l", StepPer.Session)]
    [InlineData("developer syrup 6ml in 1250ml per sheet", StepPer.Sheet)]
    public void A_developer_is_counted_for_each_batch_and_anything_else_once_a_session_unless_it_is_said(string text, StepPer per) =>
        Assert.Equal(per, StepPhrase.Parse(text).Step.Per);

    [Fact]
    public void A_step_of_two_words_with_an_amount_is_read()
    {
        var step = StepPhrase.Parse("wash aid rinsal 30g in 1.5l for 2").At(1, Empty);
        Assert.Equal((ItemRole.WashAid, "rinsal", Quantity.Of(30, Unit.Gram)), (step.Role, step.Item, step.Amount));
    }

    [Fact]
    public void Plain_water_and_a_reused_bath_are_read()
    {
        Assert.Null(StepPhrase.Parse("water for 30").Step.Item);
        Assert.Equal(StepUse.Reused, StepPhrase.Parse("fixer tarnfix reused for 5").Step.Use);
    }

    [Theory]
    [InlineData("rinse for 5", "a step begins with what it does")]
    [InlineData("developer syrup 1:49", "1+49")]
    [InlineData("stop citric 30g per week", "session, batch, sheet, litre")]
    [InlineData("stop citric 30g twice", "a step is written as")]
    public void A_step_that_cannot_be_read_is_refused_in_a_sentence(string text, string why) =>
        Assert.Contains(why, Assert.Throws<FormatException>(() => StepPhrase.Parse(text)).Message, StringComparison.Ordinal);

    private static Holdings Empty { get; } = new(new(2026, 3, 15));
}
