using NodaTime.Testing;

namespace Ledger.Exchange.Tests.Import;

/// <summary>The demo year in a ledger's file: import, rules, storage and readings together.</summary>
public sealed class DemoYearLedgerTests : IDisposable
{
    private static readonly LocalDate FirstDay = new(2025, 1, 1);

    private const string Disposal =
        "the maker's safety data sheet and local rules say which place may take it; used fixer holds silver";

    private readonly string _folder = Directory.CreateTempSubdirectory("trayledger-").FullName;
    private readonly LedgerFile _ledger;

    public DemoYearLedgerTests() => _ledger = ReadyLedger.DemoYear(Path.Combine(_folder, "ledger.db"), Clock);

    private static ZonedClock Clock => new(
        new FakeClock(DemoYear.LastDay.AtMidnight().InUtc().ToInstant()), DateTimeZone.Utc, CalendarSystem.Iso);

    private Holdings Now => _ledger.HoldingsOn(DemoYear.LastDay);

    public void Dispose()
    {
        _ledger.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public void Importing_it_again_adds_nothing()
    {
        var before = _ledger.Check(null, default);
        var outcome = Import();
        Assert.Equal((0, DemoYear.Read(DemoYear.LastDay).Count), (outcome.Posted, outcome.AlreadyThere));
        Assert.Equal(before.Entries, _ledger.Check(null, default).Entries);
    }

    /// <summary>Whoever reads only what can need the user finds all that needs the user, every other month.</summary>
    [Fact]
    public void What_today_says_follows_from_what_is_in_use_alone()
    {
        for (var day = FirstDay; day <= DemoYear.LastDay; day = day.PlusDays(60))
        {
            var held = _ledger.HoldingsOn(day);
            var (narrow, all) = (ReorderReading.InUse(_ledger, held), ReorderReading.Of(_ledger, held));
            Assert.Equal(TodayReading.Of(held, all), TodayReading.Of(held, narrow));
            Assert.Equal(Reminders.Of(held, all), Reminders.Of(held, narrow));
        }
    }

    [Fact]
    public void The_file_proves_itself() => Assert.Empty(_ledger.Check(null, default).Problems);

    [Theory]
    [InlineData("fen80", 49)]
    [InlineData("reed400", 3)]
    [InlineData("fen80-120", 2)]
    [InlineData("ortho16", 11)]
    [InlineData("practice", 94)]
    [InlineData("syrup", 64)]
    [InlineData("tarnfix", 500)]
    [InlineData("fibre-vc", 44)]
    [InlineData("paperfix", 1250)]
    [InlineData("citric-stop", 340)]
    [InlineData("rinsal", 340)]
    [InlineData("slipwet", 390)]
    [InlineData("selvane", 250)]
    [InlineData("water", 7000)]
    [InlineData("gloves", 28)]
    public void So_much_is_left_of_each_item(string item, int left) =>
        Assert.Equal(left, Now.OnHand(Now.Item(item)!).Value);

    [Fact]
    public void Of_the_ortho_film5_sheets_are_expired_and6_are_new()
    {
        var ortho = new ShelfReading(Now.Item("ortho16")!, Now.ContainersOf("ortho16"), DemoYear.LastDay);
        Assert.Equal((5, 6), (ortho.Expired.Base, ortho.Usable.Base));
    }

    [Theory]
    [InlineData("syrup", true)]
    [InlineData("reed400", true)]
    [InlineData("fen80", false)]
    [InlineData("tarnfix", false)]
    public void What_is_low_is_below_its_minimum(string item, bool isLow) =>
        Assert.Equal(isLow, new ShelfReading(Now.Item(item)!, Now.ContainersOf(item), DemoYear.LastDay).IsBelowMinimum);

    [Fact]
    public void Bath4_stands_first_past_its_age_with1400_of3000_square_inches_left()
    {
        Assert.Equal(["F4", "F5"],
            Now.Baths.Where(bath => bath.Material == BathMaterial.Film).Select(bath => bath.Code));
        var bath = new BathReading(Now.Bath("F4")!, DemoYear.LastDay);
        Assert.False(Now.IsSecond(bath.Bath));
        Assert.Equal((1600, 1600), (bath.Bath.Worked.SquareInches, bath.Bath.WorkedWeighted.SquareInches));
        Assert.Equal((3000, 1400), (bath.Bath.TotalCapacity!.Value.SquareInches, bath.Remaining!.Value.SquareInches));
        Assert.Equal((182, BathEnd.Age), (bath.AgeDays, bath.EndedBy));
        Assert.Equal((2, 3), (bath.Bath.Rotations, Now.Bath("F5")!.Rotations));
        Assert.Equal(0, Now.Bath("F5")!.Worked.SquareInches);
    }

    [Theory]
    [InlineData("F1", 2400, 2480)]
    [InlineData("F2", 2800, 2800)]
    [InlineData("F3", 2800, 2960)]
    public void The_baths_before_it_took_what_the_table_says(string code, int area, int weighted)
    {
        var bath = _ledger.Bath(code, DemoYear.LastDay)!;
        Assert.Equal((area, weighted), (bath.Worked.SquareInches, bath.WorkedWeighted.SquareInches));
    }

    [Fact]
    public void The_syrup_stands_in_the_last_of_four_small_bottles()
    {
        var bottle = Assert.Single(Now.ContainersOf("syrup"));
        Assert.Equal(("syrup/5", 250, 64), (bottle.Code, bottle.Size.Value, bottle.Held.Value));
        Assert.Equal((new LocalDate(2025, 4, 6), new LocalDate(2028, 2, 29)), (bottle.OpenedOn, bottle.Lot.ExpiresOn));
        var decanted = _ledger.HoldingsOn(new(2025, 4, 6)).ContainersOf("syrup").ToList();
        Assert.Equal([10.5m, 10.5m, 10.5m, 10.5m], decanted.Select(small => small.Value.Amount));
    }

    [Fact]
    public void The_clip_test_of_october_took55_seconds_in_place_of40()
    {
        var test = _ledger.Bath("F3", DemoYear.LastDay)!.ClearingTests[1];
        Assert.Equal((new LocalDate(2025, 10, 12), 55m, 40m, 1160m),
            (test.Date, test.Seconds, test.FreshSeconds, test.Worked.SquareInches));
        Assert.Equal(1.375m, test.Ratio);
    }

    [Fact]
    public void One_jug_was_handed_over_and_the_other_holds_one_bath_of_film_fix_and_three_of_paper_fix()
    {
        var jugs = _ledger.JugsOn(DemoYear.LastDay);
        Assert.Equal([("J1", 3000m), ("J2", 6000m)], jugs.Select(jug => (jug.Code, jug.Held.Millilitres)));
        Assert.Equal([new LocalDate(2025, 9, 20), null], jugs.Select(jug => jug.HandedOverOn));
        Assert.Equal(
            [(BathMaterial.Film, 1500m), (BathMaterial.Paper, 4500m)],
            jugs[1].Fills.GroupBy(fill => fill.Material!.Value).OrderBy(fills => fills.Key)
                .Select(fills => (fills.Key, fills.Sum(fill => fill.Volume.Millilitres))));
    }

    [Theory]
    [InlineData("PF1", 1120)]
    [InlineData("PF2", 1180)]
    [InlineData("PF3", 1080)]
    [InlineData("PF4", 1060)]
    public void The_paper_baths_never_took_more_than15_sheets_by_the_strict_basis(string code, int area)
    {
        var bath = _ledger.Bath(code, DemoYear.LastDay)!;
        Assert.Equal((BathMaterial.Paper, area), (bath.Material, bath.WorkedWeighted.SquareInches));
        Assert.Equal([("strict", 1200m), ("maker's", 4800m)],
            new BathReading(bath,
                DemoYear.LastDay).Bases.Select(basis => (basis.Capacity.Basis, basis.Total.SquareInches)));
        Assert.True(bath.WorkedWeighted <= bath.TotalCapacity);
    }

    [Fact]
    public void The_entry_in_the_wrong_bath_was_reversed()
    {
        Assert.Empty(_ledger.Bath("F5", DemoYear.LastDay)!.ClearingTests);
        Assert.Contains(_ledger.Journal(DemoYear.LastDay, null, 1000), entry =>
            entry is { Kind: "clearing-test", UndoneBy: not null }
                && entry.Summary.Contains("F5", StringComparison.Ordinal));
    }

    [Fact]
    public void Only_what_needs_it_is_remarked_upon()
    {
        using var second = LedgerFile.Open(Path.Combine(_folder, "second.db"), Clock);
        var remarks = DemoYear.Read(DemoYear.LastDay)
            .Select(entry => (entry.Key, Outcome: Assert.IsType<Posted>(second.Post(entry))))
            .Where(posted => !posted.Key.StartsWith("clearing_tests",
                StringComparison.Ordinal)) // each says how long to fix
            .SelectMany(posted => posted.Outcome.Posting.Remarks.Select(remark =>
                (posted.Key.Split('#')[0] + (posted.Key.Contains('#') ? "#" : ""), remark)))
            .Where(remark => !remark.remark.EndsWith("take off its paper label", StringComparison.Ordinal)).ToList();
        Assert.Equal(
            ["sessions:S16", "sessions:S18", "sessions:S20", "sessions:S21",
                "sessions:S22"], // four sheets in one tray, two of them of one subject or more
            remarks.Where(remark => remark.remark.EndsWith("would take them all", StringComparison.Ordinal))
                .Select(remark => remark.Item1).Distinct());
        remarks.RemoveAll(remark => remark.remark.EndsWith("would take them all", StringComparison.Ordinal));
        Assert.Equal(5,
            remarks.RemoveAll(remark => remark.Item1.StartsWith("storage_moves:demo-thaw", StringComparison.Ordinal)));
        Assert.Equal(
            [
                ("deliveries:demo-opening-ortho16", "ortho16 had expired on 2024-08-31 when it came"),
                ("storage_moves:demo-out-of-the-freezer",
                    "fen80/2 comes out of the cold: leave it closed for 24 hours, until 2025-05-23 at the earliest, or "
                        + "it sweats"),
                ("sessions:S07", "ortho16/1 was good until 2024-08-31 (expiry date)"),
                ("jug_handovers:demo-jug-1-handover", Disposal),
                ("sessions:S19", "bath F3 was good until 2026-01-02 and is 189 days old"),
                ("rotations:#", "this is rotation 3 of 3: the next time a fresh pair is mixed"),
                ("rotations:#", "this is rotation 3 of 3: the next time a fresh pair is mixed"),
                ("deliveries:demo-fen80-january-part-1", "25 sheets of fen80 are still to come of order spring-film"),
            ],
            remarks);
    }

    [Fact]
    public void Fen80Used99SheetsFor654_40()
    {
        var film = new CostReading(_ledger.Costs(FirstDay, DemoYear.LastDay)).Of("fen80");
        Assert.Equal((99, 90, 31), (film.SheetsUsed, film.Negatives, film.Keepers));
        Assert.Equal(654.40m, film.Film.Amount);
    }

    [Fact]
    public void ChemistryAndSuppliesDrawnCost93_17()
    {
        var facts = _ledger.Costs(FirstDay, DemoYear.LastDay);
        var poured = Used().Sum(session => (session.Developer + session.OtherChemistry + session.Supplies).Amount);
        var baths = FilmBaths(facts).Sum(bath => bath.Share.Value.Amount);
        Assert.Equal(38.85m, Used().Sum(session => session.Developer.Amount));
        Assert.Equal(4.84m, Used().Sum(session => session.Supplies.Amount));
        Assert.Equal(93.17m, poured + baths);
    }

    /// <summary>
    /// The demo year's own sums spread all that was drawn, 93.17, evenly over its 120 units of 80 sq in: 7.59 for each
    /// of 96 developed sheets of fen80, 8.10 for each of 90 negatives, 23.51 for each of 31 keepers.
    /// </summary>
    [Fact]
    public void Spread_evenly_the_drawn_chemistry_gives_the_figures_of_the_demo_year()
    {
        var facts = _ledger.Costs(FirstDay, DemoYear.LastDay);
        var costs = new CostReading(facts);
        var drawn = Used().Sum(session => (session.Developer + session.OtherChemistry + session.Supplies).Amount)
            + FilmBaths(facts).Sum(bath => bath.Share.Value.Amount);
        var units = Used().SelectMany(session => session.Lines).Sum(line => line.Area.SquareInches) / 80;
        var developed = costs.Sheets.Count(sheet => sheet.Item == "fen80");
        var pan = costs.Of("fen80").Film.Amount + drawn / units * developed;
        Assert.Equal((120m, 96), (units, developed));
        Assert.Equal((7.59m, 8.10m, 23.51m),
            (Math.Round(pan / 96, 2), Math.Round(pan / 90, 2), Math.Round(pan / 31, 2)));
    }

    /// <summary>
    /// The ledger charges a bath by the area against its capacity; what it did not charge is still in the baths or was
    /// poured out.
    /// </summary>
    [Fact]
    public void The_drawn_chemistry_is_charged_poured_out_unused_or_still_in_the_baths()
    {
        var costs = new CostReading(_ledger.Costs(FirstDay, DemoYear.LastDay));
        var neverUsed = FilmBaths(costs.Facts).Sum(bath => bath.NeverUsed.Amount);
        var stillIn = FilmBaths(costs.Facts).Where(bath => !bath.HasEnded)
            .Sum(bath => bath.Share.LeftAfter(bath.WorkedAfter).Amount);
        Assert.Equal(93.17m, (costs.Chemistry + costs.Supplies).Amount + neverUsed + stillIn);
        Assert.True(neverUsed > 0 && stillIn > 0);
    }

    /// <summary>The baths for paper belong to the prints, not to the negatives.</summary>
    private static IEnumerable<BathUse> FilmBaths(CostFacts facts) =>
        facts.Baths.Where(bath => bath.Share.Bath.StartsWith('F'));

    /// <summary>
    /// Fen80 was reached for first in, first out, so that both formulas agree; of ortho16 new film was taken before the
    /// old.
    /// </summary>
    [Fact]
    public void FirstInFirstOutFen80CostsTheSame654_40()
    {
        var costs = new CostReading(_ledger.Costs(FirstDay, DemoYear.LastDay, CostFormula.FirstInFirstOut));
        Assert.Equal(654.40m, costs.Of("fen80").Film.Amount);
        Assert.Equal(67.20m, costs.Of("ortho16").Film.Amount);
        Assert.True(costs.Reconciles);
    }

    [Fact]
    public void Every_millionth_of_the_year_is_accounted_for()
    {
        Assert.True(new CostReading(_ledger.Costs(FirstDay, DemoYear.LastDay)).Reconciles);
        Assert.True(new CostReading(_ledger.Costs(new(2025, 9, 1), new(2025, 12, 31))).Reconciles);
    }

    [Fact]
    public void The_stocktake_found11_millilitres_missing() =>
        Assert.Contains(_ledger.MovesOf("syrup", DemoYear.LastDay, 100),
            move => move.Change == -11_000 && move.Date == new LocalDate(2025, 12, 20));

    /// <summary>They are found in one of two ways, whichever is shorter for what is asked.</summary>
    [Fact]
    public void The_last_moves_are_the_last_of_all_however_many_are_read()
    {
        foreach (var item in _ledger.HoldingsOn(DemoYear.LastDay).Items)
        {
            var all = _ledger.MovesOf(item.Code, DemoYear.LastDay, int.MaxValue);
            Assert.Equal(all.OrderByDescending(move => move.Date).Select(move => move.Date),
                all.Select(move => move.Date));
            foreach (var few in new[] { 1, 2, 3, 5, 8, 30 })
                Assert.Equal(all.Take(few), _ledger.MovesOf(item.Code, DemoYear.LastDay, few));
            var left = _ledger.LeftOf(item.Code, null, FirstDay, DemoYear.LastDay);
            foreach (var since in left.Select(gone => gone.Date))
                Assert.Equal(left.Where(gone => gone.Date >= since),
                    _ledger.LeftOf(item.Code, null, since, DemoYear.LastDay));
        }
    }

    private ImportOutcome Import() => _ledger.Import(DemoYear.Read(DemoYear.LastDay), dryRun: false, null, default);

    /// <summary>What the sessions of the year used.</summary>
    private List<SessionUse> Used()
    {
        var sessions = new List<SessionUse>();
        _ = _ledger.Costs(FirstDay, DemoYear.LastDay, recosted: session =>
        {
            sessions.Add(session);
            return session;
        });
        return sessions;
    }
}
