namespace Ledger.Core.Tests.Journal.Kinds;

/// <summary>A caution stands before every act with chemistry, and before no other.</summary>
public sealed class ChemistryCautionsTests
{
    /// <summary>Names of fields that stand for a solution or the waste of one.</summary>
    private static readonly string[] _chemistry = ["bath", "new_bath", "jug", "stock"];

    [Fact]
    public void Every_kind_about_a_solution_has_one() => Assert.All(
        EntryKinds.All.Where(kind => kind.Name != "plan" && kind.Fields.Any(field => _chemistry.Contains(field.Name))),
        kind => Assert.NotEqual("", kind.Caution));

    [Fact]
    public void It_fits_a_line_of_a_narrow_screen_behind_its_mark() => Assert.All(
        EntryKinds.All, kind => Assert.True(kind.Caution.Length <= 76, kind.Caution));

    [Theory]
    [InlineData("discard", "what", "fen80/1", 0)]
    [InlineData("discard", "what", "F1", 1)]
    [InlineData("discard", "what", "", 1)]
    [InlineData("opening", "container", "fen80", 0)]
    [InlineData("opening", "container", "fix", 1)]
    [InlineData("load", "from", "fen80", 0)]
    [InlineData("jug-filling", "jug", "J1", 2)]
    public void What_is_named_decides(string kind, string field, string name, int count)
    {
        var ledger = Shelves.WithBath();
        ledger.Post("jug-start contents=used_fixer");
        var text = new EntryText { [field] = name };
        Assert.Equal(count, ChemistryCautions.Of(EntryKinds.Named(kind)!, text, ledger.Holdings).Count);
    }

    [Fact]
    public void The_item_s_own_follows_the_line()
    {
        var ledger = Shelves.WithBath();
        ledger.Post(new ItemDefinition { Key = "sheet", Date = Some.Today,
            Item = ledger.Holdings.Item("fix")! with { Cautions = "no fumes" } });
        var cautions = ChemistryCautions.Of(EntryKinds.Named("bath")!, new() { ["item"] = "fix" }, ledger.Holdings);
        Assert.Equal([UsualCautions.Handling, $"{ledger.Holdings.Item("fix")!.Name}: no fumes"], cautions);
    }
}
