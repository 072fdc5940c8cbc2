using Ledger.App.Values;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.App.Tests.Values;

public class AmountTests
{
    private static readonly Item _syrup = new()
    {
        Code = "syrup", Name = "syrup", Kind = ItemKind.Chemical, Unit = Unit.Millilitre, Pack = Quantity.Of(1000, Unit.Millilitre),
    };

    [Theory]
    [InlineData("25", 25_000, Unit.Millilitre)]
    [InlineData("25ml", 25_000, Unit.Millilitre)]
    [InlineData("31.25 ML", 31_250, Unit.Millilitre)]
    [InlineData("1.5l", 1_500_000, Unit.Millilitre)]
    [InlineData("30g", 30_000, Unit.Gram)]
    [InlineData("0.5kg", 500_000, Unit.Gram)]
    [InlineData("4 sheets", 4, Unit.Sheet)]
    [InlineData("1 roll", 1, Unit.Roll)]
    [InlineData("2pieces", 2, Unit.Piece)]
    [InlineData("1floz", 29_574, Unit.Millilitre)]
    [InlineData("-3", -3_000, Unit.Millilitre)]
    public void An_amount_is_kept_exactly(string text, long inBaseUnits, Unit unit) =>
        Assert.Equal(new(inBaseUnits, unit), Amount.Parse(text).For(_syrup));

    [Theory]
    [InlineData("24.5 sheets", "24.5 is not accepted: whole sheets only")]
    [InlineData("0.5 piece", "0.5 is not accepted: whole pieces only")]
    [InlineData("1,5l", "\"1,5l\": write a decimal point: 1.5l; nothing parts thousands")]
    public void A_refusal_says_what_is_accepted(string text, string sentence) =>
        Assert.Equal(sentence, Assert.Throws<FormatException>(() => Amount.Parse(text).For(null)).Message);

    [Theory]
    [InlineData("")]
    [InlineData("ml")]
    [InlineData("1,5l")]
    [InlineData("1 pint")]
    [InlineData("mls")]
    [InlineData("4 mls")]
    [InlineData("1-2")]
    public void Anything_else_is_refused(string text) => Assert.Throws<FormatException>(() => Amount.Parse(text));

    [Theory]
    [InlineData("0.0001ml")]
    [InlineData("0.5 sheet")]
    [InlineData("99999999999999999999ml")]
    public void What_cannot_be_kept_exactly_is_refused(string text) =>
        Assert.Throws<FormatException>(() => Amount.Parse(text).For(_syrup));

    [Theory]
    [InlineData("-25ml")]
    [InlineData("25g")]
    public void A_volume_is_liquid_and_not_negative(string text) => Assert.Throws<FormatException>(() => Text.Volume(text));
}
