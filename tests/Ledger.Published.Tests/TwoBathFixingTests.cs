using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Notices;
using Ledger.Core.Tests.Support;

namespace Ledger.Published.Tests;

/// <summary>Two-bath fixing as manuals and handbooks describe it, played through on a ledger.</summary>
public sealed class TwoBathFixingTests
{
    [Fact]
    public void When_clearing_takes_twice_as_long_the_first_goes_the_second_moves_up_and_a_new_one_stands_second()
    {
        // FIX-17, US Navy NAVEDTRA 14209, chapter on processing: bath 1 clearing time has doubled: discard bath 1, bath 2 becomes bath 1,
        // mix a new bath 2.
        var ledger = Pair();
        Clear(ledger, 30, isFresh: true);
        ledger.Post("session line=fen80:4");
        Clear(ledger, 59.9m);
        Assert.Null(new BathReading(ledger.Holdings.Bath("F1")!, Some.Today).EndedBy);
        Clear(ledger, 60);
        Assert.Equal(BathEnd.Test, new BathReading(ledger.Holdings.Bath("F1")!, Some.Today).EndedBy);
        Assert.Equal("pour out the first bath, move the second up, mix a new one", TodayReading.Of(ledger.Holdings)[0].Step);

        ledger.Post(Rotation("F3"));
        Assert.Equal(["F2", "F3"], ledger.Holdings.Baths.Select(bath => bath.Code));
        Assert.Equal([false, true], ledger.Holdings.Baths.Select(ledger.Holdings.IsSecond));
        Assert.Null(new BathReading(ledger.Holdings.Bath("F2")!, Some.Today).EndedBy);
    }

    [Fact]
    public void After_the_third_rotation_both_baths_go()
    {
        // FIX-09, The Darkroom Cookbook, 3rd ed., p. 107: three rotations, then both baths are thrown out.
        var ledger = Pair();
        foreach (var bath in new[] { "F3", "F4", "F5" })
            ledger.Post(Rotation(bath));
        var refusal = Assert.IsType<Refused>(ledger.Preview(Rotation("F6"))).Refusal;
        Assert.Contains("rotated 3 times", refusal.Sentence, StringComparison.Ordinal);
        Assert.Contains("pour out F4 and F5 and mix both anew", refusal.Sentence, StringComparison.Ordinal);
        ledger.Post("discard what=F4");
        ledger.Post("discard what=F5");
        ledger.Post("bath bath=G1");
        ledger.Post("bath bath=G2 after=G1");
        Assert.IsType<Accepted>(ledger.Preview(Rotation("G3")));
    }

    [Fact]
    public void Prints_of_8x10_are_50_a_litre_in_the_first_bath_and_250_until_both_go()
    {
        // FIX-40 and FIX-41, Analogue Photography knowledge base, fixing prints: 50 prints a litre before a rotation, 250 in all: with a
        // ceiling of four rotations, which is the user's to set.
        var ledger = Pair("capacity=4000 basis=handbook ml=1000");
        ledger.Post("setting setting=rotation-ceiling value=4");
        var (prints, number) = (0L, 3);
        while (true)
        {
            var first = ledger.Holdings.Baths.First(bath => !ledger.Holdings.IsSecond(bath));
            var room = new BathReading(first, Some.Today).RemainingSheets(Core.Measures.Format.Parse("8x10"))!.Value;
            Assert.Equal(50, room);
            prints += room;
            if (ledger.Preview(Rotation($"F{number}")) is Refused)
                break;
            ledger.Post(Rotation($"F{number++}"));
        }

        Assert.Equal(250, prints);
    }

    [Fact]
    public void An_indicator_that_turns_purple_ends_a_stop()
    {
        // STP-10, mirrors of an encyclopaedia's article on stop baths: bromocresol purple is yellow in acid and purple when it is spent.
        var ledger = Shelves.Stocked();
        ledger.Post(Some.Definition(Some.Stop with { Indicator = "purple" }));
        ledger.Post("bath bath=S1 item=stop dilution=1+0 amount=30g");
        Look("yellow");
        Assert.Null(new BathReading(ledger.Holdings.Bath("S1")!, Some.Today).EndedBy);
        Look("purple");
        Assert.Equal(BathEnd.Sight, new BathReading(ledger.Holdings.Bath("S1")!, Some.Today).EndedBy);

        void Look(string colour) =>
            ledger.Post(new IndicatorReading { Key = Some.Key(), Date = Some.Today, Bath = "S1", Colour = colour });
    }

    [Theory]
    [InlineData("0.014 g/m2", true)] // STP-20, 36 CFR 1238.14: film with a life of 500 years keeps at most 0.014 g of thiosulfate per square metre
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

    private static InMemoryLedger Pair(string more = "")
    {
        var ledger = Shelves.Stocked();
        ledger.Post("delivery item=fix packs=3 price=15.90 date=2026-01-10");
        ledger.Post($"bath bath=F1 {more}");
        ledger.Post($"bath bath=F2 after=F1 {more}");
        return ledger;
    }

    private static Rotation Rotation(string newBath) => new() { Key = Some.Key(), Date = Some.Today, NewBath = newBath };

    private static void Clear(InMemoryLedger ledger, decimal seconds, bool isFresh = false) => ledger.Post(new ClearingTest
    {
        Key = Some.Key(), Date = Some.Today, Bath = "F1", Film = "fen80", Seconds = seconds, IsFresh = isFresh,
    });
}
