using CsCheck;

namespace Ledger.Core.Tests.Measures;

public sealed class FormatTests
{
    private const string Written = """
        text       | code       | sq in | unit
        4x5        | 4x5        | 20    | Sheet
        4X5        | 4x5        | 20    | Sheet
        4x5in      | 4x5        | 20    | Sheet
        4.0X05     | 4x5        | 20    | Sheet
        7x17in     | 7x17       | 119   | Sheet
        2.50x3.5IN | 2.5x3.5    | 8.75  | Sheet
        254.0x254MM | 254x254mm | 100   | Sheet
        254x254mm  | 254x254mm  | 100   | Sheet
        25.4x25.4cm | 25.4x25.4cm | 100 | Sheet
        120        | 120        | 80    | Roll
        135-36     | 135-36     | 80    | Roll
        """;

    [Fact]
    public void It_is_read_from_its_name() => Assert.All(Table.Read(Written), row =>
    {
        var format = Format.Parse($" {row["text"]} ");
        Assert.Equal(row["code"], format.Code);
        Assert.Equal(row.Number("sq in"), format.Area.SquareInches);
        Assert.Equal(row["unit"], format.Unit.ToString());
    });

    [Theory]
    [InlineData("")]
    [InlineData("4")]
    [InlineData("4x")]
    [InlineData("4x5x6")]
    [InlineData("4x5ft")]
    [InlineData("-4x5")]
    [InlineData("0x5")]
    [InlineData("4,5x5")]
    [InlineData("0.01x0.01mm")]
    [InlineData("99999x99999in")]
    [InlineData("٤x٥")]
    [InlineData("220")]
    public void What_is_no_format_is_refused_in_a_sentence(string text)
    {
        Assert.False(Format.TryParse(text, out var format));
        Assert.Null(format);
        var problem = Assert.Throws<FormatException>(() => Format.Parse(text)).Message;
        Assert.StartsWith($"\"{text}\" is not a format", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("4X5", "4x5")]
    [InlineData("Postcard", "postcard")]
    [InlineData(" postcard ", "postcard")]
    [InlineData("4x5in", "4x5")]
    [InlineData("xpan", "xpan")]
    [InlineData("5x7glass", null)]
    [InlineData("glass-5x7", "glass-5x7")]
    [InlineData("4x5x6", null)]
    [InlineData("4x5ft", null)]
    [InlineData("220", "220")]
    [InlineData("135-24", "135-24")]
    [InlineData("a b", null)]
    [InlineData("", null)]
    public void A_size_or_a_name_can_be_what_a_format_is_called(string text, string? code) =>
        Assert.Equal(code, Format.CodeOf(text));

    [Theory]
    [InlineData("4X5in", "4x5")]
    [InlineData(" Postcard", "postcard")]
    public void It_is_called_the_same_whoever_makes_it(string text, string code) =>
        Assert.Equal(code, new Format(text, Area.Unit80).Code);

    [Fact]
    public void A_format_always_has_an_area() => Gens.Format.Sample(format => format.Area > Area.Zero);

    [Fact]
    public void The_common_ones_are_read_from_their_own_names() => Assert.All(Format.Common, format =>
        Assert.Equal(format, Format.Parse(format.Code)));
}
