namespace Ledger.Published.Tests;

/// <summary>Areas of formats, and the unit of 80 sq in by which a fixer's work is counted.</summary>
public sealed class FormatTests
{
    /// <summary>One unit. A roll's area is a convention.</summary>
    [Published("Anchell, S.: The Darkroom Cookbook, 3rd ed., Focal Press 2008, p. 108", Columns = "makes one unit")]
    private const string Equivalences = """
        format | makes one unit
        135-36 | 1
        120    | 1
        8x10   | 1
        4x5    | 4
        """;

    [Fact]
    public void So_many_of_a_format_make_80_square_inches() => Assert.All(Table.Read(Equivalences), row =>
    {
        Assert.Equal(80m, (Format.Parse(row["format"]).Area * row.Count("makes one unit")).SquareInches);
        Assert.Equal(Area.Unit80, Format.Parse(row["format"]).Area * row.Count("makes one unit"));
    });

    /// <summary>
    /// Areas of nominal sizes at 6.4516 cm² to the square inch: arithmetic. Two cells are finer than base units: the
    /// half plate (0.3859375 units) lies half a base unit beside a whole one, and 80 sq in are 516.128/234 = 2.205675
    /// sheets of 13x18cm.
    /// </summary>
    private const string Areas = """
        format     | sq in       | units of 80 | sheets per unit
        4x5        | 20          | 0.25        | 4
        5x7        | 35          | 0.4375      | 2.285714
        8x10       | 80          | 1           | 1
        11x14      | 154         | 1.925       | 0.519481
        4.75x6.5in | 30.875      | 0.385938    | 2.59109
        9x12cm     | 16.74003348 | 0.20925042  | 4.778963
        13x18cm    | 36.27007254 | 0.45337591  | 2.205675
        18x24cm    | 66.96013392 | 0.83700167  | 1.194741
        """;

    [Fact]
    public void A_format_has_the_area_of_its_nominal_size() => Assert.All(Table.Read(Areas), row =>
    {
        var area = Format.Parse(row["format"]).Area;
        Printed.Agrees(row, "sq in", area.SquareInches);
        Printed.Agrees(row, "units of 80", area.SquareInches / 80);
        Printed.Agrees(row, "sheets per unit", (decimal)Area.Unit80.Hundredths / area.Hundredths);
    });

    /// <summary>The same sizes in the other system, in whole millimetres or tenths.</summary>
    [Published("Design215: Film formats chart (read 2025), nominal sizes in inches and millimetres", Columns = "other")]
    private const string Sizes = """
        format    | other       | differs by less than
        4x5       | 102x127mm   | 0.01
        5x7       | 127x178mm   | 0.01
        8x10      | 203x254mm   | 0.01
        4.75x6.5  | 12x16.5cm   | 0.01
        13x18cm   | 5.1x7.1in   | 0.01
        2.5x3.5   | 63.5x88.9mm | 0.0000001
        2.25x3.25 | 57x82mm     | 0.02
        """;

    [Fact]
    public void A_size_in_inches_is_the_size_in_millimetres() => Assert.All(Table.Read(Sizes), row =>
    {
        var (one, other) = (Format.Parse(row["format"]).Area.SquareInches,
            Format.Parse(row["other"]).Area.SquareInches);
        Assert.InRange(Math.Abs(one / other - 1), 0, row.Number("differs by less than"));
    });

    /// <summary>
    /// 1 + 2 + 3 + 4 + 10 = 20 units, where an 11x14 is counted as two units, as is common practice; by its exact area
    /// of 1.925 units the load is 19.625.
    /// </summary>
    private const string MixedLoad = """
        format | sheets | units printed | units exact
        135-36 | 1      | 1             | 1
        120    | 2      | 2             | 2
        4x5    | 12     | 3             | 3
        8x10   | 4      | 4             | 4
        11x14  | 5      | 10            | 9.625
        """;

    [Fact]
    public void A_mixed_load_adds_up_to_19_625_units()
    {
        var load = Area.Zero;
        Assert.All(Table.Read(MixedLoad), row =>
        {
            var area = Format.Parse(row["format"]).Area * row.Count("sheets");
            Assert.Equal(row.Number("units exact"), area.SquareInches / 80);
            Assert.InRange(area.SquareInches / 80, row.Number("units printed") - 0.375m, row.Number("units printed"));
            load += area;
        });
        Assert.Equal(20m, Table.Read(MixedLoad).Sum(row => row.Number("units printed")));
        Assert.Equal(19.625m, load.SquareInches / 80);
        Assert.Equal(1570m, load.SquareInches);
    }
}
