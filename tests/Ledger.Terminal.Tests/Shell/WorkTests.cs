namespace Ledger.Terminal.Tests.Shell;

public sealed class WorkTests : OnASmallLedger
{
    [Fact]
    public void A_check_runs_beside_the_screens_and_says_what_it_found()
    {
        var upkeep = new FakeUpkeep();
        var screen = Look(upkeep: upkeep);

        screen.Type("9").Press(Key.CursorDown, Key.Enter);
        screen.Await("check: all is well.");

        Assert.Equal(["check"], upkeep.Asked);
        screen.Press(Key.Esc);
        Assert.StartsWith(" File ", screen.Title);
    }

    [Fact]
    public void Esc_stops_work_that_runs_and_only_then_goes_back()
    {
        using var begun = new ManualResetEventSlim();
        var upkeep = new FakeUpkeep
        {
            Work = (progress, cancel) =>
            {
                progress.Report(0.42);
                begun.Set();
                cancel.WaitHandle.WaitOne();
            },
        };
        var screen = Look(upkeep: upkeep);

        screen.Type("9").Press(Key.CursorDown, Key.Enter);
        begun.Wait(TestContext.Current.CancellationToken);
        screen.Await("42 %");
        screen.Type("1");
        Assert.StartsWith(" Check ", screen.Title);

        screen.Press(Key.Esc);
        screen.Await("Stopped; nothing is half done.");
        screen.Press(Key.Esc);
        Assert.StartsWith(" File ", screen.Title);
    }

    [Fact]
    public void A_file_is_tried_first_and_recorded_when_the_user_says_so()
    {
        var upkeep = new FakeUpkeep();
        var screen = Look(upkeep: upkeep);

        screen.Type("9").Press(Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.Enter);
        screen.Type("notes/sessions.csv").Press(Key.F8);
        screen.Await("import notes/sessions.csv sessions dry: all is well.");

        screen.Press(Key.Esc);
        Assert.StartsWith(" Import ", screen.Title);
        screen.Press(Key.Tab, Key.Tab, Key.Space);
        Assert.Contains("all of them or none", screen.Text);
        screen.Press(Key.F8);
        screen.Await("import notes/sessions.csv sessions wet: all is well.");
        screen.Press(Key.Esc, Key.Esc);
        Assert.StartsWith(" File ", screen.Title);
    }

    [Fact]
    public void Files_are_offered_beside_the_ledger_with_its_name_and_the_day()
    {
        var upkeep = new FakeUpkeep();
        var screen = Look(upkeep: upkeep);

        screen.Type("9").Press(Key.CursorDown, Key.CursorDown, Key.Enter, Key.F8);
        screen.Await("back up ledger-2026-03-15.db: all is well.");
    }

    [Fact]
    public void A_copy_is_offered_under_a_name_that_is_free()
    {
        var folder = Directory.CreateTempSubdirectory("trayledger").FullName;
        var file = Path.Combine(folder, "l.db");
        File.WriteAllText(Path.Combine(folder, "l-2026-03-15.db"), "a copy");
        using (var screen = new Screen(Some.Ledger(), options: new(File: file)))
        {
            screen.Type("9").Press(Key.CursorDown, Key.CursorDown, Key.Enter);
            Assert.Equal(Path.Combine(folder, "l-2026-03-15-2.db"), Offered(screen));
            File.WriteAllText(Offered(screen), "another");
            screen.Press(Key.Esc, Key.Enter);
            Assert.Equal(Path.Combine(folder, "l-2026-03-15-3.db"), Offered(screen));
        }

        Directory.Delete(folder, recursive: true);

        static string Offered(Screen screen) => Assert.IsType<FormPage>(screen.Shell.Page).Form.First.Text;
    }

    [Fact]
    public void A_setting_is_changed_from_its_list()
    {
        Screen.Type("9").Press(Key.Enter);
        Assert.Contains("The currency of the ledger", Screen.Text);
        Screen.Press(Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.Enter).Type("400");
        Assert.Contains("Value: found \"400\"; accepted is a whole number of days, 0 to 365", Screen.Text);
        Screen.Press(Key.Backspace);
        Assert.Contains("30 -> 40", Screen.Text);
        Screen.Press(Key.F8);

        Assert.Equal(40, Ledger.HoldingsOn(Some.Today).Settings.WarnDays);
        Assert.StartsWith(" Settings ", Screen.Title);
    }
}
