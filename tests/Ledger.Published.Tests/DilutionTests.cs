namespace Ledger.Published.Tests;

/// <summary>Dilutions as manufacturers, manuals and handbooks print them.</summary>
public sealed class DilutionTests
{
    private const decimal MillilitresPerFluidOunce = 29.5735295625m;

    /// <summary>What a dilution takes, in the unit of the source; 1 µl is the finest that is kept.</summary>
    [Published("Named in each row: manuals, a handbook and makers' pages, as read in 2025",
        Columns = "concentrate, water")]
    private const string Mixtures = """
        dilution | unit  | total | concentrate | water | source
        1+4      | ml    | 300   | 60          | 240   | Silversalt Japan: ADOX dilution notes (partner's page)
        1+4      | l     | 25    | 5           | 20    | Waygate Technologies (Baker Hughes): X-ray film chemicals, Agfa G128 in a 25 l tank
        28+71.5  | fl oz | 32    | 9.0         | 23    | US Army correspondence subcourse SS0513: 28 % acetic acid from 99.5 %
        3+8      | fl oz | 11    | 3           | 8     | US Navy training course NAVEDTRA 14209: 28 % acetic acid from 99.5 % by parts
        3+8      | ml    | 550   | 150.0       | 400.0 | Anchell, S.: The Darkroom Cookbook, 3rd ed., Focal Press 2008, p. 170
        """;

    /// <summary>total / (1 + n), by nobody seen in print.</summary>
    private const string Arithmetic = """
        dilution | unit  | total | concentrate | water
        1+39     | ml    | 1000  | 25          | 975
        1+9      | ml    | 1000  | 100         | 900
        1+19     | ml    | 1000  | 50          | 950
        1+49     | ml    | 1250  | 25          | 1225
        1+27     | ml    | 28    | 1           | 27
        """;

    [Fact]
    public void A_mixture_takes_what_follows_from_its_parts() => Assert.All(Table.Read(Arithmetic), TakesIts);

    [Fact]
    public void A_mixture_takes_the_printed_concentrate_and_water() => Assert.All(Table.Read(Mixtures), TakesIts);

    [Fact]
    [Published("Forum thread apug.org forum37 no. 100892, citing Kodak J-86 (read 2025): 1.5 fl oz at 1+4 hold 0.3 fl "
        + "oz, 8.9 ml of concentrate", Values = 2)]
    public void A_dose_of_replenisher_holds_the_printed_concentrate()
    {
        var concentrate = Dilution.Parse("1+4").SourceIn(Of(1.5m * MillilitresPerFluidOunce));
        Assert.Equal(0.3m, Math.Round(concentrate.Millilitres / MillilitresPerFluidOunce, 4));
        Assert.Equal(8.9m, Math.Round(concentrate.Millilitres, 1));
    }

    private static void TakesIts(Row row)
    {
        var dilution = Dilution.Parse(row["dilution"]);
        var unit = row["unit"] switch { "ml" => 1m, "l" => 1000m, _ => MillilitresPerFluidOunce };
        var total = Of(row.Number("total") * unit);
        Printed.Agrees(row, "concentrate", Math.Round(dilution.SourceIn(total).Millilitres / unit, 4));
        Printed.Agrees(row, "water", Math.Round(dilution.WaterIn(total).Millilitres / unit, 4));
        Assert.Equal(total, dilution.SourceIn(total) + dilution.WaterIn(total));
    }

    /// <summary>
    /// The colon is read two ways: by one maker's partner as all parts, in most manuals as the water.
    /// </summary>
    [Published("Silversalt Japan: ADOX dilution notes (partner's page, read 2025): 1+4 equals 1:5, 1:1 is undiluted",
        Columns = "is, concentrate ml")]
    private const string AllParts = """
        ratio | read as      | is    | total ml | concentrate ml
        1:4   | PartsInAll   | 1+3   | 300      | 75
        1:5   | PartsInAll   | 1+4   | 300      | 60
        1:1   | PartsInAll   | 1+0   | 300      | 300
        """;

    /// <summary>The other reading of the same figures: arithmetic.</summary>
    private const string Water = """
        ratio | read as      | is    | total ml | concentrate ml
        1:4   | PartsOfWater | 1+4   | 300      | 60
        1:9   | PartsOfWater | 1+9   | 1000     | 100
        1:50  | PartsOfWater | 1+50  | 5100     | 100
        """;

    [Fact]
    public void A_ratio_has_two_readings() => Assert.All(Table.Read(AllParts).Concat(Table.Read(Water)), row =>
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
    [Published("Practical Photography: Tank or Stand Developing, part 3 (chestofbooks.com, a historic text): 32 oz of "
        + "stock, 64 oz of water",
        Columns = "makes")]
    private const string Totals = """
        dilution | source | makes | unit
        32+64    | 32     | 96    | fl oz
        """;

    [Fact]
    public void A_source_makes_the_printed_total() => Assert.All(Table.Read(Totals), row =>
        Assert.Equal(row.Number("makes") * 1000,
            Dilution.Parse(row["dilution"]).TotalFrom(Of(row.Number("source") * 1000)).Millilitres));

    /// <summary>The strength of what is made, in per cent.</summary>
    [Published("Anchell, S.: The Darkroom Cookbook, 3rd ed., Focal Press 2008, p. 170; US Navy NAVEDTRA 14209: 3 + 8 "
        + "parts, called 28 %", Columns = "gives")]
    private const string Strengths = """
        from  | dilution | gives
        99.5  | 3+8      | 27.1
        """;

    [Fact]
    public void A_strength_follows_from_the_parts() => Assert.All(Table.Read(Strengths), row =>
    {
        var total = Of(1_000_000);
        Printed.Agrees(row, "gives",
            row.Number("from") * Dilution.Parse(row["dilution"]).SourceIn(total).Millilitres / total.Millilitres);
    });

    /// <summary>A powder by the litre, scaled to the volume that is made: arithmetic.</summary>
    private const string Powders = """
        g per litre | ml  | g
        22.8        | 250 | 5.7
        45          | 250 | 11.25
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
