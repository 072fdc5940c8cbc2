using Ledger.Storage.Deriving;

namespace Ledger.Exchange.Tests.Past;

/// <summary>
/// What was said goes into a file and comes back as the same ledger; two copies that were both written to become one.
/// </summary>
public sealed class JoinTests
{
    private static readonly SessionLog Held = DemoFile.Year.OfType<SessionLog>().First();

    [Fact]
    public void What_was_said_makes_the_same_ledger_once_more()
    {
        using var year = new DemoFile();
        year.Accept(DemoFile.Undo(year.Accept(DemoFile.Amend(Held.Key, new FieldChange(0, "note", "windy"))).Number));
        year.Accept(DemoFile.Amend(Held.Key, new FieldChange(1, "fate", "reject")));
        using var again = new DemoFile([]);
        Assert.Null(again.Ledger.Join(year.Ledger.SaidLines(), dryRun: false).Refusal);
        Assert.Equal(year.State(), again.State());
        Assert.Equal(year.Ledger.SaidLines(), again.Ledger.SaidLines());
        Assert.Empty(again.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void Joining_is_the_same_both_ways_and_twice()
    {
        using var one = new DemoFile();
        using var other = new DemoFile(one);
        one.Accept(Count("one", "syrup", 60));
        one.Accept(DemoFile.Amend(Held.Key, new FieldChange(0, "note", "windy")));
        other.Accept(Count("other", "gloves", 20));
        other.Accept(DemoFile.Undo(DemoFile.Year.ToList().FindIndex(entry => entry is KeeperNaming) + 1));
        using var both = new DemoFile(one);
        Assert.Equal(new JoinOutcome(2, DemoFile.Year.Count, null),
            both.Ledger.Join(other.Ledger.SaidLines(), dryRun: false));
        Assert.Null(other.Ledger.Join(one.Ledger.SaidLines(), dryRun: false).Refusal);
        Assert.Equal(both.State(), other.State());
        Assert.Equal(both.Ledger.SaidLines(), other.Ledger.SaidLines());
        Assert.Equal(0, both.Ledger.Join(other.Ledger.SaidLines(), dryRun: false).Added);
        Assert.Empty(both.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void Joining_three_copies_is_the_same_in_any_order()
    {
        using var one = new DemoFile();
        using var two = new DemoFile(one);
        using var three = new DemoFile(one);
        one.Accept(Count("one", "syrup", 60));
        two.Accept(Count("two", "gloves", 20));
        two.Accept(DemoFile.Amend(Held.Key, new FieldChange(0, "note", "windy")));
        three.Accept(DemoFile.Undo(DemoFile.Year.ToList().FindIndex(entry => entry is KeeperNaming) + 1));
        using var left = new DemoFile(one);
        Assert.Null(left.Ledger.Join(two.Ledger.SaidLines(), dryRun: false).Refusal);
        Assert.Null(left.Ledger.Join(three.Ledger.SaidLines(), dryRun: false).Refusal);
        Assert.Null(three.Ledger.Join(two.Ledger.SaidLines(), dryRun: false).Refusal);
        Assert.Null(three.Ledger.Join(one.Ledger.SaidLines(), dryRun: false).Refusal);
        Assert.Equal(left.Ledger.SaidLines(), three.Ledger.SaidLines());
        Assert.Equal(left.State(), three.State());
    }

    [Theory]
    [InlineData("both amended")]
    [InlineData("same name")]
    [InlineData("last of it")]
    public void What_contradicts_is_refused_both_ways_in_the_same_words(string what)
    {
        using var one = new DemoFile();
        using var other = new DemoFile(one);
        foreach (var (file, name) in new[] { (one, "one"), (other, "other") })
            file.Accept(what switch
            {
                "both amended" => DemoFile.Amend(Held.Key, new FieldChange(0, "note", name)),
                "same name" => DemoFile.Year.OfType<Delivery>().Last() with { Key = name, Date = DemoYear.LastDay },
                _ => new Discard { Key = name, Date = DemoYear.LastDay, What = "syrup", Reason = "spilt",
                    Quantity = Core.Measures.Quantity.Of(60, Core.Measures.Unit.Millilitre) },
            });
        var before = one.State();
        var refusal = one.Ledger.Join(other.Ledger.SaidLines(), dryRun: false).Refusal;
        Assert.NotNull(refusal);
        Assert.Equal(before, one.State());
        if (what != "last of it")
            Assert.Equal(refusal, other.Ledger.Join(one.Ledger.SaidLines(), dryRun: false).Refusal);
        else
            Assert.NotNull(other.Ledger.Join(one.Ledger.SaidLines(), dryRun: false).Refusal);
    }

    private static StockCount Count(string key, string item, int found) => new()
    {
        Key = key, Date = DemoYear.LastDay, What = item, Reason = "counted",
        Found = item == "syrup" ? Core.Measures.Quantity.Of(found, Core.Measures.Unit.Millilitre)
            : Core.Measures.Quantity.Of(found, Core.Measures.Unit.Piece),
    };
}
