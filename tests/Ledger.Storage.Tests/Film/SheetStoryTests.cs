using static Ledger.Storage.Tests.Support.Holders;

namespace Ledger.Storage.Tests.Film;

/// <summary>A sheet from its box through a holder, an exposed box and a session to its negative number.</summary>
public sealed class SheetStoryTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public SheetStoryTests()
    {
        Some.Stock(_file);
        _file.Accept(Holder("E01"));
        _file.Accept(Holder("E02"));
    }

    public void Dispose() => _file.Dispose();

    private Holdings Now => _file.Ledger.HoldingsOn(_file.Ledger.Today);

    private SideState State(string side) => Now.Film.Read(Now.Film.Side(side)!, _file.Ledger.Today).State;

    [Fact]
    public void A_sheet_is_told_from_the_box_to_its_number()
    {
        _file.Accept(Load(Some.Day(3, 2), "E01", "E02-1"));
        Assert.Equal(47, Now.OnHand(Now.Item("pan")!).Base);
        Assert.Equal((SideState.Loaded, SideState.Empty), (State("E02-1"), State("E02-2")));
        _file.Accept(Expose(Some.Day(3, 3), "N", "E01") with { Subject = "mill at noon" });
        _file.Accept(Expose(Some.Day(3, 4), "N-1", "E02-1"));
        Assert.Equal(SideState.Exposed, State("E01-2"));
        _file.Accept(Unload(Some.Day(3, 5), "E01", "E02-1"));
        Assert.Equal(["pan N", "pan N-1"], Now.Film.ExposedBoxes.Select(box => box.Code));
        var posted = _file.Accept(Develop(Some.Day(3, 6), "S01", From("pan N", 2),
            From("E02-1", fate: Fate.Reject, cause: RejectCause.Fogged)));

        Assert.Contains(posted.Posting.Remarks,
            remark => remark.Contains("take off its paper label", StringComparison.Ordinal));
        Assert.Empty(Now.Film.ExposedBoxes);
        Assert.Equal(1, Now.Film.Side("E02-1")!.OwnFaults);
        var story = _file.Ledger.Story("2025-001", _file.Ledger.Today)!;
        Assert.Equal(("pan/1", "E01-1", "filed negatives", "mill at noon"),
            (story.Box, story.Side, story.Place, story.Exposure!.Subject));
        Assert.Equal(("S01", "S01-01", "N", Fate.Negative),
            (story.Development!.Session, story.Development.Name, story.Development.Group, story.Development.Fate));
        Assert.Equal(["2025-002"], story.Development.TrayMates);
        Assert.Equal(["load", "exposure", "unload", "session"], story.Steps.Select(step => KindOf(step.Entry)));
        Assert.Equal(6.5m, story.Development.Cost!.Film.Amount);
        Assert.Equal(RejectCause.Fogged, _file.Ledger.Story("E02-1", _file.Ledger.Today)!.Development!.Cause);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void The_sheets_of_a_session_are_read_in_the_order_of_the_trays_with_their_numbers()
    {
        _file.Accept(Load(Some.Day(3, 2), "E01", "E02-1"));
        _file.Accept(Expose(Some.Day(3, 3), "N", "E01", "E02-1") with { Subject = "mill at noon" });
        _file.Accept(Develop(Some.Day(3, 6), "S01", From("E02-1", fate: Fate.Reject), From("E01-2"), From("E01-1")));
        var sheets = _file.Ledger.SheetsOf("s01", _file.Ledger.Today);
        Assert.Equal(
            [(1, null, Fate.Reject, "E02-1"), (2, "2025-001", Fate.Negative, "E01-2"),
                (3, "2025-002", Fate.Negative, "E01-1")],
            sheets.Select(sheet => (sheet.Position, sheet.Negative, sheet.Fate, sheet.Side)));
        Assert.Equal(["mill at noon"], sheets.Select(sheet => sheet.Subject).Distinct());
        _file.Accept(new KeeperNaming { Key = Some.Key(), Date = Some.Day(3, 8), Negative = "2025-002" });
        Assert.Equal(Fate.Keeper, _file.Ledger.SheetsOf("S01", _file.Ledger.Today)[2].Fate);
        Assert.Equal(Fate.Negative, _file.Ledger.SheetsOf("S01", Some.Day(3, 7))[2].Fate);
        Assert.Equal(("S01", 3),
            (_file.Ledger.Session("s01", _file.Ledger.Today)!.Session,
                _file.Ledger.Session("s01", _file.Ledger.Today)!.Sheets));
        Assert.Null(_file.Ledger.Session("S01", Some.Day(3, 5)));
        Assert.Empty(_file.Ledger.SheetsOf("S01", Some.Day(3, 5)));
    }

    [Fact]
    public void An_earlier_day_shows_the_holders_as_they_were()
    {
        _file.Accept(Load(Some.Day(3, 2), "E01"));
        _file.Accept(Expose(Some.Day(3, 4), "N", "E01-1"));
        _file.Accept(Unload(Some.Day(3, 6), "E01-1"));

        var third = _file.Ledger.HoldingsOn(Some.Day(3, 3));
        Assert.Equal(2, third.Film.Sheets.Count());
        Assert.All(third.Film.Sheets, sheet => Assert.Null(sheet.Exposure));
        var fifth = _file.Ledger.HoldingsOn(Some.Day(3, 5));
        Assert.Equal("N", fifth.Film.In(fifth.Film.Side("E01-1")!)!.Exposure!.Group);
        Assert.Empty(fifth.Film.ExposedBoxes);
        Assert.Empty(_file.Ledger.HoldingsOn(Some.Day(3, 1)).Film.Sheets);
    }

    [Fact]
    public void Negative_numbers_are_never_given_twice_even_after_an_undo()
    {
        var first = _file.Accept(Some.Session(sheets: 2));
        _file.Accept(new Undo { Key = Some.Key(), Date = _file.Ledger.Today, Number = first.Number,
            Reason = "wrong day" });
        _file.Accept(Some.Session(sheets: 1));
        Assert.Null(_file.Ledger.Story("2025-002", _file.Ledger.Today));
        Assert.NotNull(_file.Ledger.Story("2025-003", _file.Ledger.Today));
        _file.Accept(new SettingChange { Key = Some.Key(), Date = Some.Day(3, 2), Setting = "negative-pattern",
            Value = "YY/####" });
        _file.Accept(Some.Session("S02", 1, month: 4));
        Assert.NotNull(_file.Ledger.Story("25/0004", _file.Ledger.Today));
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void A_keeper_can_be_named_later_and_the_costs_follow()
    {
        _file.Accept(Some.Session(sheets: 4));
        _file.Accept(new KeeperNaming { Key = Some.Key(), Date = Some.Day(5, 1), Negative = "2025-003" });
        var costs = new CostReading(_file.Ledger.Costs(Some.Day(1, 1), Some.Day(12, 31)));
        Assert.True(costs.Reconciles);
        Assert.Equal((4, 1), (costs.Of("pan").Negatives, costs.Of("pan").Keepers));
        Assert.Equal(Fate.Keeper, costs.Sheets[2].Fate);
        Assert.Equal(0, new CostReading(_file.Ledger.Costs(Some.Day(1, 1), Some.Day(4, 30))).Of("pan").Keepers);
        Assert.Equal(RefusalKind.AlreadyThere,
            _file.Refuse(new KeeperNaming { Key = Some.Key(), Date = Some.Day(5, 2), Negative = "2025-003" }).Kind);
    }

    [Fact]
    public void A_dummy_loads_the_fixer_and_draws_no_film()
    {
        var session = Some.Session(sheets: 1);
        _file.Accept(
            session with { Lines = [.. session.Lines, new() { Item = "pan", Sheets = 1, Fate = Fate.Dummy }] });
        Assert.Equal(49, Now.OnHand(Now.Item("pan")!).Base);
        Assert.Equal(160, Now.Bath("F1")!.Worked.SquareInches);
        var held = _file.Ledger.Sessions(_file.Ledger.Today, null, 1).Single();
        Assert.Equal((1, 160m), (held.Sheets, held.Area.SquareInches));
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void Unexposed_sheets_go_back_and_an_empty_box_is_replaced_by_an_envelope()
    {
        _file.Accept(Load(Some.Day(3, 2), "E01"));
        _file.Accept(Unload(Some.Day(3, 3), "E01-1"));
        Assert.Equal(24, Now.Container("pan/1")!.Held.Base);
        _file.Accept(new Discard { Key = Some.Key(), Date = Some.Day(3, 4), What = "pan/1", Reason = "fogged" });
        _file.Accept(Unload(Some.Day(3, 5), "E01-2"));
        Assert.Equal(1, Now.Container("pan/3")!.Held.Base);
        Assert.True(new CostReading(_file.Ledger.Costs(Some.Day(1, 1), Some.Day(12, 31))).Reconciles);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void An_undo_takes_a_sheet_back_only_when_nothing_later_depends_on_it()
    {
        var load = _file.Accept(Load(Some.Day(3, 2), "E01-1"));
        var exposure = _file.Accept(Expose(Some.Day(3, 3), "N", "E01-1"));
        var unload = _file.Accept(Unload(Some.Day(3, 4), "E01-1"));
        var reload = _file.Accept(Load(Some.Day(3, 5), "E01-1"));

        Assert.Equal(RefusalKind.DependedOn, _file.Refuse(Reverse(load)).Kind);
        Assert.Equal(RefusalKind.DependedOn, _file.Refuse(Reverse(unload)).Kind);
        var unexposed = _file.Accept(Reverse(exposure));
        Assert.Equal(49, Now.OnHand(Now.Item("pan")!).Base);
        _file.Accept(Reverse(unexposed));
        Assert.Equal(48, Now.OnHand(Now.Item("pan")!).Base);
        foreach (var entry in new[] { reload, unload, exposure, load })
            _file.Accept(Reverse(entry));
        Assert.Empty(Now.Film.Sheets);
        Assert.Equal(50, Now.OnHand(Now.Item("pan")!).Base);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void A_wrongly_labelled_box_is_put_right()
    {
        _file.Accept(Load(Some.Day(3, 2), "E01"));
        _file.Accept(Expose(Some.Day(3, 3), "N", "E01"));
        _file.Accept(Unload(Some.Day(3, 4), "E01"));
        _file.Accept(Unload(Some.Day(3, 5), "pan N") with { Group = "N+1" });
        var box = Assert.Single(Now.Film.ExposedBoxes);
        Assert.Equal("N+1", box.Group);
        Assert.All(Now.Film.At(box.Place), sheet => Assert.Equal("N+1", sheet.Exposure!.Group));
        _file.Accept(Unload(Some.Day(3, 6), "pan N+1") with { Group = "N" });
        Assert.Equal(2, Now.Film.At(Assert.Single(Now.Film.ExposedBoxes).Place).Count());
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void A_box_from_the_freezer_is_not_opened_too_soon()
    {
        var posted = _file.Accept(new StorageMove { Key = Some.Key(), Date = Some.Day(3, 1),
            Container = "pan/1", To = "freezer" });
        Assert.Empty(posted.Posting.Remarks);
        _file.Accept(new StorageMove { Key = Some.Key(), Date = Some.Day(3, 5), Container = "pan/1", To = "shelf" });
        Assert.Equal(("shelf", Some.Day(3, 6)), (Now.Container("pan/1")!.Storage, Now.Container("pan/1")!.OpensFrom));
        var opening = new Opening { Key = Some.Key(), Date = Some.Day(3, 5), Container = "pan/1" };
        Assert.Equal(RefusalKind.Doubtful, _file.Refuse(opening).Kind);
        var early = _file.Accept(opening with { Anyway = true });
        Assert.Contains(early.Posting.Remarks, remark => remark.Contains("2025-03-06", StringComparison.Ordinal));
        _file.Accept(new ExposureIndexSetting { Key = Some.Key(), Date = Some.Day(3, 6), Container = "pan/1",
            ExposureIndex = 64 });
        Assert.Equal(64, Now.Container("pan/2")!.Lot.ExposureIndex);
    }

    [Fact]
    public void A_large_box_is_opened_into_its_sealed_envelopes()
    {
        var opened = _file.Accept(new Opening { Key = Some.Key(), Date = Some.Day(3, 1), Container = "pan/1",
            Envelopes = 5 });
        Assert.Null(Now.Container("pan/1"));
        Assert.Equal(
            [("pan/2", 25L), ("pan/3", 5L), ("pan/4", 5L), ("pan/5", 5L), ("pan/6", 5L), ("pan/7", 5L)],
            Now.ContainersOf("pan").OrderBy(box => box.Code, StringComparer.Ordinal)
                .Select(box => (box.Code, box.Held.Base)));
        Assert.All(Now.ContainersOf("pan"), box => Assert.True(box.IsSealed));
        Assert.Equal(325m, Now.ContainersOf("pan").Sum(box => box.Value.Amount));
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
        _file.Accept(Reverse(opened));
        Assert.Equal(["pan/1", "pan/2"], Now.ContainersOf("pan").Select(box => box.Code));
        Assert.Equal(
            RefusalKind.NotAccepted,
            _file.Refuse(new Opening { Key = Some.Key(), Date = Some.Day(3, 1), Container = "pan/1",
                Envelopes = 4 }).Kind);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    /// <summary>
    /// A box of 100 holds four inner envelopes of 25: capabilities of the trade's packing, common practice, no source.
    /// </summary>
    [Fact]
    public void A_box_of100_is_four_sealed_envelopes_of25()
    {
        _file.Accept(Some.Define(Some.Film("large") with { Pack = new(100, Core.Measures.Unit.Sheet) }));
        _file.Accept(Some.Delivery("large", 1, 512.34m));
        _file.Accept(new Opening { Key = Some.Key(), Date = Some.Day(3, 1), Container = "large", Envelopes = 4 });
        Assert.Equal([25L, 25L, 25L, 25L], Now.ContainersOf("large").Select(box => box.Held.Base));
        Assert.All(Now.ContainersOf("large"), box => Assert.True(box.IsSealed));
        _file.Accept(Load(Some.Day(3, 2), "E01") with { From = "large" });
        Assert.Equal([23L, 25L, 25L, 25L], Now.ContainersOf("large").Select(box => box.Held.Base).Order());
        Assert.Single(Now.ContainersOf("large"), box => !box.IsSealed);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void The_sheets_of_a_session_are_listed_with_what_became_of_them()
    {
        _file.Accept(Load(Some.Day(3, 2), "E01"));
        _file.Accept(Expose(Some.Day(3, 3), "N", "E01"));
        _file.Accept(Develop(Some.Day(3, 6), "S01", From("E01-1"),
            From("E01-2", fate: Fate.Reject, cause: RejectCause.Scratch)));
        _file.Accept(new KeeperNaming { Key = Some.Key(), Date = Some.Day(5, 1), Negative = "2025-001" });
        Assert.Equal(
            [(1L, "pan", 1, Fate.Keeper, null, "2025-001", "E01-1"),
                (2L, "pan", 2, Fate.Reject, RejectCause.Scratch, null, "E01-2")],
            _file.Ledger.SheetsOf("s01", _file.Ledger.Today).Select(sheet => (
                sheet.Sheet.Value, sheet.Item, sheet.Batch, sheet.Fate, sheet.Cause, sheet.Negative, sheet.Side)));
        Assert.Equal(Fate.Negative, _file.Ledger.SheetsOf("S01", Some.Day(4, 1))[0].Fate);
        Assert.Empty(_file.Ledger.SheetsOf("S01", Some.Day(3, 5)));
        _file.Accept(new Undo { Key = Some.Key(), Date = _file.Ledger.Today,
            Number = _file.Ledger.Journal(_file.Ledger.Today, null, 1)[0].Number, Reason = "no" });
        Assert.Equal(Fate.Negative, _file.Ledger.SheetsOf("S01", _file.Ledger.Today)[0].Fate);
    }

    [Fact]
    public void A_format_of_the_users_own_is_kept_in_the_file()
    {
        _file.Accept(new FormatDefinition { Key = Some.Key(), Date = Some.Day(1, 1),
            Format = new("220", Core.Measures.Area.FromSquareInches(160), Core.Measures.Unit.Roll) });
        _file.Accept(new FormatDefinition { Key = Some.Key(), Date = Some.Day(1, 1),
            Format = new("8x10", Core.Measures.Area.FromSquareInches(78.5m)) });
        _file.Accept(Holder("E03", "8x10"));
        _file.Reopen();
        Assert.Equal((160m, Core.Measures.Unit.Roll),
            (Now.Formats.Find("220").Area.SquareInches, Now.Formats.Find("220").Unit));
        Assert.Equal(78.5m, Now.Item("pan")!.Format!.Area.SquareInches);
        Assert.Equal(78.5m, Now.Film.Holder("E03")!.Format.Area.SquareInches);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void What_was_not_touched_for_long_is_forgotten()
    {
        _file.Accept(Some.Session());
        var forgotten = _file.Ledger.UntouchedSince(Some.Day(2, 15), _file.Ledger.Today);
        Assert.Equal(["pan/2", "fix/1"], forgotten.Select(container => container.Container.Code));
        Assert.Equal(Some.Day(1, 2), forgotten[0].LastTouched);
    }

    private Undo Reverse(Posted entry) => new() { Key = Some.Key(), Date = _file.Ledger.Today,
        Number = entry.Number, Reason = "mistake" };

    private string KindOf(long entry) => _file.Ledger.Journal(_file.Ledger.Today, entry + 1, 1).Single().Kind;
}
