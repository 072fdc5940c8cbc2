namespace Ledger.Published.Tests;

/// <summary>Two-bath fixing as manuals and handbooks describe it, played through on a ledger.</summary>
public sealed class TwoBathFixingTests
{
    [Fact]
    [Published("US Navy Non-Resident Training Course NAVEDTRA 14209, Photography (Basic), chapter on processing: "
        + "a doubled clearing time rotates the pair", Values = 1)]
    public void When_clearing_takes_twice_as_long_the_first_goes_the_second_moves_up_and_a_new_one_stands_second()
    {
        var ledger = Pair();
        Clear(ledger, 30, isFresh: true);
        ledger.Post("session line=4_fen80");
        Clear(ledger, 59.9m);
        Assert.Null(new BathReading(ledger.Holdings.Bath("F1")!, Some.Today).EndedBy);
        Clear(ledger, 60);
        Assert.Equal(BathEnd.Test, new BathReading(ledger.Holdings.Bath("F1")!, Some.Today).EndedBy);
        Assert.Equal("rotate the pair: discard the first bath, move the second up, mix a new second",
            TodayReading.Of(ledger.Holdings)[0].Step);

        ledger.Post(Rotation("F3"));
        Assert.Equal(["F2", "F3"], ledger.Holdings.Baths.Select(bath => bath.Code));
        Assert.Equal([false, true], ledger.Holdings.Baths.Select(ledger.Holdings.IsSecond));
        Assert.Null(new BathReading(ledger.Holdings.Bath("F2")!, Some.Today).EndedBy);
    }

    [Fact]
    [Published("Anchell, S.: The Darkroom Cookbook, 3rd ed., Focal Press 2008, p. 107: three rotations, then both "
        + "baths are thrown out", Values = 1)]
    public void After_the_third_rotation_both_baths_go()
    {
        var ledger = Pair();
        foreach (var bath in new[] { "F3", "F4", "F5" })
            ledger.Post(Rotation(bath));
        var refusal = Assert.IsType<Refused>(ledger.Preview(Rotation("F6"))).Refusal;
        Assert.Contains("rotated 3 times", refusal.Sentence, StringComparison.Ordinal);
        Assert.Contains("discard F4 and F5 and mix a fresh pair", refusal.Sentence, StringComparison.Ordinal);
        ledger.Post("discard what=F4");
        ledger.Post("discard what=F5");
        ledger.Post("bath bath=G1");
        ledger.Post("bath bath=G2 paired_with=G1");
        Assert.IsType<Accepted>(ledger.Preview(Rotation("G3")));
    }

    [Fact]
    public void An_indicator_that_turns_purple_ends_a_stop()
    {
        // Common practice, no source: bromocresol purple is yellow in acid and purple when the stop is exhausted.
        var ledger = Shelves.Stocked();
        ledger.Post(Some.Definition(Some.Stop with { Indicator = "purple" }));
        ledger.Post("bath bath=S1 item=stop dilution=1+0 concentrate_ml=30g");
        Look("yellow");
        Assert.Null(new BathReading(ledger.Holdings.Bath("S1")!, Some.Today).EndedBy);
        Look("purple");
        Assert.Equal(BathEnd.Sight, new BathReading(ledger.Holdings.Bath("S1")!, Some.Today).EndedBy);

        void Look(string colour) =>
            ledger.Post(new IndicatorReading { Key = Some.Key(), Date = Some.Today, Bath = "S1", Colour = colour });
    }

    [Theory]
    [Published("US Code of Federal Regulations, 36 CFR 1238.14: at most 0.014 g of thiosulfate per square metre",
        Values = 1)]
    [InlineData("0.014 g/m2", true)]
    [InlineData("0.0141 g/m2", false)]
    [InlineData("0.007 g/m²", true)]
    public void Fixer_left_in_film_is_held_against_the_archival_limit(string result, bool passes)
    {
        var ledger = Pair();
        ledger.Post("setting setting=residual-hypo-limit value=0.014");
        ledger.Post(new ResidualCheck
        {
            Key = Some.Key(), Date = Some.Today, Bath = "F1", LookedFor = "hypo", Result = result, HasPassed = true,
        });
        Assert.Equal(passes, ledger.Holdings.Bath("F1")!.ResidualTests.Single().HasPassed);
    }

    [Theory]
    [Published("GOS Micro (microfilm bureau): page on the methylene blue test, ISO 18901 (read 2025): the same limit "
        + "as 1.4 µg/cm²", Values = 1)]
    [InlineData("1.4 ug/cm2", 14)]
    [InlineData("1.4 µg/cm²", 14)]
    [InlineData("1.41 ug/cm2", 15)]
    public void A_laboratory_s_figure_is_read_too(string result, int milligrams) =>
        Assert.Equal(milligrams, ResidualTest.MilligramsPerSquareMetre(result));

    [Theory]
    [Published("Nishimura, D.: Conservation DistList, 21 September 1997, on ANSI IT9.1-1996: 0.02 g/m² in radiographic "
        + "film", Values = 1)]
    [InlineData("0.02 g/m2", true)]
    [InlineData("0.021 g/m2", false)]
    public void Radiographic_film_may_keep_more(string result, bool passes)
    {
        var ledger = Pair();
        ledger.Post("setting setting=residual-hypo-limit value=0.02");
        ledger.Post(new ResidualCheck
        {
            Key = Some.Key(), Date = Some.Today, Bath = "F1", LookedFor = "hypo", Result = result, HasPassed = true,
        });
        Assert.Equal(passes, ledger.Holdings.Bath("F1")!.ResidualTests.Single().HasPassed);
    }

    private static InMemoryLedger Pair(string more = "")
    {
        var ledger = Shelves.Stocked();
        ledger.Post("delivery item=fix packs=3 price=15.90 date=2026-01-10");
        ledger.Post($"bath bath=F1 {more}");
        ledger.Post($"bath bath=F2 paired_with=F1 {more}");
        return ledger;
    }

    private static Rotation Rotation(string newBath) =>
        new() { Key = Some.Key(), Date = Some.Today, NewBath = newBath };

    private static void Clear(InMemoryLedger ledger, decimal seconds, bool isFresh = false) =>
        ledger.Post(new ClearingTest
        {
            Key = Some.Key(), Date = Some.Today, Bath = "F1", Film = "fen80", Seconds = seconds, IsFresh = isFresh,
        });
}
