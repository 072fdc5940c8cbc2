using static Ledger.Storage.Tests.Support.Holders;

namespace Ledger.Storage.Tests.Film;

/// <summary>What becomes of a negative after its session: spoiled years later, put right, filed, tested.</summary>
public sealed class FateChangeTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public FateChangeTests()
    {
        Some.Stock(_file);
        _file.Accept(Some.Session(sheets: 4));
    }

    public void Dispose() => _file.Dispose();

    private static FateChange Fate(int month, int day, Fate fate, RejectCause? cause, params string[] sheets) =>
        new() { Key = Some.Key(), Date = Some.Day(month, day), Sheets = sheets, Fate = fate, Cause = cause };

    private CostReading Costs(LocalDate? fatesOn = null) =>
        new(_file.Ledger.Costs(Some.Day(3, 1), Some.Day(3, 31), fatesOn));

    private SheetStory Story(string sheet, LocalDate? day = null) =>
        _file.Ledger.Story(sheet, day ?? _file.Ledger.Today)!;

    [Fact]
    public void A_negative_found_under_fixed_is_a_reject_from_that_day_and_good_again_after_refixing()
    {
        _file.Accept(Fate(8, 24, Core.Sessions.Fate.Reject, RejectCause.UnderFixed, "2025-002", "2025-003"));
        Assert.Equal((Core.Sessions.Fate.Reject, RejectCause.UnderFixed),
            (Story("2025-002").Development!.Fate, Story("2025-002").Development!.Cause!.Value));
        Assert.Equal((Core.Sessions.Fate.Negative, null),
            (Story("2025-002", Some.Day(8, 23)).Development!.Fate,
            Story("2025-002", Some.Day(8, 23)).Development!.Cause));
        Assert.Equal(("rejects", "2025-002"), (Story("2025-002").Place, Story("2025-002").Development!.Negative));
        Assert.Equal("filed negatives", Story("2025-002", Some.Day(8, 23)).Place);

        _file.Accept(Fate(9, 1, Core.Sessions.Fate.Negative, null, "2025-002"));
        Assert.Equal((Core.Sessions.Fate.Negative, null, "filed negatives"),
            (Story("2025-002").Development!.Fate, Story("2025-002").Development!.Cause, Story("2025-002").Place));
        Assert.Equal(["session", "fate", "fate"], Story("2025-002").Steps.Select(step =>
            _file.Ledger.Journal(_file.Ledger.Today, step.Entry + 1, 1)[0].Kind));
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void Costs_follow_the_fates_of_then_or_of_now_and_reconcile_to_the_millionth()
    {
        _file.Accept(Fate(8, 24, Core.Sessions.Fate.Reject, RejectCause.UnderFixed, "2025-002", "2025-003"));
        _file.Accept(Fate(9, 1, Core.Sessions.Fate.Keeper, null, "2025-003"));
        var (then, now) = (Costs(), Costs(_file.Ledger.Today));
        Assert.Equal((4L, 0L), (then.Of("pan").Negatives, then.Of("pan").Keepers));
        Assert.Equal((3L, 1L), (now.Of("pan").Negatives, now.Of("pan").Keepers));
        Assert.Equal(Money.Of(6.5m), now.SpoiledFilm);
        Assert.Equal(then.Film, now.Film + now.SpoiledFilm);
        Assert.True(then.Reconciles && now.Reconciles);
        Assert.Equal(then.Used, now.Used);
        Assert.Equal(2L, Costs(Some.Day(8, 25)).Of("pan").Negatives);
        var places = _file.Ledger.PlacesOf("pan", _file.Ledger.Today);
        Assert.Equal(0L, places.Sum(place => place.Held.Base));
        Assert.Equal(1L, places.Single(place => place.Kind == "rejects").Held.Base);
    }

    [Fact]
    public void A_keeper_is_taken_back_and_what_is_so_already_is_refused()
    {
        _file.Accept(new KeeperNaming { Key = Some.Key(), Date = Some.Day(4, 1), Negative = "2025-001" });
        _file.Accept(Fate(5, 1, Core.Sessions.Fate.Negative, null, "2025-001"));
        Assert.Equal(Core.Sessions.Fate.Negative, Story("2025-001").Development!.Fate);
        Assert.Equal(RefusalKind.AlreadyThere, _file.Refuse(
            Fate(5, 2, Core.Sessions.Fate.Negative, null, "2025-001")).Kind);
        Assert.Contains("cause", _file.Refuse(Fate(5, 2, Core.Sessions.Fate.Keeper, RejectCause.Dust,
            "2025-001")).Sentence, StringComparison.Ordinal);
        Assert.Contains("named twice", _file.Refuse(Fate(5, 2, Core.Sessions.Fate.Reject, null, "2025-001",
            "#1")).Sentence, StringComparison.Ordinal);
        Assert.Equal(RefusalKind.Unknown, _file.Refuse(Fate(5, 2, Core.Sessions.Fate.Reject, null, "2025-099")).Kind);
        Assert.Equal(RefusalKind.Unknown, _file.Refuse(Fate(2, 27, Core.Sessions.Fate.Reject, null, "2025-001")).Kind);
    }

    [Fact]
    public void A_side_answers_for_what_it_spoiled_as_long_as_that_is_so()
    {
        _file.Accept(Holder("E01"));
        _file.Accept(Load(Some.Day(4, 2), "E01-1"));
        _file.Accept(Expose(Some.Day(4, 3), "N", "E01-1"));
        _file.Accept(Develop(Some.Day(4, 4), "S02", From("E01-1")));
        var change = _file.Accept(Fate(8, 1, Core.Sessions.Fate.Reject, RejectCause.Fogged, "2025-005"));
        Assert.Equal(1, Faults());
        _file.Reopen();
        Assert.Equal(1, Faults());
        _file.Accept(new Undo { Key = Some.Key(), Date = _file.Ledger.Today, Number = change.Number,
            Reason = "it was dust" });
        Assert.Equal(0, Faults());
        _file.Accept(Fate(8, 1, Core.Sessions.Fate.Reject, RejectCause.Fogged, "2025-005"));
        _file.Accept(Fate(8, 2, Core.Sessions.Fate.Reject, RejectCause.UnderFixed, "2025-005"));
        Assert.Equal([RejectCause.UnderFixed], Side().Faults.Select(fault => fault.Cause));
        _file.Reopen();
        Assert.Equal([RejectCause.UnderFixed], Side().Faults.Select(fault => fault.Cause));
        Assert.Empty(_file.Ledger.Check(null, default).Problems);

        int Faults() => Side().OwnFaults;
        HolderSide Side() => _file.Ledger.HoldingsOn(_file.Ledger.Today).Film.Side("E01-1")!;
    }

    [Fact]
    public void Numbers_never_change_when_a_fate_does_and_a_late_session_leaves_them()
    {
        _file.Accept(Fate(8, 24, Core.Sessions.Fate.Reject, RejectCause.Scratch, "2025-001"));
        _file.Accept(Some.Session("S00", 2, month: 2));
        Assert.Equal(["2025-005", "2025-006"], _file.Ledger.SheetsOf("S00", _file.Ledger.Today)
            .Select(sheet => sheet.Negative));
        Assert.Equal(
            [("2025-001", Core.Sessions.Fate.Reject), ("2025-002", Core.Sessions.Fate.Negative)],
            _file.Ledger.SheetsOf("S01", _file.Ledger.Today).Take(2).Select(sheet => (sheet.Negative!, sheet.Fate)));
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void A_sheet_tells_what_was_done_to_it_and_where_it_is_filed()
    {
        _file.Accept(new SheetNote
        {
            Key = Some.Key(), Date = Some.Day(8, 24), Sheets = ["2025-002"], What = SheetWork.ResidualSilverTest,
                Result = "brown stain", HasPassed = false,
        });
        _file.Accept(new SheetNote { Key = Some.Key(), Date = Some.Day(8, 25), Sheets = ["2025-002", "2025-003"],
            What = SheetWork.Refixed, Result = "5 min" });
        _file.Accept(new Filing { Key = Some.Key(), Date = Some.Day(8, 26), Sheets = ["2025-002"],
            Place = "binder A" });
        _file.Accept(new Filing { Key = Some.Key(), Date = Some.Day(8, 27), Sheets = ["2025-002"],
            Place = "binder B, page 12" });
        var story = Story("2025-002");
        Assert.Equal(["residual silver test: brown stain, failed", "refixed: 5 min"],
            story.Findings.Select(finding => finding.Text));
        Assert.Equal("binder B, page 12", story.FiledIn);
        Assert.Equal("binder A", Story("2025-002", Some.Day(8, 26)).FiledIn);
        Assert.Equal(5, story.Steps.Count);
        Assert.Contains(
            "passed or failed",
            _file.Refuse(new SheetNote { Key = Some.Key(), Date = Some.Day(8, 28), Sheets = ["#1"],
                What = SheetWork.Spotted, HasPassed = true }).Sentence,
            StringComparison.Ordinal);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }
}
