namespace Ledger.Core.Tests.Measures;

public sealed class QuantityTests
{
    private const string Texts = """
        value | unit       | text         | fluid ounces
        31.25 | Millilitre | 31.25 ml     | 1.06 fl oz
        0     | Millilitre | 0 ml         | 0 fl oz
        -0.05 | Millilitre | -0.05 ml     | 0 fl oz
        30    | Gram       | 30 g         | 30 g
        0.5   | Gram       | 0.5 g        | 0.5 g
        1     | Sheet      | 1 sheet      | 1 sheet
        4     | Sheet      | 4 sheets     | 4 sheets
        0     | Sheet      | 0 sheets     | 0 sheets
        -1    | Sheet      | -1 sheet     | -1 sheet
        2     | Roll       | 2 rolls      | 2 rolls
        50    | Piece      | 50 pieces    | 50 pieces
        """;

    [Fact]
    public void It_prints_in_the_users_units() => Assert.All(Table.Read(Texts), row =>
    {
        var quantity = Quantity.Of(row.Number("value"), Enum.Parse<Unit>(row["unit"]));
        Assert.Equal(row["text"], quantity.ToString());
        Assert.Equal(row["fluid ounces"], quantity.ToText(new(UsesFluidOunces: true)));
        Assert.Equal(row.Number("value"), quantity.Value);
    });

    [Fact]
    public void Unlike_units_are_neither_added_nor_compared()
    {
        var (millilitres, grams) = (Quantity.Of(1, Unit.Millilitre), Quantity.Of(1, Unit.Gram));
        Assert.Throws<ArgumentException>(() => millilitres + grams);
        Assert.Throws<ArgumentException>(() => millilitres - grams);
        Assert.Throws<ArgumentException>(() => millilitres < grams);
    }

    [Fact]
    public void Half_a_sheet_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Quantity.Of(0.5m, Unit.Sheet));

    [Fact]
    public void Every_unit_is_found_by_its_name()
    {
        Assert.All(Enum.GetValues<Unit>(), unit => Assert.Equal(unit, Units.Named(unit.Name().ToUpperInvariant())));
        Assert.Null(Units.Named("litre"));
    }

    [Theory]
    [InlineData(4_975, Unit.Millilitre, "4.98 ml")]
    [InlineData(11_429, Unit.Millilitre, "11.43 ml")]
    [InlineData(6_250, Unit.Millilitre, "6.25 ml")]
    [InlineData(4, Unit.Millilitre, "less than 0.01 ml")]
    [InlineData(0, Unit.Millilitre, "0 ml")]
    [InlineData(1_234, Unit.Gram, "1.23 g")]
    [InlineData(1, Unit.Sheet, "1 sheet")]
    public void People_read_no_more_than_they_can_measure_and_nothing_is_lost(long quantity, Unit unit, string text)
    {
        Assert.Equal(text, new Quantity(quantity, unit).ToText(MeasureStyle.Metric));
        Assert.Equal(
            quantity,
            Scaled.ToBase(decimal.Parse(new Quantity(quantity, unit).ToString().Split(' ')[0],
                CultureInfo.InvariantCulture), unit.BasePerUnit()));
    }
}
