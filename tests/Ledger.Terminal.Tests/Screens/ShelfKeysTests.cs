using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Storage;
using Ledger.Terminal.Tests.Fakes;
using NodaTime;
using NodaTime.Extensions;
using NodaTime.Testing;
using Terminal.Gui.Input;

namespace Ledger.Terminal.Tests.Screens;

/// <summary>What is kept, and what became of it, by keys alone on a screen of 80 by 24.</summary>
public sealed class ShelfKeysTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trayledger").FullName;
    private readonly LedgerFile _ledger;
    private readonly Screen _screen;

    public ShelfKeysTests()
    {
        var clock = new FakeClock(Instant.FromUtc(2026, 3, 15, 9, 0)).InUtc();
        _ledger = ReadyLedger.DemoYear(Path.Combine(_folder, "ledger.db"), clock);
        _screen = new(_ledger);
    }

    public void Dispose()
    {
        _screen.Dispose();
        _ledger.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public void A_box_comes_out_of_the_freezer_and_its_lot_has_an_exposure_index()
    {
        AtBoxesOf("fen80").Press(Key.CursorDown).Type("m");
        Assert.Contains("leave it closed for 24", _screen.Text);
        _screen.Press(Key.F8);
        Assert.Matches(@"Kept in +shelf", _screen.Text);
        Assert.Matches(@"Closed +until 2026-03-16", _screen.Text);

        _screen.Type("i").Type("64").Press(Key.F8);
        Assert.Matches(@"Exposed at +64", _screen.Text);
    }

    [Fact]
    public void A_bottle_has_no_exposure_index() => Assert.DoesNotContain("I Set index", AtBoxesOf("syrup").Text);

    [Fact]
    public void A_sealed_box_is_opened_into_its_envelopes()
    {
        AtBoxesOf("fen80").Press(Key.CursorDown).Type("o").Press(Key.Tab).Type("5").Press(Key.F8);
        Assert.Contains("is kept in the freezer", _screen.Text); // a cold box is asked about
        _screen.Press(Key.F6);
        Assert.Contains("5 envelopes of 5 sheets", _screen.Text);
        Assert.Equal(5, Now.ContainersOf("fen80").Count(box => box.IsSealed && box.Size.Base == 5));
    }

    [Fact]
    public void An_item_is_changed_and_keeps_what_is_not_touched()
    {
        var before = Now.Item("syrup")!;
        AtShelf("syrup").Type("e").Press([.. Enumerable.Repeat(Key.Tab.WithShift, 4)]).Type("Brackwater Syrup II").Press(Key.F8);
        Assert.Equal(before with { Name = "Brackwater Syrup II", OtherCapacities = [] }, Now.Item("syrup")! with { OtherCapacities = [] });
    }

    [Fact]
    public void A_format_is_given_another_area_and_one_is_added()
    {
        _screen.Find("formats").Press(Key.End);
        Assert.Matches(@"120 +rolls +80 +516\.128 +1 +by convention", _screen.Text);
        _screen.Type("n").Type("220").Press(Key.Tab).Type("160 sqin").Press(Key.Tab).Type("roll").Press(Key.F8);
        _screen.Press(Key.End);
        Assert.Matches(@"220 +rolls +160 +1032\.256 +2 +your own", _screen.Text);
        Assert.Equal(Unit.Roll, Now.Formats.Find("220").Unit);

        _screen.Press(Key.Enter);
        Assert.Contains("Format", _screen.Title);
        _screen.Type("300 cm2");
        Assert.Matches("160 sq in -> 46.5 sq in", _screen.Text);
    }

    [Fact]
    public void What_was_forgotten_is_looked_at_for_more_and_fewer_months()
    {
        _screen.Find("forgotten");
        Assert.StartsWith(" Not used for 12 months", _screen.Title);
        Assert.Contains("selvane/1", _screen.Text);
        _screen.Type("+++");
        Assert.StartsWith(" Not used for 15 months", _screen.Title);
        Assert.DoesNotContain("selvane/1", _screen.Text);
        Assert.Contains("Nothing lies unused for 15 months", _screen.Text);
        _screen.Type("-");
        Assert.Contains("selvane/1", _screen.Text);
    }

    [Fact]
    public void A_sessions_sheets_tell_their_stories_and_one_is_named_a_keeper()
    {
        _screen.Type("4").Press(Key.Enter);
        Assert.StartsWith(" Session S22", _screen.Title);
        Assert.Matches(@"Beside +2026-", _screen.Text);
        var plain = _ledger.SheetsOf("S22", _ledger.Today).First(sheet => sheet.Fate == Fate.Negative);
        _screen.Press(Key.Home, Key.Home);
        while (!_screen.Text.Contains($" {plain.Negative}: a sheet of", StringComparison.Ordinal))
            _screen.Press(Key.CursorDown);
        _screen.Type("k").Press(Key.F8);
        Assert.Equal(Fate.Keeper, _ledger.Story(plain.Negative!, _ledger.Today)!.Development!.Fate);
    }

    [Fact]
    public void A_missing_sheet_in_a_holder_is_counted_off_with_a_reason()
    {
        _screen.Type("7c").Type("0").Press(Key.CursorUp, Key.CursorDown).Press(Key.Tab).Type("not there").Press(Key.Tab.WithShift, Key.Tab.WithShift)
            .Type("E01-1").Press(Key.F8);
        Assert.Contains("counted E01-1: 0 sheet", _screen.Text);
        Assert.Equal(1, _ledger.PlacesOf("fen80", _ledger.Today).Single(place => place.Kind == "lost or gained").Held.Base);
        Assert.Equal(0, _ledger.PlacesOf("fen80", _ledger.Today).Sum(place => place.Held.Base));
    }

    private Core.Journal.Holdings Now => _ledger.HoldingsOn(_ledger.Today);

    private Screen AtShelf(string item)
    {
        var row = Now.Items.Select(known => known.Code).ToList().IndexOf(item);
        return _screen.Type("2").Press([.. Enumerable.Repeat(Key.CursorDown, row)]);
    }

    private Screen AtBoxesOf(string item) => AtShelf(item).Press(Key.Enter);
}
