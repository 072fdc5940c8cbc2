namespace Ledger.Terminal.Tests.Forms;

/// <summary>
/// What used to cost a detour: the day of the last entry, steps one after the other, a bare number in the user's unit.
/// </summary>
public sealed class ShortWaysTests : OnASmallLedger
{
    [Fact]
    public void One_key_writes_the_day_of_the_last_entry_from_any_field()
    {
        Ledger.Did(Some.ADiscard("fen80", Quantity.Of(1, Unit.Sheet)) with { Date = new(2026, 3, 10) });
        Screen.Type("s").Press(Key.D.WithCtrl);

        Assert.Matches("Date +2026-03-10", Screen.Text);
        Screen.Type("4").Press(Key.F8);
        Assert.Equal(new LocalDate(2026, 3, 10), Ledger.Journal(Some.Today, null, 1)[0].Date);
    }

    [Fact]
    public void In_an_empty_ledger_that_key_leaves_the_day_as_it_is()
    {
        var form = new KindForm(Some.EmptyLedger(), "jug-start");

        form.LastDay!.Press(null);

        Assert.Equal("2026-03-15", form["date"].Text);
    }

    [Fact]
    public void Steps_that_are_added_one_after_the_other_stand_in_that_order()
    {
        Screen.Find("processes").Press(Key.Enter);

        foreach (var role in new[] { "presoak", "stop" })
            Screen.Type("n").Type(role).Press(Key.F8);

        Assert.Equal(
            [ItemRole.Developer, ItemRole.Presoak, ItemRole.Stop, ItemRole.Fixer],
            Ledger.HoldingsOn(Some.Today).Process("tray")!.Steps.Select(step => step.Role));
    }

    [Fact]
    public void A_step_of_a_process_that_is_typed_by_its_name_goes_to_its_end()
    {
        var form = new StepForm(Ledger, null, null);

        form["process"].Type("tray");
        form.Edited(form["process"]);

        Assert.Equal("3", form["step"].Text);
    }
}
