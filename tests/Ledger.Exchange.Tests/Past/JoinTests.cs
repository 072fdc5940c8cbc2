using System.Text.RegularExpressions;
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

    /// <summary>Each side says the same, and what it says to do leads to a join, whichever of them does it.</summary>
    [Theory]
    [InlineData("both amended", 0)]
    [InlineData("both amended", 1)]
    [InlineData("amended and taken back", 0)]
    [InlineData("amended and taken back", 1)]
    [InlineData("same name", 0)]
    [InlineData("same name", 1)]
    [InlineData("same bath", 0)]
    [InlineData("same bath", 1)]
    [InlineData("last of it", 0)]
    [InlineData("last of it", 1)]
    public void What_contradicts_is_refused_both_ways_in_the_same_words_with_a_cure(string what, int mender)
    {
        using var one = new DemoFile();
        using var other = new DemoFile(one);
        DemoFile[] files = [one, other];
        var said = files.Select((file, i) => file.Accept(Contradiction(what, i))).ToList();
        var before = one.State();
        var refusal = one.Ledger.Join(other.Ledger.SaidLines(), dryRun: false).Refusal;
        Assert.NotNull(refusal);
        Assert.Equal(before, one.State());
        Assert.Equal(refusal, other.Ledger.Join(one.Ledger.SaidLines(), dryRun: false).Refusal);
        Assert.Contains("said-0", refusal, StringComparison.Ordinal);
        Assert.Contains("said-1", refusal, StringComparison.Ordinal);
        Assert.Contains("take one of the two back in its ledger (`record undo KEY`), then join", refusal,
            StringComparison.Ordinal);

        files[mender].Accept(DemoFile.Undo(said[mender].Number));
        var (mine, theirs) = (one.Ledger.SaidLines(), other.Ledger.SaidLines());
        Assert.Null(one.Ledger.Join(theirs, dryRun: false).Refusal);
        Assert.Null(other.Ledger.Join(mine, dryRun: false).Refusal);
        Assert.Equal(one.Ledger.SaidLines(), other.Ledger.SaidLines());
        Assert.Equal(one.State(), other.State());
        Assert.Empty(one.Ledger.Check(null, default).Problems);
        if (what == "same name")
            one.Accept(Contradiction(what, 2));
    }

    /// <summary>As of a later version, with a kind that this one does not know; also where both amended.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void What_cannot_be_read_is_refused_and_changes_nothing(bool isAmended)
    {
        using var one = new DemoFile();
        using var other = new DemoFile(one);
        if (isAmended)
            one.Accept(Contradiction("both amended", 0));
        other.Accept(isAmended ? Contradiction("both amended", 1) : Count("said-1", "syrup", 60));
        var before = one.State();
        var lines = other.Ledger.SaidLines().Select(line =>
            Regex.Replace(line, "(\"key\":\"said-1\",\"kind\":\")[a-z]+", "$1weighing"));
        Assert.Equal(
            "this version knows no entry of the kind weighing (key said-1); use the version that wrote it",
            one.Ledger.Join(lines, dryRun: false).Refusal);
        Assert.Equal(before, one.State());
    }

    private static Entry Contradiction(string what, int side)
    {
        var key = $"said-{side}";
        return what switch
        {
            "both amended" => DemoFile.Amend(Held.Key, new FieldChange(0, "note", key)) with { Key = key },
            "amended and taken back" when side == 0 =>
                DemoFile.Amend(Held.Key, new FieldChange(0, "note", key)) with { Key = key },
            "amended and taken back" => new Undo
            {
                Key = key, Date = DemoYear.LastDay, Reference = Held.Key, Reason = "never was",
            },
            "same name" => DemoFile.Year.OfType<Delivery>().Last() is var last ? last with
            {
                Key = key, Date = DemoYear.LastDay, Lines = [last.Lines[0] with { Order = null }],
            } : null!,
            "same bath" => DemoFile.Year.OfType<BathMixing>().Last() with
            {
                Key = key, Date = DemoYear.LastDay, Bath = "F99", PairedWith = null,
            },
            _ => new Discard
            {
                Key = key, Date = DemoYear.LastDay, What = "syrup", Reason = "spilt",
                Quantity = Core.Measures.Quantity.Of(60, Core.Measures.Unit.Millilitre),
            },
        };
    }

    private static StockCount Count(string key, string item, int found) => new()
    {
        Key = key, Date = DemoYear.LastDay, What = item, Reason = "counted",
        Found = item == "syrup" ? Core.Measures.Quantity.Of(found, Core.Measures.Unit.Millilitre)
            : Core.Measures.Quantity.Of(found, Core.Measures.Unit.Piece),
    };
}
