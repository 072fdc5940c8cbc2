namespace Ledger.Terminal.Tests.Forms;

public sealed class FormsTests : OnASmallLedger
{
    [Fact]
    public void A_session_is_logged_by_keyboard_alone_found_in_the_journal_and_undone()
    {
        Screen.Type("s").Press(Key.F3);
        Screen.Shows(
            "Session S23", "21 sheets -> 17 sheets", "64 ml -> 39 ml",
            "320 sq in of 3000 sq in -> 640 sq in of 3000 sq in");

        Screen.Press(Key.F8);
        Assert.Contains("Entry 11: session S23: 4 fen80, 320 sq in through F4.", Screen.Text);

        Screen.Type("6");
        Assert.Contains("Entry 11: session", Screen.Text);

        Screen.Type("u");
        Assert.Contains("39 ml -> 64 ml", Screen.Text);
        Screen.Press(Key.F8);
        Assert.Contains("Entry 12: took back entry 11", Screen.Text);
        Assert.Equal(11, Ledger.Journal(Some.Today, null, 1)[0].Undoes);
        Assert.Equal("S22", Ledger.Sessions(Some.Today, null, 1)[0].Session);
    }

    [Fact]
    public void Enter_goes_from_field_to_field_and_on_Save_saves()
    {
        Screen.Type("s").Type("4").Press(Key.Enter, Key.Enter, Key.Enter, Key.Enter, Key.Enter, Key.Enter);

        Assert.Equal("S23", Ledger.Sessions(Some.Today, null, 1)[0].Session);
    }

    [Fact]
    public void Same_again_takes_over_the_lines_of_the_last_session_with_its_developer()
    {
        var form = new SessionForm(Ledger);

        form.Keys.Single(key => key.Key == Key.F12).Press(null);

        var line = Assert.Single(form.Lines);
        Assert.Equal(("fen80", "4", "N", "25"),
            (line["item"].Text, line["sheets"].Text, line["group"].Text, line["developer_ml"].Text));
        Assert.IsType<Ready>(form.Judge());
    }

    [Fact]
    public void A_session_offers_the_only_bath_that_fits_and_none_where_one_is_to_be_named()
    {
        Assert.Equal("F4", new SessionForm(Ledger)["bath"].Text);
        Ledger.Did(new BathMixing
        {
            Key = "bath F9", Date = Some.Today, Bath = "F9", Item = "tarnfix",
            WorkingVolume = Volume.FromMillilitres(500),
        });
        var form = new SessionForm(Ledger);
        form.Keys.Single(key => key.Key == Key.F3).Press(null);
        Assert.Equal("", form["bath"].Text);
        Assert.Contains(
            "say which bath the film went through: F4 or F9 of tarnfix",
            Assert.IsType<Rejected>(form.Judge()).Refusal.Sentence);
        form["bath"].Turn(-1);
        Assert.Contains("through F9", Assert.IsType<Ready>(form.Judge()).Posting.Summary);
    }

    [Fact]
    public void Same_again_shows_on_the_screen()
    {
        Screen.Type("s").Press(Key.F12);

        Screen.Shows("64 ml -> 39 ml", "dev. ml 25");
    }

    [Fact]
    public void More_lines_can_be_added_and_dropped_again()
    {
        var form = new SessionForm(Ledger);
        form.Keys.Single(key => key.Key == Key.F3).Press(null);
        var added = form.Keys.Single(key => key.Key == Key.F4).Press(null);
        form.Keys.Single(key => key.Key == Key.F3).Press(added);

        var ready = Assert.IsType<Ready>(form.Judge());
        Assert.Contains("8 fen80", ready.Posting.Summary);

        form.Keys.Single(key => key.Key == Key.F5).Press(added);
        Assert.Contains("4 fen80", Assert.IsType<Ready>(form.Judge()).Posting.Summary);
    }

    [Fact]
    public void Bad_input_is_said_in_a_sentence_and_what_was_typed_stays()
    {
        Screen.Type("s").Type("two").Press(Key.F8);

        Screen.Shows("Sheets: found \"two\"; accepted is a whole number from 1 to 1000.", "Sheets two");
        Assert.Equal(10, Ledger.Journal(Some.Today, null, 1)[0].Number);
    }

    [Fact]
    public void A_pour_beyond_the_book_is_refused_until_the_difference_is_booked()
    {
        Screen.Type("s").Press(Key.F3, Key.Enter, Key.Enter).Type("70");
        Screen.Shows("This cannot be saved", "6 ml short");

        Screen.Press(Key.F6);
        Screen.Shows("[x] Book the difference", "syrup/1 held 6 ml more than the book says");

        Screen.Press(Key.F8);
        Assert.Equal("S23", Ledger.Sessions(Some.Today, null, 1)[0].Session);
    }

    [Fact]
    public void Pressing_save_twice_writes_once()
    {
        var form = new KindForm(Ledger, "count", ("item", "syrup"));
        form["found"].Type("60");
        form["reason"].Type("dregs");

        Assert.True(form.Save().IsDone);
        Assert.Equal(11, Ledger.Journal(Some.Today, null, 1)[0].Number);
        form.Save();

        Assert.Equal(11, Ledger.Journal(Some.Today, null, 1)[0].Number);
    }

