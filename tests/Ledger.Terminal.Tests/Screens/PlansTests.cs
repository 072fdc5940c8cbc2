namespace Ledger.Terminal.Tests.Screens;

/// <summary>Planning and logging by keys alone, on a screen of 80 by 24.</summary>
public sealed class PlansTests : OnTheDemoYear
{
    [Fact]
    public void What_is_planned_is_seen_with_what_is_short_and_what_would_cure_it()
    {
        var screen = Look(120, 60);
        var text = screen.Type("p").Text;
        Assert.Matches("tarn +2026-03-22 +film", text);
        Assert.Matches("spring-coast +2026-04-18 +trip", text);
        Assert.Contains("syrup: 11 ml short of 75 ml", text);
        Assert.Contains("get 1 pack of 1000 ml", text);
        Assert.Contains("F4 was good until", text);
    }

    [Fact]
    public void The_form_of_a_plan_shows_the_cautions_before_the_act_and_asks_for_nothing_that_is_not_in_question()
    {
        var text = Screen.Type("p").Type("n").Text.ReplaceLineEndings(" ");
        Assert.Contains("! Gloves, goggles, fresh air. Heed data sheet, local rules, licensed practice.", text);
        Screen.Press(Key.Esc);
        text = Screen.Type("e").Text;
        Assert.DoesNotContain("Ctrl+N in", text);
    }

    [Fact]
    public void Exposed_sheets_are_picked_by_group_by_day_and_by_hand_and_planned()
    {
        Screen.Find("exposed sheets");
        Assert.StartsWith(" Exposed sheets", Screen.Title);
        Assert.Contains("None is picked yet", Screen.Text);

        Screen.Type("+");
        Assert.Contains("3 sheets are picked", Screen.Text);
        Screen.Press(Key.Enter);
        Assert.Contains("2 sheets are picked", Screen.Text);
        Screen.Type("*").Type("*");
        Assert.Contains("None is picked yet", Screen.Text);
        Screen.Type("p");
        Assert.Contains("No sheet is picked yet", Screen.Text);

        var group = Ledger.HoldingsOn(Ledger.Today).Film.Sheets.Where(sheet => sheet.Exposure?.Group == "N")
            .Select(sheet => sheet.Id).ToList();
        Screen.Type("+").Type("p");
        Assert.StartsWith(" Plan", Screen.Title);
        Screen.Press(Key.F8);
        var line = Assert.Single(Ledger.HoldingsOn(Ledger.Today).Plan("P1")!.Request.Sheets);
        Assert.Equal(("fen80", "N", 3, string.Join(", ", group)), (line.Film, line.Group, line.Count, line.From));
    }

    [Fact]
    public void A_plan_is_changed_and_keeps_the_sheets_it_names()
    {
        var screen = Look(120, 40);
        screen.Type("p").Type("n").Press(Key.F7).Press(Key.F8);
        var named = Ledger.HoldingsOn(Ledger.Today).Plan("P1")!.Request.Sheets;
        Assert.Equal([3, 2, 2], named.Select(line => line.Count));

        screen.Type("e").Press(Key.F8);
        Assert.Equal(named, Ledger.HoldingsOn(Ledger.Today).Plan("P1")!.Request.Sheets);
    }

    [Fact]
    public void The_last_session_is_planned_again_and_four_sheets_are_added()
    {
        Screen.Type("p").Type("n").Press(Key.F12, Key.F3, Key.F8);
        var lines = Ledger.HoldingsOn(Ledger.Today).Plan("P1")!.Request.Sheets;
        Assert.Equal(
            [(3, "N", true), (7, "N", false)],
            lines.Select(line => (line.Count, line.Group, line.From is not null))); // the three that wait come first
    }

