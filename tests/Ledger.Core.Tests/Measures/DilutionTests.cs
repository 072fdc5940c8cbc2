using CsCheck;

namespace Ledger.Core.Tests.Measures;

public sealed class DilutionTests
{
    private const string Written = """
        text          | is
        1+39          | 1+39
        1 + 39        | 1+39
        1+0           | 1+0
        1.50+1        | 1.5+1
        1+1+100       | 1+1+100
        0.5+24.5      | 0.5+24.5
        100000+100000 | 100000+100000
        0.000001+1    | 0.000001+1
        """;

    [Fact]
    public void It_is_read_from_parts_with_a_plus() => Assert.All(Table.Read(Written), row =>
        Assert.Equal(row["is"], Dilution.Parse(row["text"]).Text));

    private const string Refused = """
        text         | because
        1:4          | "1:4" is read two ways: write 1+4 if the second figure is the water, or 1+3 if it is all parts together
        1 : 39       | "1:39" is read two ways: write 1+39
        4:1          | "4:1" is not a dilution
        1:1:100      | "1:1:100" is not a dilution
        :            | ":" is not a dilution
                     | "" is not a dilution
        31           | "31" is not a dilution; write the parts with a plus, such as 1+39 (1+0 is undiluted)
        1+           | not a dilution
        +31          | not a dilution
        1++31        | not a dilution
        0+31         | not a dilution
        1+-31        | not a dilution
        1+31ml       | not a dilution
        1,5+10       | not a dilution
        1e2+10       | not a dilution
        1+100001     | not a dilution
        0.0000001+1  | not a dilution
        1+0.12345678 | not a dilution
        stock        | not a dilution
        """;

    [Fact]
    public void It_is_refused_in_a_sentence() => Assert.All(Table.Read(Refused), row =>
    {
        Assert.False(Dilution.TryParse(row["text"], out var dilution, out var problem));
        Assert.Null(dilution);
        Assert.Contains(row["because"], problem, StringComparison.Ordinal);
        Assert.Equal(problem, Assert.Throws<FormatException>(() => Dilution.Parse(row["text"])).Message);
    });

    [Theory]
    [InlineData("1:4", RatioReading.PartsOfWater, "1+4")]
    [InlineData("1:4", RatioReading.PartsInAll, "1+3")]
    [InlineData("2:5", RatioReading.PartsInAll, "2+3")]
    [InlineData("1:1", RatioReading.PartsInAll, "1+0")]
    public void A_ratio_is_read_as_the_user_says(string ratio, RatioReading reading, string dilution) =>
        Assert.Equal(dilution, Dilution.FromRatio(ratio, reading).Text);

    [Theory]
    [InlineData("4:1")]
    [InlineData("1+4")]
    [InlineData("1:2:3")]
    [InlineData("a:b")]
    public void What_is_no_ratio_is_refused(string ratio) =>
        Assert.Throws<FormatException>(() => Dilution.FromRatio(ratio, RatioReading.PartsInAll));

    [Fact]
    public void Source_and_water_are_the_total() => Gen.Select(Gens.Dilution, Gens.Volume).Sample((dilution, total) =>
    {
        var sum = dilution.WaterIn(total);
        for (var part = 0; part < dilution.PartCount - 1; part++)
            sum += dilution.SourceIn(total, part);
        Assert.Equal(total, sum);
    });

    [Fact]
    public void Each_part_is_within_a_microlitre_of_its_share() =>
        Gen.Select(Gens.Dilution, Gens.Volume).Sample((dilution, total) =>
        {
            var parts = dilution.Text.Split('+')
                .Select(part => decimal.Parse(part, CultureInfo.InvariantCulture)).ToList();
            for (var part = 0; part < parts.Count - 1; part++)
                Assert.InRange(dilution.SourceIn(total, part).Microlitres
                    - total.Microlitres * parts[part] / parts.Sum(), -1m, 1m);
        });

    [Fact]
    public void Two_concentrates_without_water_share_an_odd_total()
    {
        var dilution = Dilution.Parse("1+1+0");
        var total = Volume.FromMicrolitres(3);
        Assert.Equal(total, dilution.SourceIn(total) + dilution.SourceIn(total, 1));
        Assert.Equal(default, dilution.WaterIn(total));
    }

    [Fact]
    public void The_total_of_a_source_needs_that_source() =>
        Gen.Select(Gen.Int[0, 99], Gen.Long[0, 1_000_000_000]).Sample((water, microlitres) =>
        {
            var dilution = Dilution.Parse($"1+{water}");
            var source = Volume.FromMicrolitres(microlitres);
            Assert.Equal(source, dilution.SourceIn(dilution.TotalFrom(source)));
        });

    [Fact]
    public void A_part_that_is_not_there_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Dilution.Parse("1+4")
            .SourceIn(Volume.FromMillilitres(100), 2));

    [Fact]
    public void Two_are_equal_when_they_are_written_the_same()
    {
        Assert.Equal(Dilution.Parse("1 + 4.0"), Dilution.Parse("1+4"));
        Assert.Equal(Dilution.Parse("1 + 4.0").GetHashCode(), Dilution.Parse("1+4").GetHashCode());
        Assert.NotEqual(Dilution.Parse("2+8"), Dilution.Parse("1+4"));
    }
}
