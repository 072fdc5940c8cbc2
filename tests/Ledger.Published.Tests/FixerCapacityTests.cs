namespace Ledger.Published.Tests;

/// <summary>
/// What a litre of fixer takes, as handbooks and workers print it. The program holds none of it: it is a user's
/// setting.
/// </summary>
public sealed class FixerCapacityTests
{
    private static readonly LocalDate Today = new(2026, 3, 15);

    /// <summary>A fresh bath of conventional film, counted three ways.</summary>
    [Published("Anchell, S.: The Darkroom Cookbook, 3rd ed., Focal Press 2008, p. 108: acid fixer, alkaline fixer, and "
        + "acid by the book's gallon of 4.0 l",
        Columns = "units")]
    private const string Rules = """
        litres | units per litre | units | sq in | 4x5 | 8x10
        1      | 20              | 20    | 1600  | 80  | 20
        1      | 25              | 25    | 2000  | 100 | 25
        4.0    | 20              | 80    | 6400  | 320 | 80
        """;

    [Fact]
    public void A_fresh_bath_takes_the_printed_load() => Assert.All(Table.Read(Rules), row =>
    {
        var reading = Fresh(row.Number("units per litre") * 80, row.Number("litres"));
        Assert.Equal(row.Number("sq in"), reading.Remaining!.Value.SquareInches);
        Assert.Equal(row.Number("units"), reading.Remaining.Value.SquareInches / 80);
        Assert.Equal(row.Count("4x5"), reading.RemainingSheets(Format.Parse("4x5")));
        Assert.Equal(row.Count("8x10"), reading.RemainingSheets(Format.Parse("8x10")));
        Assert.Equal(row.Count("8x10"), reading.RemainingSheets(Format.Parse("120")));
    });

    [Fact]
    public void Ten_sheets_of_11x14_exhaust_a_litre_of_20_units() =>
        // Common practice counts two units a sheet: 20 / 2. By exact areas it is 10.39, and sheets are never rounded
        // up.
        Assert.Equal(10, Fresh(1600, 1).RemainingSheets(Format.Parse("11x14")));

    [Fact]
    public void Tabular_film_has_half_to_seven_tenths_of_the_capacity()
    {
        // Common practice, no source: 50 to 70 % of the normal capacity. At two thirds, the usual factor of 1.5, 100
        // sheets are 66 and never rounded up to 67.
        var (fresh, sheet) = (Fresh(2000, 1), Format.Parse("4x5"));
        var usual = fresh.RemainingSheets(sheet)!.Value;
        Assert.Equal((100, 66), (usual, fresh.RemainingSheets(sheet, 1500)));
        Assert.InRange(fresh.RemainingSheets(sheet, 1500)!.Value, usual * 50 / 100, usual * 70 / 100);
    }

    [Fact]
    public void A_mixed_load_of_two_films_leaves_13_75_units()
    {
        // Arithmetic: 30 conventional 4x5 are 7.5 units, 10 tabular ones count 3.75; 11.25 of 25 are used.
        var sheet = Format.Parse("4x5").Area;
        var work = sheet * 30 + (sheet * 10).Weighted(1500);
        var reading = Fresh(2000, 1, work);
        Assert.Equal(11.25m, work.SquareInches / 80);
        Assert.Equal(13.75m, reading.Remaining!.Value.SquareInches / 80);
        Assert.Equal(1100m, reading.Remaining.Value.SquareInches);
        Assert.Equal(55, reading.RemainingSheets(Format.Parse("4x5")));
        Assert.Equal(45m, reading.UsedPercent);
        Assert.Equal(900m, reading.ThroughputSquareInchesPerLitre);
    }

    private static BathReading Fresh(decimal squareInchesPerLitre, decimal litres, Area worked = default) => new(
        new Bath
        {
            Place = new(100),
            Code = "fix",
            Item = "fixer",
            Role = ItemRole.Fixer,
            Material = BathMaterial.Film,
            WorkingVolume = Volume.FromMillilitres(litres * 1000),
            Dilution = Dilution.Parse("1+4"),
            MixedOn = Today,
            Capacity = new(Area.FromSquareInches(squareInchesPerLitre), "handbook"),
            Worked = worked,
            WorkedWeighted = worked,
        },
        Today);
}
