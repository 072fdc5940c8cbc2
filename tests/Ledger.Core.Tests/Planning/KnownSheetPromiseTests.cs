using CsCheck;

namespace Ledger.Core.Tests.Planning;

/// <summary>A plan of exposed sheets, each known by its number: what it promises is what posting it moves.</summary>
public sealed class KnownSheetPromiseTests
{
    [Fact]
    public void Posting_a_plan_of_sheets_picked_by_hand_develops_these_sheets_and_no_others() => Gen.Select(
        Gen.Bool.Array[16], Gen.OneOf("1", "2", "4 4x5=3")).Sample((picked, limit) =>
    {
        var ledger = Exposed();
        ledger.Post($"setting setting=batch-sheets value={limit.Replace(' ', '_')}");
        var before = ledger.Holdings.Film.Sheets.ToDictionary(sheet => sheet.Id);
        var chosen = before.Values.Where((sheet, i) => sheet.Exposure is not null && picked[i]).ToList();
        if (chosen.Count == 0)
            return;
        var plan = Plan(ledger, KnownSheets.Request(chosen));
        var order = plan.Batches.SelectMany(batch => batch.Sheets).Select(sheet => sheet.Known!.Id).ToList();
        Assert.Equal(chosen.Select(sheet => sheet.Id.Value).Order(), order.Select(id => id.Value).Order());
        Assert.All(plan.Batches,
            batch => Assert.Single(batch.Sheets.Select(sheet => (sheet.Known!.Item, sheet.Known.Exposure!.Group))
                .Distinct()));

        var posting = ledger.Post(plan.ToLog(Some.Key(), "S1", Some.Today));
        var developed = posting.Facts.OfType<SheetDeveloped>().ToList();
        Assert.Equal(order, developed.Select(sheet => sheet.Sheet));
        Assert.Equal(
            plan.Batches.SelectMany(batch => batch.Sheets.Select(_ => batch.Number)),
            developed.Select(sheet => sheet.Batch));
        Assert.Equal(before.Keys.Except(order).Order(ById),
            ledger.Holdings.Film.Sheets.Select(sheet => sheet.Id).Order(ById));
        Assert.Equal(
            chosen.GroupBy(sheet => sheet.At).Select(place => (place.Key.Value, (long)place.Count())).Order(),
            posting.Movements.Where(movement => ledger.Holdings.Film.IsPlace(movement.From))
                .GroupBy(movement => movement.From)
                .Select(place => (place.Key.Value, place.Sum(movement => movement.Quantity))).Order());
        Assert.Equal(
            plan.Uses.SelectMany(use => use.Draws).Sum(draw => draw.Cost.Millionths)
                + chosen.Sum(sheet => sheet.Cost.Millionths),
            posting.Movements.Sum(movement => movement.Value.Millionths));
        Assert.Equal(plan.Cost.Total - plan.Cost.Baths,
            new(posting.Movements.Sum(movement => movement.Value.Millionths)));
        Assert.Equal(plan.Baths[0].After, ledger.Holdings.Bath("F1")!.WorkedWeighted);
    }, iter: 100);

    [Fact]
    public void Exposed_sheets_are_found_by_film_by_group_and_by_day()
    {
        var holdings = Exposed().Holdings;
        int Found(string? film, string? group, LocalDate? until) =>
            KnownSheets.Exposed(holdings, film, group, until).Count();
        Assert.Equal((14, 10, 4), (Found(null, null, null), Found("FEN80", null, null), Found("reed400", null, null)));
        Assert.Equal((6, 4), (Found("fen80", "n", null), Found("fen80", "N-1", null)));
        Assert.Equal((0, 6, 14),
            (Found(null, null, new(2026, 2, 9)), Found(null, null, new(2026, 2, 10)),
                Found(null, null, new(2026, 2, 20))));
        Assert.Equal(["#1, #2, #3, #4, #5, #7", "#6, #8, #9, #10"],
            KnownSheets.Request(KnownSheets.Exposed(holdings, "fen80")).Select(line => line.From));
    }

    [Fact]
    public void A_sheet_that_is_named_twice_or_has_gone_cannot_be_planned()
    {
        var ledger = Exposed();
        RequestedSheets Line(string from) => new() { Film = "fen80", Count = 1, From = from };
        Assert.Contains("named twice", Refused(ledger, Line("#1"), Line("E01-1")), StringComparison.Ordinal);
        ledger.Post("session session=S9 from=#1");
        Assert.Contains("\"#1\" any more", Refused(ledger, Line("#1")), StringComparison.Ordinal);
    }

    [Fact]
    public void Exposed_sheets_that_are_planned_are_no_demand_for_film_even_when_they_have_gone()
    {
        var ledger = Exposed();
        ledger.Post(new PlannedSession
        {
            Key = Some.Key(), Date = Some.Today, Plan = "sunday", On = Some.Today.PlusDays(7),
            Request = new() { Process = "pm",
                Sheets = KnownSheets.Request(KnownSheets.Exposed(ledger.Holdings, "fen80", "N")) },
        });
        Assert.Equal(["syrup", "stop", "gloves"], PlannedDemand.Of(ledger.Holdings).Select(demand => demand.Item));
        ledger.Post("session session=S9 from=#1");
        Assert.Empty(PlannedDemand.Of(ledger.Holdings));
    }

    private static Comparer<SheetId> ById { get; } = Comparer<SheetId>.Create((a, b) => a.Value.CompareTo(b.Value));

    private static string Refused(InMemoryLedger ledger, params RequestedSheets[] lines) =>
        Assert.IsType<NotPlanned>(SessionPlanning.Of(new() { Process = "pm", Sheets = lines },
            ledger.Holdings)).Refusal.Sentence;

    private static SessionPlan Plan(InMemoryLedger ledger, IReadOnlyList<RequestedSheets> lines) =>
        Assert.IsType<Planned>(SessionPlanning.Of(new() { Process = "pm", Sheets = lines }, ledger.Holdings)).Plan;

    /// <summary>
    /// Sixteen sheets in holders and boxes, fourteen of them exposed, from two lots of film that take turns: ten of
    /// fen80 for N and N-1, four of reed400, two loaded and not exposed. Some were unloaded already.
    /// </summary>
    private static InMemoryLedger Exposed()
    {
        var ledger = Shelves.WithBath();
        foreach (var holder in new[] { "E01", "E02", "E03", "E04", "E05", "E06" })
            ledger.Post($"holder holder={holder} date=2026-01-11");
        foreach (var holder in new[] { "Q01", "Q02" })
            ledger.Post($"holder holder={holder} format=4x5 date=2026-01-11");
        foreach (var (side, box) in new[]
        {
            ("E01-1", "fen80/1"), ("E01-2", "fen80/2"), ("E02-1", "fen80/1"), ("E02-2", "fen80/2"),
            ("E03-1", "fen80/2"), ("E03-2", "fen80/1"), ("E04-1", "fen80/2"), ("E04-2", "fen80/2"),
            ("E05-1", "fen80/1"), ("E05-2", "fen80/2"), ("E06", "fen80/1"), ("Q01", "reed400"), ("Q02", "reed400"),
        })
            ledger.Post($"load sides={side} from={box} date=2026-02-01");
        ledger.Post("exposure sides=E01,E02-1,E02-2,E03-1,E04-1 group=N date=2026-02-10");
        ledger.Post("exposure sides=E03-2,E04-2,E05 group=N-1 date=2026-02-15");
        ledger.Post("exposure sides=Q01,Q02 group=N date=2026-02-20");
        ledger.Post("unload from=E02,E03 date=2026-02-21");
        return ledger;
    }
}
