using Ledger.Core.Baths;
using Ledger.Core.Measures;
using Ledger.Core.Stock;
using Ledger.Published.Tests.Support;
using NodaTime;

namespace Ledger.Published.Tests;

/// <summary>What a litre of fixer takes, as handbooks and workers print it. The program holds none of it: it is a user's setting.</summary>
public sealed class FixerCapacityTests
{
    private static readonly LocalDate Today = new(2026, 3, 15);

    /// <summary>A fresh bath of conventional film, counted three ways.</summary>
    private const string Rules = """
        row            | litres | units per litre | units | sq in | 4x5 | 8x10 | source
        FIX-03         | 1      | 20              | 20    | 1600  | 80  | 20   | The Darkroom Cookbook, 3rd ed., p. 108: acid fixer
        FIX-04         | 1      | 25              | 25    | 2000  | 100 | 25   | The Darkroom Cookbook, 3rd ed., p. 108: alkaline fixer
        FIX-05         | 4.0    | 20              | 80    | 6400  | 320 | 80   | the same, by the book's gallon of 4.0 l
        FIX-18/19/20   | 1      | 25              | 25    | 2000  | 100 | 25   | Photrio thread 173741, post 2259812
        FIX-25         | 1      | 20              | 20    | 1600  | 80  | 20   | darkroom wiki, page FixerCapacity: rapid fixer at 1+4
        FIX-30/C-EQV-04 | 1     | 20              | 20    | 1600  | 80  | 20   | article on managing fixer exhaustion: 1 l at 1+3
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
        // C-EQV-05, article on managing fixer exhaustion: 20 units / 2. By exact areas it is 10.39, and sheets are never rounded up.
        Assert.Equal(10, Fresh(1600, 1).RemainingSheets(Format.Parse("11x14")));

    /// <summary>
    /// Film with tabular grain loads a fixer more: two thirds of 25 units, of 2000 sq in and of 100 sheets, which the source rounds
    /// (Photrio thread 173741, post 2259812). Sheets left are never rounded up, so 66.67 sheets are 66.
    /// </summary>
    private const string Tabular = """
        row    | counted in     | printed | sheets left
        FIX-21 | units of 80    | 17      | 16
        FIX-22 | sheets of 4x5  | 67      | 66
        FIX-23 | square inches  | 1333    | 1333
        """;

    [Fact]
    public void Tabular_film_has_two_thirds_of_the_capacity() => Assert.All(Table.Read(Tabular), row =>
    {
        var reading = Fresh(2000, 1);
        var format = Format.Parse(row["counted in"] switch { "units of 80" => "8x10", "sheets of 4x5" => "4x5", _ => "1x1in" });
        var exact = (decimal)reading.Remaining!.Value.Hundredths / format.Area.Weighted(1500).Hundredths;
        Printed.Agrees(row, "printed", exact);
        Assert.Equal(row.Count("sheets left"), reading.RemainingSheets(format, 1500));
        Assert.True(reading.RemainingSheets(format, 1500) <= exact);
    });

    [Fact]
    public void The_two_thirds_lie_in_the_published_range()
    {
        // FIX-26 and FIX-27, darkroom wiki, page FixerCapacity: 0.5 to 0.7 of the normal capacity.
        var (fresh, sheet) = (Fresh(2000, 1), Format.Parse("4x5"));
        Assert.Equal(50, fresh.RemainingSheets(sheet, 2000));
        Assert.Equal(66, fresh.RemainingSheets(sheet, 1500));
        Assert.Equal(69, fresh.RemainingSheets(sheet, 1429));
    }

    [Fact]
    public void A_bath_with_a_capacity_of_1333_square_inches_takes_66_whole_sheets() =>
        // FIX-22 and FIX-23: 1333 / 20 = 66.65, printed as 67.
        Assert.Equal(66, Fresh(1333, 1).RemainingSheets(Format.Parse("4x5")));

    [Fact]
    public void A_mixed_load_of_two_films_leaves_13_75_units()
    {
        // Derived, worked-examples D2: 30 conventional 4x5 are 7.5 units, 10 tabular ones count 3.75; 11.25 of 25 are used.
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
