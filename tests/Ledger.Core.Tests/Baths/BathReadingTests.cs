using CsCheck;

namespace Ledger.Core.Tests.Baths;

public sealed class BathReadingTests
{
    /// <summary>
    /// A bath of 1500 ml at 2000 sq in per litre, mixed 10 January, with a life of 60 days: good until 11 March.
    /// </summary>
    private const string Ends = """
        worked | on         | used % | left | 8x10 left | 4x5 left at 1.5 | ended by
        0      | 2026-01-10 | 0      | 3000 | 37        | 100             |
        1600   | 2026-01-20 | 53.33  | 1400 | 17        | 46              |
        2960   | 2026-01-20 | 98.67  | 40   | 0         | 1               |
        2999   | 2026-03-11 | 99.97  | 1    | 0         | 0               |
        3000   | 2026-01-20 | 100    | 0    | 0         | 0               | Area
        3200   | 2026-01-20 | 106.67 | 0    | 0         | 0               | Area
        1600   | 2026-03-11 | 53.33  | 1400 | 17        | 46              |
        1600   | 2026-03-12 | 53.33  | 1400 | 0         | 0               | Age
        3000   | 2026-03-12 | 100    | 0    | 0         | 0               | Area
        """;

    [Fact]
    public void It_ends_by_area_or_by_age_whichever_comes_first() => Assert.All(Table.Read(Ends), row =>
    {
        var bath = Some.Bath(row.Number("worked")) with { Keeping = new(WorkingFullDays: 60) };
        var reading = new BathReading(bath, Dates.Parse(row["on"])!.Value);
        Assert.Equal(row.Number("used %"), Math.Round(reading.UsedPercent!.Value, 2));
        Assert.Equal(row.Number("left"), reading.Remaining!.Value.SquareInches);
        Assert.Equal(row.Count("8x10 left"), reading.RemainingSheets(Format.Parse("8x10")));
        Assert.Equal(row.Count("4x5 left at 1.5"), reading.RemainingSheets(Format.Parse("4x5"), 1500));
        Assert.Equal(row["ended by"], reading.EndedBy?.ToString() ?? "");
        Assert.Equal(reading.EndedBy is not null, reading.IsUnusable);
    });

    [Fact]
    public void Without_a_capacity_nothing_is_claimed()
    {
        var reading = new BathReading(Some.Bath(5000) with { Capacity = null }, Some.Today);
        Assert.Null(reading.Remaining);
        Assert.Null(reading.UsedPercent);
        Assert.Null(reading.RemainingSheets(Format.Parse("8x10")));
        Assert.Null(reading.EndedBy);
        Assert.Null(reading.Fits(Area.FromSquareInches(100_000)));
    }

    [Fact]
    public void Sheets_left_are_never_rounded_up() =>
        Gen.Select(Gen.Long[0, 200_000_000], Gens.Format, Gen.Int[100, 10_000]).Sample((worked, format, weight) =>
        {
            var reading = new BathReading(Some.Bath() with { WorkedWeighted = Area.FromHundredths(worked) },
                Some.Today);
            var sheets = reading.RemainingSheets(format, weight)!.Value;
            var area = format.Area.Weighted(weight);
            Assert.True(area * sheets <= reading.Remaining!.Value);
            Assert.True(reading.Fits((format.Area * sheets).Weighted(weight)) == true || sheets == 0);
            Assert.True(reading.IsUnusable || area * (sheets + 1) > reading.Remaining.Value);
        });

    [Fact]
    public void What_is_worked_and_what_is_left_are_the_capacity() =>
        Gen.Long[0, 400_000_000].Select(Area.FromHundredths).Sample(worked =>
        {
            var reading = new BathReading(Some.Bath() with { WorkedWeighted = worked }, Some.Today);
            Assert.True(reading.Remaining!.Value + worked >= reading.Bath.TotalCapacity!.Value);
            Assert.Equal(reading.UsedPercent >= 100, reading.Remaining == Area.Zero);
        });

    [Theory]
    [InlineData(1400, true)]
    [InlineData(1401, false)]
    public void A_session_fits_up_to_the_last_square_inch(int squareInches, bool fits) => Assert.Equal(
        fits, new BathReading(Some.Bath(1600), Some.Today).Fits(Area.FromSquareInches(squareInches)));

    [Fact]
    public void Throughput_is_weighted_area_per_litre()
    {
        var bath = Some.Bath(1600) with { WorkedWeighted = Area.FromSquareInches(1800) };
        Assert.Equal(1200m, new BathReading(bath, Some.Today).ThroughputSquareInchesPerLitre);
        Assert.Equal(64, new BathReading(bath, Some.Today).AgeDays);
    }

    [Fact]
    public void Ends_and_materials_have_names()
    {
        Assert.Equal(["area", "age", "test", "sight", "replenisher"],
            Enum.GetValues<BathEnd>().Select(end => end.Name()));
        Assert.Equal(["film", "paper"], Enum.GetValues<BathMaterial>().Select(material => material.Name()));
    }
}
