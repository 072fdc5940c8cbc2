namespace Ledger.Storage.Tests.Baths;

/// <summary>
/// What is learned about baths, bottles and jugs comes back from the file as it went in, and is undone by a correction.
/// </summary>
public sealed class BathStoryTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public BathStoryTests() => Some.Stock(_file);

    public void Dispose() => _file.Dispose();

    private Holdings Now => _file.Ledger.HoldingsOn(_file.Ledger.Today);

    private BathReading F1 => new(Now.Bath("F1")!, _file.Ledger.Today);

    [Fact]
    public void A_clearing_test_knows_the_area_before_it_and_its_baseline()
    {
        _file.Accept(Test(40, isFresh: true, month: 2));
        _file.Accept(Some.Session());
        _file.Accept(Test(55, month: 4, sheets: 1));
        _file.Accept(Some.Session("S02", month: 5));
        _file.Accept(Test(85, month: 6));

        var tests = Now.Bath("F1")!.ClearingTests;
        Assert.Equal([0m, 320, 640], tests.Select(test => test.Worked.SquareInches));
        Assert.Equal([1m, 1.375m, 2.125m], tests.Select(test => test.Ratio!.Value));
        Assert.Equal((BathEnd.Test, Some.Day(6, 10)), (F1.EndedBy, F1.Ends[0].On));
        Assert.Equal(170m, F1.FixingSeconds);
        Assert.NotNull(F1.Clearing.Line);
        Assert.Equal(41, Now.OnHand(Now.Item("pan")!).Base);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
        Assert.Single(_file.Ledger.HoldingsOn(Some.Day(3, 31)).Bath("F1")!.ClearingTests);
        Assert.Equal(3, _file.Ledger.Bath("F1", _file.Ledger.Today)!.ClearingTests.Count);
    }

    [Fact]
    public void A_fresh_time_in_another_bath_of_the_same_item_is_a_baseline_too()
    {
        _file.Accept(Test(40, isFresh: true, month: 2));
        _file.Accept(Some.Bath("F2", month: 4));
        _file.Accept(Test(60, month: 5) with { Bath = "F2" });
        Assert.Equal(1.5m, Now.Bath("F2")!.ClearingTests[0].Ratio);
        Assert.Contains("1.5 times", _file.Ledger.Journal(_file.Ledger.Today, null, 1)[0].Summary,
            StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_seen_ends_the_bath_and_an_undo_brings_it_back()
    {
        var seen = _file.Accept(new BathObservation { Key = Some.Key(), Date = Some.Day(3, 1),
            Bath = "F1", Sign = "yellow" });
        Assert.Equal(BathEnd.Sight, new BathReading(Now.Bath("F1")!, Some.Day(3, 2)).EndedBy);
        var mixing = _file.Ledger.Journal(_file.Ledger.Today, null, 50).Single(entry => entry.Kind == "bath");
        Assert.Equal(RefusalKind.DependedOn, _file.Refuse(Correct(mixing.Number)).Kind);
        _file.Accept(Correct(seen.Number));
        Assert.Null(new BathReading(Now.Bath("F1")!, Some.Day(3, 2)).EndedBy);
    }

    [Fact]
    public void Silver_residue_and_container_come_back()
    {
        _file.Accept(new SettingChange { Key = Some.Key(), Date = Some.Day(2, 2), Setting = "silver-limit-film",
            Value = "6" });
        _file.Accept(Some.Session());
        _file.Accept(new SilverTest { Key = Some.Key(), Date = Some.Day(3, 2), Bath = "F1", GramsPerLitre = 6.5m });
        _file.Accept(new ResidualCheck
        {
            Key = Some.Key(), Date = Some.Day(3, 2), Bath = "F1", LookedFor = "silver", Result = "faint stain",
            HasPassed = false, Session = "S01",
        });
        _file.Accept(new BathStorage { Key = Some.Key(), Date = Some.Day(3, 3), Bath = "F1",
            Container = WorkingContainer.OpenTray });
        var bath = Now.Bath("F1")!;
        Assert.Equal(6.5m, bath.SilverReadings.Single().GramsPerLitre);
        Assert.Equal(("faint stain", false, "S01"),
            (bath.ResidualTests[0].Result, bath.ResidualTests[0].HasPassed, bath.ResidualTests[0].Session));
        Assert.Equal(new Standing(Some.Day(3, 3), WorkingContainer.OpenTray), bath.Standings.Single());
        Assert.Equal(BathEnd.Test, F1.EndedBy);
    }

    [Fact]
    public void A_top_up_moves_its_cost_and_every_period_reconciles()
    {
        _file.Accept(Some.Session());
        _file.Accept(new TopUp { Key = Some.Key(), Date = Some.Day(4, 1), Bath = "F1",
            Added = Volume.FromMillilitres(200) });
        _file.Accept(Some.Session("S02", month: 5));
        _file.Accept(Some.Session("S03", 30, month: 6));
        _file.Accept(Some.Session("S04", 4, month: 7));
        _file.Accept(new TopUp { Key = Some.Key(), Date = Some.Day(8, 1), Bath = "F1",
            Added = Volume.FromMillilitres(100) });
        Assert.Equal(340_000, Now.Bath("F1")!.Contents.Sum(content => content.Quantity.Base) - 20_000);
        Assert.Equal(5.406m + 0.318m, Now.Bath("F1")!.Value.Amount);
        Assert.Equal(Some.Day(6, 1), Now.Bath("F1")!.FilledOn);
        EveryPeriodReconciles();
        _file.Accept(new Discard { Key = Some.Key(), Date = Some.Day(9, 1), What = "F1", Reason = "spent" });
        EveryPeriodReconciles();
    }

    [Fact]
    public void A_rotation_is_read_back_with_both_mixing_dates()
    {
        _file.Accept(Some.Delivery("fix", price: 15.90m));
        _file.Accept(Some.Bath("F2", "F1"));
        _file.Accept(Some.Session());
        _file.Accept(new Rotation { Key = Some.Key(), Date = Some.Day(4, 1), NewBath = "F3" });
        Assert.Equal([("F2", Some.Day(2, 1)), ("F3", Some.Day(4, 1))],
            Now.Baths.Select(bath => (bath.Code, bath.MixedOn)));
        Assert.Equal(1, Now.Bath("F3")!.Rotations);
        EveryPeriodReconciles();
    }

    [Fact]
    public void Decanted_bottles_have_clocks_of_their_own()
    {
        _file.Accept(new Decanting
        {
            Key = Some.Key(), Date = Some.Day(3, 1), From = "syrup",
            Bottles = [new(Millilitres(250)), new(Millilitres(250)), new(Millilitres(250), null, "third"),
                new(Millilitres(600))],
        });
        var bottles = Now.ContainersOf("syrup").ToList();
        Assert.Equal(["syrup/2", "syrup/3", "third", "syrup/5"], bottles.Select(bottle => bottle.Code));
        Assert.Equal([null, null, null, Some.Day(3, 1)], bottles.Select(bottle => bottle.HalfEmptyOn));
        Assert.All(bottles, bottle => Assert.Equal((Some.Day(3, 1), 10.5m), (bottle.OpenedOn, bottle.Value.Amount)));
        EveryPeriodReconciles();
        _file.Accept(Some.Session(month: 4));
        Assert.Equal(225_000, Now.Container("syrup/2")!.Held.Base);
        var decanting = _file.Ledger.Journal(_file.Ledger.Today, null, 50).Single(entry => entry.Kind == "decanting");
        _file.Accept(Correct(decanting.Number));
        Assert.Equal((975_000, true), (Now.Container("syrup/1")!.Held.Base, Now.Container("syrup/2") is null));
        EveryPeriodReconciles();
    }

    [Fact]
    public void Stock_solutions_bring_their_own_lot_cost_and_life()
    {
        _file.Accept(Some.Define(Some.Syrup() with { Code = "powder", Unit = Unit.Gram,
            Pack = Quantity.Of(100, Unit.Gram), Dilution = null, MinimumPer80SquareInches = null }));
        _file.Accept(Some.Define(Some.Syrup() with { Code = "stock", StockOf = "powder", Density = Density.Of(1.1m),
            DeadVolume = Millilitres(5) }));
        _file.Accept(Some.Delivery("powder", 2, 10m));
        var mixing = _file.Accept(new StockSolution
        {
            Key = Some.Key(), Date = Some.Day(3, 1), Item = "stock", Volume = Volume.FromMillilitres(1000),
            Bottles = [new(Millilitres(500)), new(Millilitres(500))],
        });
        Assert.Equal([(5m, true), (5m, true)],
            Now.ContainersOf("stock").Select(bottle => (bottle.Value.Amount, bottle.Lot.IsMixed)));
        var stock = Now.Item("stock")!;
        Assert.Equal(("powder", 1100, 5_000L),
            (stock.StockOf, stock.Density!.Value.Thousandths, stock.DeadVolume!.Value.Base));
        EveryPeriodReconciles();
        _file.Accept(Correct(mixing.Number));
        Assert.Equal(200_000, Now.OnHand(Now.Item("powder")!).Base);
        Assert.Empty(Now.ContainersOf("stock"));
        EveryPeriodReconciles();
    }

    [Fact]
    public void Jugs_take_what_is_poured_out_and_are_handed_over()
    {
        var start = _file.Accept(new JugStart { Key = Some.Key(), Date = Some.Day(2, 1), Jug = "J1",
            Size = Volume.FromMillilitres(20_000), Contents = "used fixer" });
        Assert.Contains("has room", string.Join(' ', Preview(Pour(null)).Remarks), StringComparison.Ordinal);
        _file.Accept(Pour("j1"));
        _file.Accept(new JugFilling { Key = Some.Key(), Date = Some.Day(5, 2), Jug = "J1",
            Volume = Volume.FromMillilitres(500), What = "rinse" });
        var jug = Now.Jug("J1")!;
        Assert.Equal((2000m, 18_000m), (jug.Held.Millilitres, jug.Room.Millilitres));
        Assert.Equal((BathMaterial.Film, "film fixer F1"), (jug.Fills[0].Material!.Value, jug.Fills[0].What));
        Assert.Equal(RefusalKind.DependedOn, _file.Refuse(Correct(start.Number)).Kind);
        _file.Accept(new JugHandover { Key = Some.Key(), Date = Some.Day(6, 1), Jug = "J1", To = "collection point" });
        Assert.Null(Now.Jug("J1"));
        Assert.Equal("collection point", _file.Ledger.JugsOn(_file.Ledger.Today).Single().HandedTo);
        EveryPeriodReconciles();
    }

    [Fact]
    public void A_strip_a_colour_and_a_ceiling_come_back_and_are_taken_back()
    {
        _file.Accept(Some.Define(Some.Fixer() with { Indicator = "purple" }));
        _file.Accept(Some.Define(Some.Syrup() with
        {
            Code = "seasoned", MinimumPer80SquareInches = null,
            ReplenisherPer80SquareInches = Volume.FromMillilitres(20), ReplenisherCeilingPercent = 30,
        }));
        _file.Accept(Some.Delivery("seasoned", 2, 20m));
        _file.Accept(Some.Bath("D1") with { Item = "seasoned", Dilution = Dilution.Parse("1+0"),
            WorkingVolume = Volume.FromMillilitres(1000) });
        _file.Accept(new ControlStripTest { Key = Some.Key(), Date = Some.Day(3, 1), Bath = "D1",
            Result = "speed -0.12", IsWithinLimits = false });
        _file.Accept(new TopUp
        {
            Key = Some.Key(), Date = Some.Day(3, 2), Bath = "D1", Added = Volume.FromMillilitres(300),
            Item = "seasoned", Dilution = Dilution.Parse("1+0"),
        });
        var colour = _file.Accept(new IndicatorReading { Key = "colour", Date = Some.Day(3, 3),
            Bath = "F1", Colour = "purple" });
        var developer = Now.Bath("D1")!;
        Assert.Equal(("purple", 30), (Now.Item("fix")!.Indicator, Now.Item("seasoned")!.ReplenisherCeilingPercent));
        Assert.Equal(new ControlStrip(Some.Day(3, 1), "speed -0.12", false), developer.ControlStrips.Single());
        Assert.Equal((BathEnd.Replenisher, Some.Day(3, 2)),
            (new BathReading(developer, Some.Day(4, 1)).Ends[0].By,
                new BathReading(developer, Some.Day(4, 1)).Ends[0].On));
        Assert.Equal(BathEnd.Sight, F1.Ends.Single(end => end.On == Some.Day(3, 3)).By);
        var mixing = _file.Ledger.Journal(_file.Ledger.Today, null,
            50).Single(entry => entry.Summary.StartsWith("mixed bath D1", StringComparison.Ordinal));
        Assert.Equal(RefusalKind.DependedOn, _file.Refuse(Correct(mixing.Number)).Kind);

        var back = _file.Accept(new Undo { Key = Some.Key(), Date = _file.Ledger.Today, Reference = "colour",
            Reason = "it was yellow" });
        Assert.Equal(colour.Number, Assert.IsType<Undo>(back.Posting.Entry).Number);
        Assert.Empty(Now.Bath("F1")!.Observations);
        Assert.Equal(RefusalKind.AlreadyThere,
            _file.Refuse(new Undo { Key = Some.Key(), Date = _file.Ledger.Today, Reference = "colour",
                Reason = "again" }).Kind);
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    [Fact]
    public void A_bath_that_was_poured_out_knows_when_and_why()
    {
        _file.Accept(Pour(null));
        Assert.Equal(new BathDiscard(Some.Day(5, 1), "spent"), _file.Ledger.Bath("F1", _file.Ledger.Today)!.Discarded);
        Assert.Null(_file.Ledger.Bath("F1", Some.Day(4, 30))!.Discarded);
    }

    [Fact]
    public void The_day_below_half_is_read_for_an_older_formula_too()
    {
        _file.Accept(
            Some.Session(sheets: 4) with { Lines = [new() { Item = "pan", Sheets = 4,
                Developer = Volume.FromMillilitres(600) }] });
        _file.Accept(Some.Define(Some.Syrup() with { Formula = "2",
            Keeping = Core.Keeping.KeepingLimits.None }) with { Date = Some.Day(4, 1) });
        var bottle = Now.ContainersOf("syrup").Single();
        Assert.Equal(Some.Day(3, 1), bottle.HalfEmptyOn);
        Assert.Equal(
            (Some.Day(3, 1).PlusDays(180), KeepingRule.SinceHalfEmpty),
            (bottle.GoodUntil(Now.Item("syrup")!.Keeping)!.Date, bottle.GoodUntil(Now.Item("syrup")!.Keeping)!.Rule));
    }

    [Fact]
    public void A_changed_formula_keeps_older_lots_as_they_were()
    {
        _file.Accept(Some.Define(Some.Gloves() with { Formula = "2",
            Keeping = new(SealedDays: 10) }) with { Date = Some.Day(2, 1) });
        _file.Accept(Some.Delivery("gloves", month: 2));
        var limits = Now.Item("gloves")!.Keeping;
        Assert.Equal([null, Some.Day(2, 12)], Now.ContainersOf("gloves").Select(box => box.GoodUntil(limits)?.Date));
        Assert.Equal(["", "2"], Now.ContainersOf("gloves").Select(box => box.Lot.Formula));
    }

    [Fact]
    public void Settings_of_an_item_that_only_some_have_come_back()
    {
        _file.Accept(Some.Define(Some.Fixer() with
        {
            OtherCapacities = [new(Area.FromSquareInches(1000), "strict"), new(Area.FromSquareInches(1600), "maker's")],
            Keeping = new(WorkingFullDays: 180, FloatingLidDays: 60),
        }));
        Assert.Equal(["handbook", "strict", "maker's"], F1.Bases.Select(basis => basis.Capacity.Basis));
        Assert.Equal([3000m, 1500, 2400], F1.Bases.Select(basis => basis.Remaining.SquareInches));
        Assert.Equal(60, Now.Item("fix")!.Keeping.FloatingLidDays);
    }

    private void EveryPeriodReconciles()
    {
        var problems = _file.Ledger.Check(null, default).Problems;
        Assert.True(problems.Count == 0, string.Join("; ", problems));
        for (var month = 1; month <= 12; month++)
            Assert.True(new CostReading(_file.Ledger.Costs(Some.Day(month, 1), Some.Day(12, 31))).Reconciles,
                $"from month {month}");
        for (var month = 1; month <= 12; month++)
            Assert.True(new CostReading(_file.Ledger.Costs(Some.Day(1, 1), Some.Day(month, 15))).Reconciles,
                $"to month {month}");
    }

    private Posting Preview(Entry entry) => Assert.IsType<Accepted>(_file.Ledger.Preview(entry)).Posting;

    private static Discard Pour(string? jug) =>
        new() { Key = Some.Key(), Date = Some.Day(5, 1), What = "F1", Reason = "spent", Jug = jug };

    private static Quantity Millilitres(decimal amount) => Quantity.Of(amount, Unit.Millilitre);

    private static ClearingTest Test(decimal seconds, int month, bool isFresh = false, int sheets = 0) => new()
    {
        Key = Some.Key(), Date = Some.Day(month, 10), Bath = "F1", Film = "pan", Seconds = seconds,
        IsFresh = isFresh, Sheets = sheets,
    };

    private Undo Correct(long number) => new() { Key = Some.Key(), Date = _file.Ledger.Today,
        Number = number, Reason = "mistaken" };
}
