using static Ledger.Storage.Tests.Support.Holders;

namespace Ledger.Storage.Tests;

/// <summary>What is under suspicion is not used on any way in, stays in stock and value, and is used again once it is
/// cleared.</summary>
public sealed class SuspicionTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public SuspicionTests()
    {
        Some.Stock(_file);
        _file.Accept(Holder("E01"));
        _file.Accept(new Delivery
        {
            Key = Some.Key(), Date = Some.Day(2, 3), Lines = [new() { Item = "pan", Packs = 2, Price = Money.Of(150),
                Batch = "CP-3201" }],
        });
    }

    public void Dispose() => _file.Dispose();

    private Holdings Now => _file.Ledger.HoldingsOn(_file.Ledger.Today);

    private ShelfReading Shelf(string item) => new(Now.Item(item)!, Now.ContainersOf(item), _file.Ledger.Today);

    private static SuspicionRaising Suspect(string what, int month = 4, string? item = null) =>
        new() { Key = Some.Key(), Date = Some.Day(month, 1), What = what, Reason = "fogged edges", Item = item };

    private static SuspicionClearing Clear(string what, int month = 5) =>
        new() { Key = Some.Key(), Date = Some.Day(month, 1), What = what, Reason = "test sheet was clear" };

    private static SessionLog Session(string session, int sheets, string? box = null, Fate fate = Fate.Negative,
        int month = 4)
    {
        var log = Some.Session(session, sheets, fate, month: month);
        return log with { Lines = [log.Lines[0] with { Container = box }] };
    }

    [Fact]
    public void A_number_takes_all_its_boxes_out_of_use_and_leaves_their_value()
    {
        var before = Shelf("pan");
        _file.Accept(Suspect("cp-3201"));
        foreach (var reading in Twice(() => Shelf("pan")))
        {
            Assert.Equal((before.OnHand, before.Value), (reading.OnHand, reading.Value));
            Assert.Equal((50L, 50L), (reading.Usable.Base, reading.Suspect.Base));
            Assert.Equal(["pan/3", "pan/4"], reading.Containers.Where(container => container.IsSuspect)
                .Select(container => container.Container.Code));
        }

        Assert.Equal("under suspicion since 2025-04-01: fogged edges", Now.Container("pan/3")!.Suspicion!.Text);
        Assert.Null(_file.Ledger.HoldingsOn(Some.Day(3, 31)).Container("pan/3")!.Suspicion);
        _file.Accept(Clear("CP-3201"));
        Assert.All(Twice(() => Shelf("pan")), reading => Assert.Equal(100, reading.Usable.Base));
        Assert.Equal(RefusalKind.NotAccepted, _file.Refuse(Clear("CP-3201", 6)).Kind);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void It_is_neither_drawn_nor_loaded_nor_opened_nor_decanted_on_any_way_in()
    {
        _file.Accept(Suspect("pan/1"));
        _file.Accept(Suspect("syrup/1"));
        _file.Accept(Suspect("CP-3201"));
        Entry[] uses =
        [
            Session("S01", 4, "pan/1"), Session("S01", 4, "pan/3"), Some.Session("S01", 26, month: 4),
                Some.Session(month: 4) with { DrawFirst = ["pan/1"] },
            Load(Some.Day(4, 2), "E01-1") with { From = "pan/3" },
            new Opening { Key = Some.Key(), Date = Some.Day(4, 2), Container = "pan/1" },
            new Opening { Key = Some.Key(), Date = Some.Day(4, 2), Container = "pan", Batch = "CP-3201" },
            new Decanting
            {
                Key = Some.Key(), Date = Some.Day(4, 2), From = "syrup/1",
                    Bottles = [new(Quantity.Of(100, Unit.Millilitre), null)],
            },
            new BathMixing { Key = Some.Key(), Date = Some.Day(4, 2), Bath = "D1", Item = "syrup",
                WorkingVolume = Volume.FromMillilitres(1000) },
        ];
        foreach (var use in uses)
            Assert.Contains("under suspicion", Refused(use).Sentence, StringComparison.Ordinal);
        var posted = _file.Accept(Load(Some.Day(4, 2), "E01-1"));
        Assert.Equal("pan/2", posted.Posting.Facts.OfType<SheetLoaded>().Single().Sheet.BoxCode);
        _file.Accept(new Discard { Key = Some.Key(), Date = Some.Day(4, 3), What = "pan/1", Reason = "fogged" });
        Assert.DoesNotContain(Now.Containers, container => container.Code == "pan/1");
    }

    [Fact]
    public void A_test_may_take_from_a_box_that_it_names()
    {
        _file.Accept(Suspect("CP-3201"));
        var posted = _file.Accept(Session("S01", 1, "pan/3", Fate.Test));
        Assert.Contains(posted.Posting.Remarks, remark => remark.Contains("under suspicion", StringComparison.Ordinal));
        Assert.Equal(24, Now.Container("pan/3")!.Held.Base);
    }

    [Fact]
    public void Nothing_goes_through_a_bath_under_suspicion()
    {
        _file.Accept(Suspect("F1"));
        Assert.Contains("under suspicion", Refused(Some.Session("S01", 4, month: 4)).Sentence,
            StringComparison.Ordinal);
        Assert.Contains("none is in use", Refused(Some.Session("S01", 4, bath: null, month: 4)).Sentence,
            StringComparison.Ordinal);
        foreach (var bath in Twice(() => Now.Bath("F1")!))
            Assert.Equal((true, 0), (new Core.Baths.BathReading(bath, _file.Ledger.Today).IsUnusable,
                new Core.Baths.BathReading(bath, Some.Day(4, 2)).RemainingSheets(Now.Formats.Find("8x10"))));
        Assert.NotNull(_file.Ledger.Bath("F1", _file.Ledger.Today)!.Suspicion);
        Assert.Null(_file.Ledger.Bath("F1", Some.Day(3, 31))!.Suspicion);
        _file.Accept(Clear("F1"));
        _file.Accept(Some.Session("S01", 4, month: 6));
    }

    [Fact]
    public void A_plan_reckons_without_it_and_says_so()
    {
        _file.Accept(Suspect("CP-3201"));
        _file.Accept(Suspect("pan/1"));
        var request = new PlanRequest { Process = "tray", Sheets = [new() { Film = "pan", Count = 26 }] };
        var plan = Assert.IsType<Planned>(SessionPlanning.Of(request, Now, Some.Day(4, 2))).Plan;
        var shortage = plan.Shortages.Single(shortage => shortage.Item.Code == "pan");
        Assert.Equal((26L, 25L), (shortage.Needed.Base, shortage.Usable.Base));
        Assert.Contains("pan/1, pan/3, pan/4 are under suspicion", shortage.Cure, StringComparison.Ordinal);
        Assert.Equal(25, new Core.Reordering.ReorderReading[] { Core.Reordering.ReorderReading.Of(_file.Ledger,
            Now).First(item => item.Item.Code == "pan") }[0].Usable.Base);
    }

    [Fact]
    public void What_sits_in_holders_is_named_and_comes_back_under_suspicion()
    {
        _file.Accept(Load(Some.Day(3, 2), "E01-1"));
        _file.Accept(Load(Some.Day(3, 3), "E01-2") with { From = "pan/3" });
        var posted = _file.Accept(Suspect("CP-3201"));
        Assert.Contains(posted.Posting.Remarks, remark =>
            remark.Contains("1 sheet of it sit in E01-2", StringComparison.Ordinal));
        Assert.Equal(["E01-2"], Now.SuspectSheets.Select(sheet => sheet.SideCode));
        _file.Accept(Unload(Some.Day(4, 2), "E01"));
        Assert.Equal(50, Shelf("pan").Suspect.Base);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void Undone_it_is_used_as_before_and_a_number_of_two_items_must_say_which()
    {
        _file.Accept(new Delivery
        {
            Key = Some.Key(), Date = Some.Day(2, 4), Lines = [new() { Item = "syrup", Packs = 1, Price = Money.Of(40),
                Batch = "CP-3201" }],
        });
        Assert.Contains("--item", Refused(Suspect("CP-3201")).Sentence, StringComparison.Ordinal);
        var posted = _file.Accept(Suspect("CP-3201", item: "syrup"));
        Assert.Equal(["syrup/2"], Now.Containers.Where(container => container.Suspicion is not null)
            .Select(container => container.Code));
        Assert.Equal(RefusalKind.AlreadyThere, _file.Refuse(Suspect("CP-3201", 5, "syrup")).Kind);
        _file.Accept(new Undo { Key = Some.Key(), Date = _file.Ledger.Today, Number = posted.Number,
            Reason = "wrong number" });
        Assert.DoesNotContain(Now.Containers, container => container.Suspicion is not null);
        Assert.Equal(RefusalKind.Unknown, Refused(Suspect("XY-1")).Kind);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    private Refusal Refused(Entry entry) => Assert.IsType<Refused>(_file.Ledger.Preview(entry)).Refusal;

    /// <summary>As the holdings follow each posting, and as they are read from the file.</summary>
    private IEnumerable<T> Twice<T>(Func<T> reading)
    {
        yield return reading();
        _file.Reopen();
        yield return reading();
    }
}