    [Fact]
    public void A_planned_session_is_logged_with_a_reject_and_a_keeper_and_its_plan_is_ended()
    {
        var screen = Look(120, 50);
        screen.Find("exposed").Type("+p").Press(Key.F8);
        Assert.NotNull(Ledger.HoldingsOn(Ledger.Today).Plan("P1"));

        screen.Press(Key.Esc).Type("p").Press(Key.Enter);
        Assert.StartsWith(" Session, from the plan P1", screen.Title);
        Assert.Matches("F4 +1600 sq in of 3000 sq in -> 1840 sq in of 3000 sq in", screen.Text);
        screen.Press(Key.F10).Type("reject").Press(Key.Tab, Key.Tab).Type("dust");
        screen.Press([.. Enumerable.Repeat(Key.Tab.WithShift, 8)]).Press(Key.F10).Type("keeper").Press(Key.F8);

        Assert.DoesNotContain("There is no plan yet",
            screen.Text); // the plan that was logged is gone; what was saved is said
        Assert.Matches("Entry [0-9]+: session", screen.Text);
        Assert.Contains("U takes it back.", screen.Text);
        var session = Ledger.Sessions(Ledger.Today, null, 1)[0];
        Assert.Equal(["negative 1", "keeper 1", "reject 1"],
            session.Lines.Select(line => $"{line.Fate.Name()} {line.Sheets}"));
        Assert.Null(Ledger.HoldingsOn(Ledger.Today).Plan("P1"));
        Assert.Equal(25, session.Developer.Millilitres);
        Assert.Equal([1L, 2, 3], Ledger.SheetsOf(session.Session, Ledger.Today).Select(sheet => sheet.Position));
        Assert.Empty(Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void A_plan_whose_sheets_were_developed_already_says_so_instead_of_opening()
    {
        Screen.Find("exposed").Type("+p").Press(Key.F8);
        var sheet = Ledger.HoldingsOn(Ledger.Today).Film.Sheets.First(known => known.Exposure is not null);
        Assert.IsType<Posted>(Ledger.Post(new SessionLog
        {
            Key = "other", Date = Ledger.Today, Session = "S23", Process = "film", Bath = "F4",
            Lines = [new() { Item = "fen80", Sheets = 1, From = sheet.Id.ToString() }],
        }));
        Screen.Press(Key.Esc).Type("p").Press(Key.Enter);
        Assert.StartsWith(" Plan ", Screen.Title);
        Assert.Contains($"\"{sheet.Id}\" any more", Screen.Text);
    }

    /// <summary>
    /// As the command does it: plain paper, or a sheet of labels by its grid, which the next labels lie on too.
    /// </summary>
    [Fact]
    public void Labels_are_asked_for_their_paper()
    {
        var paper = new FakePaper();
        using var screen = new Screen(Ledger, paper: paper);
        screen.Type("4w");
        Assert.Contains("lie on plain paper", screen.Text);
        screen.Type("a4").Press(Key.Tab);
        Assert.Contains("Grid: found nothing; accepted is columns and rows", screen.Text);
        screen.Press(Key.F8);
        Assert.Empty(paper.Pages);
        var form = Assert.IsType<Terminal.Forms.FormPage>(screen.Shell.Page).Form;
        form.Fields.First(field => field.Label == "Grid").Type("3x8");
        form.Fields.First(field => field.Label == "Copies").Type("2");
        form.Fields.First(field => field.Label == "Gone").Type("5");
        screen.Press(Key.F8);
        Assert.Contains("sleeves of S22 on a4 3x8, 5 gone, 2 times lies here", screen.Text);
        screen.Type("2").Press(Key.Enter).Type("w").Press(Key.F8);
        Assert.Equal("label of fen80/6 on a4 3x8, 0 gone", paper.Pages[^1]);
    }

    [Fact]
    public void A_page_is_put_on_paper_from_every_screen_that_has_one()
    {
        var paper = new FakePaper();
        var screen = Look(paper: paper);
        screen.Type("p").Type("w");
        Assert.Contains("mixing sheet of tarn lies here", screen.Text);
        screen.Press(Key.Esc).Type("4").Type("w").Press(Key.F8);
        screen.Type("3").Type("w").Press(Key.Enter, Key.F8, Key.CursorDown, Key.Enter, Key.CursorDown, Key.Enter);
        screen.Type("2").Press(Key.Enter).Type("w").Press(Key.F8);
        screen.Type("7").Type("w");
        Assert.Contains("Select a box of exposed sheets", screen.Text);
        screen.Type("m").Press(Key.F8).Press(Key.End).Type("w").Press(Key.F8);
        Assert.Equal(
            ["mixing sheet of tarn", "sleeves of S22", "label of F4", "tally of F4", "wall card",
                "label of fen80/6", "seal of fen80 N"], paper.Pages);
    }

    [Fact]
    public void A_plan_is_given_up()
    {
        Screen.Type("p").Find("give up").Press(Key.F8);
        Assert.Null(Ledger.HoldingsOn(Ledger.Today).Plan("tarn"));
    }
}