    [Fact]
    public void A_delivery_offers_the_last_price_and_the_place_it_was_kept()
    {
        Screen.Type("2r");

        Screen.Shows("fen80", "178.00", "shelf", "fen80/3");
        Screen.Press(Key.F8);
        Assert.Contains("Entry 11: ", Screen.Text);
    }

    [Fact]
    public void A_bath_takes_its_name_and_its_pair_from_the_one_before()
    {
        Screen.Type("3d");
        Assert.Contains("in use -> discarded", Screen.Text);
        Screen.Press(Key.F8).Type("b");
        Assert.Contains("F6", Screen.Text);
        Screen.Press(Key.F8);

        Assert.Equal("F5", Ledger.HoldingsOn(Some.Today).Bath("F6")!.PairedWith);
        Assert.Matches("F6 +second", Screen.Text);
    }

    [Fact]
    public void A_bottle_is_opened_and_counted_and_a_sheet_thrown_away()
    {
        Assert.IsType<Ready>(new KindForm(Ledger, "opening", ("container", "fen80")).Judge());
        var count = new KindForm(Ledger, "count", ("item", "fen80/2"));
        count["found"].Type("24");
        count["reason"].Type("miscounted");
        Assert.IsType<Ready>(count.Judge());
        var discard = new DiscardForm(Ledger, "fen80/1");
        discard["quantity"].Type("1");
        var ready = Assert.IsType<Ready>(discard.Judge());
        Assert.Equal(new Effect("fen80/1", "21 sheets", "20 sheets"), Assert.Single(ready.Posting.Effects));
    }

    [Fact]
    public void Digits_letters_and_blanks_are_typed_in_a_form_and_F9_blanks()
    {
        Screen.Type("s").Type("12").Press(Key.F9, Key.F9);
        Assert.True(Screen.Shell.IsBlank);
        Screen.Press(Key.L.WithCtrl);

        Assert.Contains("Sheets 12", Screen.Text);
    }

    [Fact]
    public void After_the_help_the_cursor_stands_where_it_stood()
    {
        Screen.Type("s").Type("1").Press(Key.F1).Press(Key.Esc).Type("2");

        Assert.Contains("Sheets 2", Screen.Text);
    }

    [Fact]
    public void Up_and_Down_offer_other_values_and_a_beginning_is_completed()
    {
        var form = new SessionForm(Ledger);

        form["date"].Turn(-1);
        Assert.Equal("2026-03-14", form["date"].Text);
        form.Lines[0]["fate"].Turn(1);
        Assert.Equal("keeper", form.Lines[0]["fate"].Text);
        form.Lines[0]["fate"].Type("rej");
        form.Lines[0]["fate"].Complete();
        Assert.Equal("reject", form.Lines[0]["fate"].Text);
        foreach (var _ in new[] { 1, 2 })
            form.Keys.Single(key => key.Key == Key.F3).Press(null);
        Assert.Equal("8", form.Lines[0]["sheets"].Text);
    }

    [Fact]
    public void A_locked_file_refuses_the_saving_and_keeps_the_form()
    {
        Screen.Type("s").Press(Key.F3);

        Ledger.Trouble = "the ledger is locked; try again";
        Screen.Press(Key.F8);
        Assert.Contains("The ledger is locked; try again.", Screen.Text);

        Ledger.Trouble = null;
        Screen.Press(Key.F8);
        Assert.Equal("S23", Ledger.Sessions(Some.Today, null, 1)[0].Session);
    }

    [Fact]
    public void With_fluid_ounces_chosen_a_bare_number_is_fluid_ounces_and_labels_and_offers_say_so()
    {
        Ledger.Did(new SettingChange { Key = Some.Key(), Date = Some.Today, Setting = "liquids", Value = "floz" });
        var count = new KindForm(Ledger, "count", ("item", "tarnfix/1"));
        count["found"].Type("27");
        count["reason"].Type("miscounted");

        // 27 x 29.5735295625 ml, NIST Handbook 44, appendix C
        Assert.Equal(new Quantity(798_485, Unit.Millilitre),
            Assert.IsType<StockCount>(Assert.IsType<Ready>(count.Judge()).Entry).Found);
        Assert.Equal("Holds, fl oz", new KindForm(Ledger, "jug-start")["size_ml"].Label);
        Assert.Equal("50.721034floz", new BathForm(Ledger, "F5")["working_ml"].Text);
    }

    [Theory]
    [InlineData("yesterday", "60.5")]
    [InlineData("-1", "60,5 ml")]
    [InlineData("14", "0.0605 l")]
    public void Dates_seen_from_today_and_any_unit_are_read(string date, string found)
    {
        var form = new KindForm(Ledger, "count", ("item", "syrup/1"));
        form["date"].Type(date);
        form["found"].Type(found);
        form["reason"].Type("dregs");

        var count = Assert.IsType<StockCount>(Assert.IsType<Ready>(form.Judge()).Entry);
        Assert.Equal((Some.Today.PlusDays(-1), new Quantity(60_500, Unit.Millilitre)), (count.Date, count.Found));
        form["date"].Turn(1);
        Assert.Equal("2026-03-15", form["date"].Text);
    }
}
