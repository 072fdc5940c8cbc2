namespace Ledger.Terminal.Tests.Screens;

/// <summary>A notice is let be until a day, by one key and a reason; Today goes on to say that there is one.</summary>
public sealed class SnoozeTests : OnASmallLedger
{
    [Fact]
    public void Q_lets_a_notice_be_quiet_until_a_day_with_its_reason()
    {
        var screen = Look(100, 40);
        Assert.Contains("!! now  bath F4 expired", screen.Text);

        screen.Type("q");
        Assert.StartsWith(" Snooze a notice", screen.Title);
        Assert.Matches("Notice +bath-expired", screen.Text);
        Assert.Contains("2026-03-22", screen.Text);
        var form = Assert.IsType<Terminal.Forms.FormPage>(screen.Shell.Page).Form;
        form.Fields.Single(field => field.Label == "Reason").Type("a new one on Sunday");
        screen.Press(Key.F8);

        Assert.DoesNotContain("!! now  bath F4", screen.Text);
        Assert.Contains("1 snoozed", screen.Title);
        Assert.Matches(@"until 2026-03-22: bath F4 expired .*\(a new one on Sunday\)", screen.Text);

        Ledger.Today = new(2026, 3, 22);
        screen.Shell.Poll();
        Assert.Contains("!! now  bath F4 expired", screen.Text);
        Assert.DoesNotContain("snoozed", screen.Title);
    }
}
