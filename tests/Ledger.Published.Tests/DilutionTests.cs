using Ledger.Core.Measures;
using Ledger.Published.Tests.Support;

namespace Ledger.Published.Tests;

/// <summary>Dilutions as manufacturers, manuals and handbooks print them.</summary>
public sealed class DilutionTests
{
    private const decimal MillilitresPerFluidOunce = 29.5735295625m;

    /// <summary>What a dilution takes, in the unit of the source; 1 µl is the finest that is kept.</summary>
    private const string Mixtures = """
        row      | dilution | unit  | total | concentrate | water | source
        DIL-01/2 | 1+4      | ml    | 300   | 60          | 240   | ADOX partner page (Silversalt Japan), dilution notes
        DIL-07   | 1+4      | l     | 25    | 5           | 20    | X-ray chemistry guide of Waygate (Baker Hughes)
        DIL-08   | 28+71.5  | fl oz | 32    | 9.0         | 23    | US Army subcourse SS0513: 28 % from 99.5 %
        DIL-09   | 3+8      | fl oz | 11    | 3           | 8     | US Navy NAVEDTRA 14209: 28 % from 99.5 % by parts
        DIL-10   | 1+27     | ml    | 28    | 1           | 27    | J. B. H., Diluting percent solutions: 28 % to 1 % by the cross
        C-DIL-01 | 1+19     | l     | 1     | 0.050       | 0.950 | photographer's blog: stop bath for one litre
        C-DIL-13 | 1+9      | fl oz | 20    | 2           | 18    | personal processing note: a 20 oz tank
        C-DIL-14 | 1+4      | fl oz | 20    | 4           | 16    | personal processing note: what a true 1+4 is
        C-DIL-20 | 3+8      | ml    | 550   | 150.0       | 400.0 | The Darkroom Cookbook, 3rd ed., p. 170
        C-DIL-09 | 1+15     | fl oz | 32    | 2           | 30    | general dilution conversion chart: a quart
        C-DIL-11 | 1+4      | fl oz | 640   | 128         | 512   | general dilution conversion chart: five gallons
        - derived from total / (1 + n); printed by nobody seen
        derived  | 1+39     | ml    | 1000  | 25          | 975    | worked-examples D3
        derived  | 1+9      | ml    | 1000  | 100         | 900    | worked-examples D3
        derived  | 1+19     | ml    | 1000  | 50          | 950    | worked-examples D3
        derived  | 1+4      | ml    | 1000  | 200         | 800    | worked-examples D3
        """;

    [Fact]
    public void A_mixture_takes_the_printed_concentrate_and_water() => Assert.All(Table.Read(Mixtures), row =>
    {
        var dilution = Dilution.Parse(row["dilution"]);
        var unit = row["unit"] switch { "ml" => 1m, "l" => 1000m, _ => MillilitresPerFluidOunce };
        var total = Of(row.Number("total") * unit);
        Printed.Agrees(row, "concentrate", Math.Round(dilution.SourceIn(total).Millilitres / unit, 4));
        Printed.Agrees(row, "water", Math.Round(dilution.WaterIn(total).Millilitres / unit, 4));
        Assert.Equal(total, dilution.SourceIn(total) + dilution.WaterIn(total));
    });

    /// <summary>The colon is read two ways: DIL-03 and DIL-05 count all parts, DIL-06 and the charts count the water.</summary>
    private const string Ratios = """
        row      | ratio | read as      | is    | total ml | concentrate ml | source
        DIL-03   | 1:4   | PartsInAll   | 1+3   | 300      | 75             | ADOX partner page (Silversalt Japan)
        DIL-04   | 1:5   | PartsInAll   | 1+4   | 300      | 60             | ADOX partner page: 1+4 equals 1:5
        DIL-05   | 1:1   | PartsInAll   | 1+0   | 300      | 300            | ADOX partner page: 1:1 is undiluted
        D3       | 1:4   | PartsOfWater | 1+4   | 300      | 60             | the other reading of the same label
        DIL-06   | 1:9   | PartsOfWater | 1+9   | 1000     | 100            | APUG post 3048: a tenth made up to the whole
        C-DIL-10 | 1:50  | PartsOfWater | 1+50  | 5100     | 100            | general dilution conversion chart
        """;

    [Fact]
    public void A_ratio_has_two_readings() => Assert.All(Table.Read(Ratios), row =>
    {
        var dilution = Dilution.FromRatio(row["ratio"], Enum.Parse<RatioReading>(row["read as"]));
        Assert.Equal(row["is"], dilution.Text);
        Assert.Equal(row.Number("concentrate ml"), dilution.SourceIn(Of(row.Number("total ml"))).Millilitres);
    });

    [Fact]
    public void A_ratio_is_never_read_without_asking()
    {
        Assert.False(Dilution.TryParse("1:4", out _, out var problem));
        Assert.Contains("1+4", problem, StringComparison.Ordinal);
        Assert.Contains("1+3", problem, StringComparison.Ordinal);
    }

    /// <summary>How much working solution so much of the source makes.</summary>
    private const string Totals = """
        row      | dilution | source | makes | unit     | source of the figure
        DIL-14   | 32+64    | 32     | 96    | fl oz    | Practical Photography: tank or stand developing, part 3
        C-DIL-12 | 1+32     | 1      | 33    | any unit | general dilution conversion chart
        """;

    [Fact]
    public void A_source_makes_the_printed_total() => Assert.All(Table.Read(Totals), row =>
        Assert.Equal(row.Number("makes") * 1000, Dilution.Parse(row["dilution"]).TotalFrom(Of(row.Number("source") * 1000)).Millilitres));

    /// <summary>The strength of what is made, in per cent.</summary>
    private const string Strengths = """
        row      | from  | dilution | gives | source
        DIL-09   | 99.5  | 3+8      | 27.1  | US Navy NAVEDTRA 14209 calls it 28 %
        DIL-10   | 28    | 1+27     | 1     | J. B. H., Diluting percent solutions
        C-DIL-20 | 99.5  | 3+8      | 27.1  | The Darkroom Cookbook, 3rd ed., p. 170
        """;

    [Fact]
    public void A_strength_follows_from_the_parts() => Assert.All(Table.Read(Strengths), row =>
    {
        var total = Of(1_000_000);
        Printed.Agrees(row, "gives", row.Number("from") * Dilution.Parse(row["dilution"]).SourceIn(total).Millilitres / total.Millilitres);
    });

    /// <summary>A powder by the litre, scaled to the volume that is made: APUG post 1444718, formula D316.</summary>
    private const string Powders = """
        row    | g per litre | ml  | g
        DIL-13 | 22.8        | 250 | 5.7
        DIL-13 | 45          | 250 | 11.25
        """;

    [Fact]
    public void A_powder_scales_with_the_volume() => Assert.All(Table.Read(Powders), row =>
    {
        var perLitre = Quantity.Of(row.Number("g per litre"), Unit.Gram);
        var needed = Share.Nearest(perLitre.Base, Of(row.Number("ml")).Microlitres, 1_000_000);
        Assert.Equal(Quantity.Of(row.Number("g"), Unit.Gram), perLitre with { Base = needed });
    });

    private static Volume Of(decimal millilitres) =>
        Volume.FromMicrolitres(decimal.ToInt64(Math.Round(millilitres * 1000, MidpointRounding.AwayFromZero)));
}
