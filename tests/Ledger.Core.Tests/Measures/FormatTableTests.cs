namespace Ledger.Core.Tests.Measures;

public sealed class FormatTableTests
{
    private readonly FormatTable _table = new();

    [Fact]
    public void A_new_table_knows_the_common_formats_and_every_size()
    {
        Assert.Equal(Format.Common.Order(Comparer), _table.All.Order(Comparer));
        Assert.Equal(119m, _table.Find("7x17in").Area.SquareInches);
        Assert.Equal("\"220\" is not a format; write one such as 4x5, 8x10, 13x18cm, 120, 135-36, 7x17in or 100x125mm",
            Assert.Throws<FormatException>(() => _table.Find("220")).Message);
    }

    [Fact]
    public void The_users_area_takes_the_place_of_the_usual_one_and_it_stays_the_same_format()
    {
        _table.Put(new("120", Area.FromSquareInches(76), Unit.Roll));
        Assert.Equal(76m, _table.Find(" 120 ").Area.SquareInches);
        Assert.Equal(Format.Parse("120"), _table.Find("120"));
        Assert.Equal(Format.Common.Count, _table.All.Count);
        Assert.True(_table.IsOwn(_table.Find("120")));
        Assert.False(_table.IsOwn(_table.Find("135-36")));
    }

    [Fact]
    public void A_format_of_the_users_own_is_found_in_any_case_and_named_when_another_is_not()
    {
        _table.Put(new("postcard", Area.Read("134.75 cm2")!.Value));
        Assert.Equal(134.75m, _table.Find("Postcard").Area.SquareCentimetres);
        Assert.EndsWith("or one of your own: postcard",
            Assert.Throws<FormatException>(() => _table.Find("letter")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("80", 80)]
    [InlineData("80 sqin", 80)]
    [InlineData("80 sq in", 80)]
    [InlineData("516.128 cm2", 80)]
    [InlineData("516.128cm²", 80)]
    [InlineData("0.5 SQIN", 0.5)]
    public void An_area_is_read_in_both_units(string text, double squareInches) =>
        Assert.Equal((decimal)squareInches, Area.Read(text)!.Value.SquareInches);

    [Theory]
    [InlineData("")]
    [InlineData("cm2")]
    [InlineData("80 m2")]
    [InlineData("-80")]
    [InlineData("0")]
    [InlineData("80,5")]
    [InlineData("8 0")]
    [InlineData("1000000")]
    [InlineData("٨٠")]
    public void What_is_no_area_is_not_read(string text) => Assert.Null(Area.Read(text));

    private static readonly Comparer<Format> Comparer =
        Comparer<Format>.Create((left, right) => string.CompareOrdinal(left.Code, right.Code));
}
