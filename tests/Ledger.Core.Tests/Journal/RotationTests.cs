namespace Ledger.Core.Tests.Journal;

public sealed class RotationTests
{
    [Fact]
    public void One_step_pours_out_the_first_moves_up_the_second_and_mixes_a_new_one()
    {
        var ledger = Pair();
        ledger.Post("session line=4_fen80");
        var posting = ledger.Post(Rotate("F3"));
        Assert.Equal(["F2", "F3"], ledger.Holdings.Baths.Select(bath => bath.Code));
        var (first, second) = (ledger.Holdings.Bath("F2")!, ledger.Holdings.Bath("F3")!);
        Assert.False(ledger.Holdings.IsSecond(first));
        Assert.True(ledger.Holdings.IsSecond(second));
        Assert.Equal((new(2026, 2, 1), Some.Today), (first.MixedOn, second.MixedOn));
        Assert.Equal((0, 1), (first.Rotations, second.Rotations));
        Assert.Equal(Area.Zero, first.Worked);
        Assert.Contains(new Effect("F1", "in use", "discarded"), posting.Effects);
        Assert.Contains(posting.Effects, effect => effect.What == "F2" && effect.Before == "second");
        Assert.Equal(ledger.Balances(), ledger.Held());
    }

    [Fact]
    public void Either_bath_of_the_pair_may_be_named_and_the_only_pair_needs_no_name()
    {
        foreach (var name in new[] { "F1", "F2", null })
            Assert.IsType<Accepted>(Pair().Preview(Rotate("F3", name)));
    }

    [Fact]
    public void A_pair_is_not_rotated_beyond_its_ceiling()
    {
        var ledger = Pair();
        ledger.Post("setting setting=rotation-ceiling value=1");
        Assert.Contains("a fresh pair is mixed", string.Join(' ', ledger.Post(Rotate("F3")).Remarks),
            StringComparison.Ordinal);
        var refusal = Assert.IsType<Refused>(ledger.Preview(Rotate("F4"))).Refusal;
        Assert.Contains("once and the ceiling is 1", refusal.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bath_alone_is_not_rotated()
    {
        Assert.IsType<Refused>(Shelves.WithBath().Preview(Rotate("F3", "F1")));
        Assert.IsType<Refused>(Shelves.WithBath().Preview(Rotate("F3")));
    }

    [Fact]
    public void A_rotation_is_taken_back_until_the_new_bath_has_worked()
    {
        var ledger = Pair();
        var before = ledger.Balances();
        ledger.Post(Rotate("F3"));
        var rotation = ledger.Last;
        ledger.Post("session line=4_fen80");
        Assert.Equal(RefusalKind.DependedOn, ledger.Refuse($"undo entry={rotation}").Kind);
        ledger.Post($"undo entry={ledger.Last}");
        ledger.Post($"undo entry={rotation}");
        Assert.Equal(before, ledger.Balances());
        Assert.Equal(["F1", "F2"], ledger.Holdings.Baths.Select(bath => bath.Code));
    }

    private static Rotation Rotate(string newBath, string? bath = null) =>
        new() { Key = Some.Key(), Date = Some.Today, NewBath = newBath, Bath = bath };

    private static InMemoryLedger Pair()
    {
        var ledger = Shelves.WithBath();
        ledger.Post("bath bath=F2 paired_with=F1 date=2026-02-01");
        ledger.Post("delivery item=fix price=15.90 date=2026-01-10");
        return ledger;
    }
}
