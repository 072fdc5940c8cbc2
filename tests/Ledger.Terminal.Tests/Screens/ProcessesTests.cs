namespace Ledger.Terminal.Tests.Screens;

/// <summary>Processes by keys alone, on a screen of 80 by 24.</summary>
public sealed class ProcessesTests : OnASmallLedger
{
    private Process Tray => Ledger.HoldingsOn(Some.Today).Process("tray")!;

    [Fact]
    public void The_steps_of_a_process_are_seen()
    {
        Screen.Find("processes");
        Assert.StartsWith(" Processes", Screen.Title);
        Assert.Contains("syrup 1+49, in 1250 ml",
            string.Join(' ', Screen.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
        Screen.Press(Key.Enter);
        Assert.StartsWith(" Process tray", Screen.Title);
        Assert.Matches("1 +developer +syrup +1\\+49 +1250 ml", Screen.Text);
    }

    [Fact]
    public void A_step_is_edited_and_the_process_has_a_new_version_that_old_sessions_do_not_take_over()
    {
        Screen.Find("processes").Press(Key.Enter, Key.Enter);
        Assert.StartsWith(" Step 1", Screen.Title);
        Screen.Press([.. Enumerable.Repeat(Key.Tab, 8)]).Type("12.5").Press(Key.F8);

        Assert.Equal((2, 12.5m), (Tray.Version, Tray.Steps[0].Minutes));
        Assert.StartsWith(" Process tray, version 2", Screen.Title);
        Assert.Contains("12 min 30 s", Screen.Text);
        Assert.Equal(1, Ledger.Sessions(Some.Today, null, 1)[0].ProcessVersion);
    }

    [Fact]
    public void A_process_is_copied_under_a_name_of_its_own()
    {
        Screen.Find("processes").Find("copy process").Type("tray");
        Assert.Contains("there is a process tray already", Screen.Text);
        Screen.Type("-rolls").Press(Key.F8);

        var copy = Ledger.HoldingsOn(Some.Today).Process("tray-rolls")!;
        Assert.Equal(Tray.Steps, copy.Steps);
        Assert.Equal((1, 1), (copy.Version, Tray.Version));
    }

    [Fact]
    public void A_step_is_added_after_the_selected_one_and_dropped_again()
    {
        Screen.Find("processes").Press(Key.Enter).Type("n").Type("stop").Press(Key.F8);
        Assert.Equal([ItemRole.Developer, ItemRole.Stop, ItemRole.Fixer], Tray.Steps.Select(step => step.Role));
        Assert.Equal(StepPer.Session, Tray.Steps[1].Per);

        Screen.Find("take step away");
        Assert.StartsWith(" Drop step 2, stop", Screen.Title);
        Screen.Press(Key.F8);
        Assert.Equal([ItemRole.Developer, ItemRole.Fixer], Tray.Steps.Select(step => step.Role));
        Assert.Equal(3, Tray.Version);
    }

    [Fact]
    public void A_step_that_would_have_no_effect_is_refused_while_it_is_typed()
    {
        Screen.Find("processes").Press(Key.Enter, Key.Enter);
        Screen.Press([.. Enumerable.Repeat(Key.Tab, 7)]).Type("session");
        Assert.Contains("one that serves a whole session is a bath",
            string.Join(' ', Screen.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
        Screen.Press(Key.F8);
        Assert.Equal(1, Tray.Version);
    }

    [Fact]
    public void A_first_process_is_written_down_step_by_step()
    {
        Screen.Find("processes").Type("n").Type("paper").Press(Key.Tab, Key.Tab).Type("presoak").Press(Key.F8);
        Assert.Equal(ItemRole.Presoak, Assert.Single(Ledger.HoldingsOn(Some.Today).Process("paper")!.Steps).Role);
    }
}
