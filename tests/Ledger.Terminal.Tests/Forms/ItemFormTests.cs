namespace Ledger.Terminal.Tests.Forms;

public sealed class ItemFormTests : OnASmallLedger
{
    [Fact]
    public void A_film_is_written_down_by_keyboard_alone_in_an_empty_ledger_and_received()
    {
        var ledger = Some.EmptyLedger();
        using var screen = new Screen(ledger);

        screen.Type("2n").Type("ortho").Press(Key.Tab).Type("Mirrin Ortho").Press(Key.Tab,
            Key.Tab, Key.Tab).Type("4x5");
        screen.Press(Key.Tab).Type("50").Press(Key.F8);
        var item = ledger.HoldingsOn(Some.Today).Item("ortho")!;
        Assert.Equal(("Mirrin Ortho", "4x5", 50L, Unit.Sheet),
            (item.Name, item.Format!.Code, item.Pack.Base, item.Unit));

        screen.Type("r").Type("2").Press(Key.F8);
        Assert.Equal(100, ledger.HoldingsOn(Some.Today).OnHand(item).Base);
    }

    [Fact]
    public void Another_kind_asks_for_other_things_and_the_cursor_stays()
    {
        using var screen = new Screen(Some.EmptyLedger());

        screen.Type("2n").Press(Key.Tab, Key.Tab, Key.CursorDown);
        screen.Shows("chemical", "Dilution");
        Assert.DoesNotContain("Fixer factor", screen.Text);

        screen.Press(Key.CursorDown);
        Assert.Contains("supply", screen.Text);
        Assert.DoesNotContain("Dilution", screen.Text);
    }

    [Fact]
    public void Every_setting_of_a_chemical_comes_through_the_form_unchanged()
    {
        foreach (var item in Ledger.HoldingsOn(Some.Today).Items)
        {
            var ready = Assert.IsType<Ready>(new ItemForm(Ledger, item.Code).Judge());
            Assert.Equivalent(item, ((Core.Journal.Entries.ItemDefinition)ready.Entry).Item with { Id = item.Id });
            Assert.Contains("Nothing changes yet.", Text(ready));
        }
    }

    [Fact]
    public void What_changes_is_shown_before_and_after()
    {
        var form = new ItemForm(Ledger, "syrup");
        Field(form, "Dilution").Type("1+39");
        Field(form, "Capacity, sq in/litre").Type("2000");
        Field(form, "Basis").Type("own");
        Field(form, "Other bases").Type("1600 maker's; 2500 handbook");
        Field(form, "Density").Type("1.25");

        var ready = Assert.IsType<Ready>(form.Judge());
        Assert.Contains("Dilution", Text(ready));
        Assert.Contains("-> 1+39", Text(ready));
        Assert.Contains("not set -> 2000 sq in per litre (own)", Text(ready));

        Assert.True(form.Save().IsDone);
        var item = Ledger.HoldingsOn(Some.Today).Item("syrup")!;
        Assert.Equal(["maker's", "handbook"], item.OtherCapacities.Select(other => other.Basis));
        Assert.Equal(Density.Of(1.25m), item.Density);
    }

    [Theory]
    [InlineData("Other bases", "lots",
        "Other bases: found \"lots\"; accepted is square inches per litre and their basis")]
    [InlineData("Density", "9", "Density: found \"9\"; accepted is a number from 0.5 to 5")]
    [InlineData("Days sealed", "1.5", "Days sealed: found \"1.5\"; accepted is a whole number")]
    [InlineData("Pack", "", "Pack: found nothing; accepted is what one pack holds")]
    [InlineData("Capacity, sq in/litre", "0",
        "Capacity, sq in/litre: found \"0\"; accepted is square inches, more than 0")]
    public void Bad_values_are_said_in_a_sentence(string field, string typed, string sentence)
    {
        var form = new ItemForm(Ledger, "syrup");
        Field(form, field).Type(typed);
        Assert.Contains(Assert.IsType<Incomplete>(form.Judge()).Problems,
            problem => problem.StartsWith(sentence, StringComparison.Ordinal));
    }

    [Fact]
    public void A_role_that_only_a_step_has_is_not_offered_and_paper_is_a_film_with_a_role()
    {
        var form = new ItemForm(Ledger, null);
        Assert.Equal(["other", "rc paper", "fibre paper"], form["role"].Choices());
        form["kind"].Type("chemical");
        Assert.DoesNotContain("presoak", form["role"].Choices());
        Assert.DoesNotContain("rc paper", form["role"].Choices());
    }

    private static FormField Field(ItemForm form, string label) => form.Fields.Single(field => field.Label == label);

    private static string Text(Ready ready) =>
        string.Join('\n', ready.Blocks.SelectMany(block => block.Lines(200).Prepend(block.Heading)));
}
