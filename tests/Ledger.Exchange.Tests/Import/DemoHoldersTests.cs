using NodaTime.Testing;

namespace Ledger.Exchange.Tests.Import;

/// <summary>The demo year's film, to the last sheet: in boxes, in holders, developed, lost.</summary>
public sealed class DemoHoldersTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trayledger-").FullName;
    private readonly LedgerFile _ledger;
    private readonly Holdings _now;

    public DemoHoldersTests()
    {
        var clock = new ZonedClock(
            new FakeClock(DemoYear.LastDay.AtMidnight().InUtc().ToInstant()), DateTimeZone.Utc, CalendarSystem.Iso);
        _ledger = ReadyLedger.DemoYear(Path.Combine(_folder, "ledger.db"), clock);
        _now = _ledger.HoldingsOn(DemoYear.LastDay);
    }

    public void Dispose()
    {
        _ledger.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public void The164_sheets_of_fen80_are_all_accounted_for()
    {
        var places = _ledger.PlacesOf("fen80", DemoYear.LastDay);
        long In(string kind) => places.Where(place => place.Kind == kind).Sum(place => place.Held.Base);
        Assert.Equal(-164, In("supplier"));
        Assert.Equal((90, 6, 3), (In("filed negatives"), In("rejects"), In("discarded")));
        Assert.Equal((16, 49, 0), (In("holder side"), In("container"), In("exposed box")));
        Assert.Equal(0, places.Sum(place => place.Held.Base));
        Assert.Equal([24, 25], _now.ContainersOf("fen80").Select(box => box.Held.Base));
    }

    [Fact]
    public void Nine_sides_are_loaded_and_seven_exposed()
    {
        var pan = _now.Film.Sheets.Where(sheet => sheet.Item == "fen80").ToList();
        Assert.Equal(9, pan.Count(sheet => sheet.Exposure is null));
        Assert.Equal(
            [("N", 3), ("N+1", 2), ("N-1", 2)],
            pan.Where(sheet => sheet.Exposure is not null).GroupBy(sheet => sheet.Exposure!.Group)
                .OrderBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => (group.Key, group.Count())));
        Assert.Equal(new(2025, 12, 20), pan.Min(sheet => sheet.LoadedOn));
        Assert.Equal(["Q01-1", "Q01-2", "Q02-1", "Q02-2"],
            _now.Film.Sheets.Where(sheet => sheet.Item == "reed400").Select(sheet => sheet.SideCode));
    }

    [Fact]
    public void The_leaking_side_is_out_of_service_and_its_fault_is_on_record()
    {
        var side = _now.Film.Side("E07-2")!;
        Assert.Equal("light leak along the hinge", side.OutOfService);
        Assert.Equal([new SideFault(RejectCause.Fogged, 1)], side.Faults);
        var story = _ledger.Story("E07-2", DemoYear.LastDay)!;
        Assert.Equal((Fate.Reject, "S16", "the weir in fog"),
            (story.Development!.Fate, story.Development.Session, story.Exposure!.Subject));
    }

    [Fact]
    public void Only_the_sheets_of_december_have_waited_too_long() => Assert.Equal(
        ["E08-1", "E08-2"],
        TodayReading.Of(_now)
            .Where(notice => notice.Kind is NoticeKind.LoadedLong or NoticeKind.ExposedLong or NoticeKind.SideFaulty)
            .Select(notice => notice.About));

    [Fact]
    public void The_toner_is_forgotten() => Assert.Contains(
        "selvane/1", _ledger.UntouchedSince(DemoYear.LastDay.PlusMonths(-12), DemoYear.LastDay)
            .Select(untouched => untouched.Container.Code));
}
