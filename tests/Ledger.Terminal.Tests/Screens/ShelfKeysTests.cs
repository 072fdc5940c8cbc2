namespace Ledger.Terminal.Tests.Screens;

/// <summary>What is kept, and what became of it, by keys alone on a screen of 80 by 24.</summary>
public sealed class ShelfKeysTests : OnTheDemoYear
{
    [Fact]
    public void A_box_comes_out_of_the_freezer_and_its_lot_has_an_exposure_index()
    {
        AtBoxesOf("fen80").Press(Key.CursorDown).Type("m");
        Assert.Contains("leave it closed for 24", Screen.Text);
        Screen.Press(Key.F8);
        Assert.Matches(@"Kept in +shelf", Screen.Text);
        Assert.Matches(@"Closed +until 2026-03-16", Screen.Text);

        Screen.Type("i").Type("64").Press(Key.F8);
        Assert.Matches(@"Exposed at +64", Screen.Text);
    }

    [Fact]
    public void A_bottle_has_no_exposure_index() => Assert.DoesNotContain("I Set index", AtBoxesOf("syrup").Text);

    [Fact]
    public void A_sealed_box_is_opened_into_its_envelopes()
    {
        AtBoxesOf("fen80").Press(Key.CursorDown).Type("o").Press(Key.Tab).Type("5").Press(Key.F8);
        Assert.Contains("is kept in the freezer", Screen.Text); // a cold box is asked about
        Screen.Press(Key.F6);
        Assert.Contains("5 envelopes of 5 sheets", Screen.Text);
        Assert.Equal(5, Now.ContainersOf("fen80").Count(box => box.IsSealed && box.Size.Base == 5));
    }

    [Fact]
    public void An_item_is_changed_and_keeps_what_is_not_touched()
    {
        var before = Now.Item("syrup")!;
        AtShelf("syrup").Type("e").Press([.. Enumerable.Repeat(Key.Tab.WithShift, 4)]).Type("Brackwater Syrup II")
            .Press(Key.F8);
        Assert.Equal(before with { Name = "Brackwater Syrup II", OtherCapacities = [] },
            Now.Item("syrup")! with { OtherCapacities = [] });
    }

    [Fact]
    public void A_format_is_given_another_area_and_one_is_added()
    {
        Screen.Find("formats").Press(Key.End);
        Assert.Matches(@"120 +rolls +80 +516\.128 +1 +by convention", Screen.Text);
        Screen.Type("n").Type("220").Press(Key.Tab).Type("160 sqin").Press(Key.Tab).Type("roll").Press(Key.F8);
        Screen.Press(Key.End);
        Assert.Matches(@"220 +rolls +160 +1032\.256 +2 +your own", Screen.Text);
        Assert.Equal(Unit.Roll, Now.Formats.Find("220").Unit);

        Screen.Press(Key.Enter);
        Assert.Contains("Format", Screen.Title);
        Screen.Type("300 cm2");
        Assert.Matches("160 sq in -> 46.5 sq in", Screen.Text);
    }

    [Fact]
    public void What_was_forgotten_is_looked_at_for_more_and_fewer_months()
    {
        Screen.Find("forgotten");
        Assert.StartsWith(" Not used for 12 months", Screen.Title);
        Assert.Contains("selvane/1", Screen.Text);
        Screen.Type("+++");
        Assert.StartsWith(" Not used for 15 months", Screen.Title);
        Assert.DoesNotContain("selvane/1", Screen.Text);
        Assert.Contains("Nothing lies unused for 15 months", Screen.Text);
        Screen.Type("-");
        Assert.Contains("selvane/1", Screen.Text);
    }

    [Fact]
    public void A_sessions_sheets_tell_their_stories_and_one_is_named_a_keeper()
    {
        Screen.Type("4").Press(Key.Enter);
        Assert.StartsWith(" Session S22", Screen.Title);
        Assert.Matches(@"Beside +2026-", Screen.Text);
        var plain = Ledger.SheetsOf("S22", Ledger.Today).First(sheet => sheet.Fate == Fate.Negative);
        Screen.Press(Key.Home, Key.Home);
        while (!Screen.Text.Contains($" {plain.Negative}: a sheet of", StringComparison.Ordinal))
            Screen.Press(Key.CursorDown);
        Screen.Type("k").Press(Key.F8);
        Assert.Equal(Fate.Keeper, Ledger.Story(plain.Negative!, Ledger.Today)!.Development!.Fate);
    }

    [Fact]
    public void A_missing_sheet_in_a_holder_is_counted_off_with_a_reason()
    {
        Screen.Type("7c").Type("0").Press(Key.CursorUp, Key.CursorDown).Press(Key.Tab).Type("not there")
            .Press(Key.Tab.WithShift, Key.Tab.WithShift)
            .Type("E01-1").Press(Key.F8);
        Assert.Contains("counted E01-1: 0 sheet", Screen.Text);
        Assert.Equal(1,
            Ledger.PlacesOf("fen80", Ledger.Today).Single(place => place.Kind == "lost or gained").Held.Base);
        Assert.Equal(0, Ledger.PlacesOf("fen80", Ledger.Today).Sum(place => place.Held.Base));
    }

    private Core.Journal.Holdings Now => Ledger.HoldingsOn(Ledger.Today);

    private Screen AtShelf(string item)
    {
        var row = Now.Items.Select(known => known.Code).ToList().IndexOf(item);
        return Screen.Type("2").Press([.. Enumerable.Repeat(Key.CursorDown, row)]);
    }

    private Screen AtBoxesOf(string item) => AtShelf(item).Press(Key.Enter);
}
