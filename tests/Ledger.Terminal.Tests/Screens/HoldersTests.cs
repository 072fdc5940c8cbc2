namespace Ledger.Terminal.Tests.Screens;

/// <summary>Holders by keys alone, on a screen of 80 by 24.</summary>
public sealed class HoldersTests : OnTheDemoYear
{
    [Fact]
    public void All_holders_are_seen_at_a_glance_without_colour()
    {
        var text = Screen.Type("7").Text;

        foreach (var cell in new[] { "E01[X|X]", "E04[X|.]", "E05[.|.]", "E07[.|-]~", "E08[L!|L!]",
            "E11[L|.]", "Q02[L|L]", "Q08[.|.]" })
            Assert.Contains(cell, text);
        Assert.Contains("L loaded   X exposed", text);
        Assert.Contains("1 exposed N, 4 d  2 exposed N, 4 d", text);
        Assert.All(Screen.Lines, line => Assert.True(line.Length <= 80));
    }

    [Fact]
    public void A_sheet_is_loaded_exposed_unloaded_and_developed_by_keys_alone()
    {
        Screen.Type("7").Press([.. Enumerable.Repeat(Key.CursorDown, 4)]);
        Assert.Contains(">E05", Screen.Text);

        Screen.Type("l");
        Assert.Matches(@"E05-1 +empty -> fen80", Screen.Text);
        Screen.Press(Key.F8);
        Assert.Contains("loaded fen80 into E05-1, E05-2", Screen.Text);

        Screen.Type("x").Press(Key.F3);
        Assert.Matches(@"E05-2 +fen80 -> fen80, exposed N", Screen.Text);
        Screen.Press(Key.F8);
        Assert.Contains("exposed E05-1, E05-2 for N", Screen.Text);

        Screen.Type("m").Press(Key.F8);
        Assert.Contains("unloaded E05-1, E05-2: 2 sheets exposed", Screen.Text);
        Assert.Equal("fen80 N", Assert.Single(Ledger.HoldingsOn(Ledger.Today).Film.ExposedBoxes).Code);

        Screen.Type("s").Press(Key.F7, Key.Delete).Type("fen80 N");
        Assert.Contains("is empty now: take off its paper", Screen.Text);
        Screen.Press(Key.F8);
        Assert.Equal((2, "S23"),
            (Ledger.Sessions(Ledger.Today, null, 1)[0].Sheets, Ledger.Sessions(Ledger.Today, null, 1)[0].Session));
        Assert.Equal("filed negatives", Ledger.Story("E05-2", Ledger.Today)!.Place);
        Assert.Empty(Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void Known_sheets_are_offered_of_the_film_and_group_that_were_chosen_in_the_line()
    {
        var film = Ledger.HoldingsOn(Ledger.Today).Film;
        var groups = film.Sheets.Where(sheet => sheet is { Item: "fen80", Exposure: not null })
            .Select(sheet => sheet.Exposure!.Group).Distinct().ToList();
        Assert.True(groups.Count > 1, string.Join(' ', groups));
        foreach (var group in groups)
        {
            var form = new SessionForm(Ledger);
            var line = form.Lines[0];
            line["item"].Type("fen80");
            line["group"].Type(group);

            var offered = line["from"].Choices().Where(choice => choice.Length > 0).ToList();

            Assert.NotEmpty(offered);
            Assert.All(offered.SelectMany(name => KnownSheets.Find(name, film)), sheet =>
                Assert.Equal(("fen80", group), (sheet.Item, sheet.Exposure!.Group)));
        }
    }

    [Fact]
    public void An_occupied_side_is_refused_and_an_unlikely_exposure_is_asked_about()
    {
        Screen.Type("7").Type("l").Type("E01-1").Press(Key.F8);
        Assert.Contains("E01-1 holds a sheet of fen80", Screen.Text);
        Screen.Press(Key.Esc);

        Screen.Type("x").Type("E01-1");
        Assert.Contains("F6 records it", Screen.Text);
    }

    [Fact]
    public void Enter_tells_the_story_of_the_sheet_in_a_side()
    {
        Screen.Type("7").Press([.. Enumerable.Repeat(Key.CursorDown, 6), Key.Enter]);
        Assert.StartsWith(" Holders: E07", Screen.Title);
        Screen.Press(Key.CursorDown);
        Screen.Shows("reject: fogged", "the weir in fog");
        Screen.Press(Key.Esc);
        Assert.StartsWith(" Holders ", Screen.Title);
    }

    [Fact]
    public void A_side_goes_out_of_service_and_a_holder_is_registered_and_cleaned()
    {
        Screen.Type("7").Find("service").Type("light leak").Press(Key.F8);
        Assert.Equal("light leak", Ledger.HoldingsOn(Ledger.Today).Film.Side("E01-1")!.OutOfService);
        Assert.Contains("1 out, exposed N, 4 d", Screen.Text);
        Assert.Contains("Q09  - -> 4x5, Q09-1, Q09-2", Screen.Type("n").Text);
        Screen.Press(Key.F8);
        Assert.NotNull(Ledger.HoldingsOn(Ledger.Today).Film.Holder("Q09"));
        Assert.Matches(@"E01 +cleaned 20\d\d-\d\d-\d\d(, bagged)? -> cleaned 2026-", Screen.Find("clean").Text);
        Screen.Press(Key.F8);
        Assert.Equal(Ledger.Today, Ledger.HoldingsOn(Ledger.Today).Film.Holder("E01")!.CleanedOn);
        Assert.Equal(SideState.Exposed,
            Ledger.HoldingsOn(Ledger.Today).Film.Read(Ledger.HoldingsOn(Ledger.Today).Film.Side("E01-1")!,
                Ledger.Today).State);
    }
}
