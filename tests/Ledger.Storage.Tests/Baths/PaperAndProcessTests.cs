namespace Ledger.Storage.Tests.Baths;

/// <summary>Paper with baths of its own; a process whose developer is replenished and whose stop is counted.</summary>
public sealed class PaperAndProcessTests : IDisposable
{
    private readonly TemporaryLedger _file = new();

    public PaperAndProcessTests()
    {
        Some.Stock(_file);
        _file.Accept(Some.Define(Some.Film("fibre") with { Name = "Fibre paper", Role = ItemRole.FibrePaper }));
        _file.Accept(Some.Delivery("fibre", 1, 150m));
    }

    public void Dispose() => _file.Dispose();

    private Holdings Now => _file.Ledger.HoldingsOn(_file.Ledger.Today);

    [Fact]
    public void Paper_and_strips_count_by_area_on_the_fixer_for_paper_only()
    {
        Assert.Contains("no fixer for paper", _file.Refuse(Prints()).Sentence, StringComparison.Ordinal);
        Assert.Equal(RefusalKind.WrongMaterial, _file.Refuse(Prints() with { Bath = "F1" }).Kind);
        _file.Accept(Some.Bath("P1") with { Material = BathMaterial.Paper,
            Capacity = new(Area.FromSquareInches(800), "strict, fibre") });
        var printed = _file.Accept(Prints());
        Assert.Equal(7, 25 - Now.OnHand(Now.Item("fibre")!).Base);
        Assert.Equal(6 * 80 + 60, Now.Bath("P1")!.Worked.SquareInches);
        Assert.Equal(Area.Zero, Now.Bath("F1")!.Worked);
        Assert.Equal(RefusalKind.AlreadyThere, _file.Refuse(Prints()).Kind);
        EveryPeriodReconciles();
        Assert.True(new CostReading(_file.Ledger.Costs(Some.Day(1, 1), Some.Day(12, 31))).Prints > Money.Of(42));
        _file.Accept(new Discard { Key = Some.Key(), Date = Some.Day(5, 1), What = "P1", Reason = "spent" });
        EveryPeriodReconciles();
        Assert.Equal(
            RefusalKind.WrongMaterial,
            _file.Refuse(Some.Session() with { Lines = [new() { Item = "fibre", Sheets = 1 }] }).Kind);
        var print = Assert.Single(_file.Ledger.Prints(_file.Ledger.Today, null, 10));
        Assert.Equal((printed.Number, "P01", "P1", 7L, 540m, 42m), (
            print.Number, print.Session, print.Bath, print.Sheets, print.Area.SquareInches, print.Cost.Amount));
        Assert.Equal(
            [(PrintPurpose.Final, 2L, 0), (PrintPurpose.Work, 4L, 0), (PrintPurpose.Strip, 1L, 3)],
            print.Lines.Select(line => (line.Purpose, line.Sheets, line.Strips)));
        Assert.Empty(_file.Ledger.Prints(_file.Ledger.Today, print, 10));
        Assert.Empty(_file.Ledger.Prints(Some.Day(3, 31), null, 10));
    }

    [Fact]
    public void Paper_that_loads_a_fixer_less_counts_by_its_weight()
    {
        _file.Accept(Some.Define(Some.Film("rc") with { Name = "RC paper", Role = ItemRole.ResinCoatedPaper,
            FixerFactorThousandths = 500 }));
        _file.Accept(Some.Delivery("rc", 1, 50m));
        _file.Accept(Some.Bath("P1") with { Material = BathMaterial.Paper });
        _file.Accept(
            Prints() with { Lines = [new() { Item = "rc", Sheets = 2 }, new() { Item = "fibre", Sheets = 1 }] });
        Assert.Equal((240m, 160m), (Now.Bath("P1")!.Worked.SquareInches, Now.Bath("P1")!.WorkedWeighted.SquareInches));
    }

    [Fact]
    public void Paper_is_used_up_by_prints_for_reordering_too()
    {
        _file.Accept(Some.Bath("P1") with { Material = BathMaterial.Paper });
        _file.Accept(Prints());
        Assert.Equal(7, _file.Ledger.Demand(_file.Ledger.Today, 7).Single(series => series.Item == "fibre").Uses.Sum());
    }

    [Fact]
    public void A_replenished_developer_and_a_counted_stop_take_the_sessions_area_too()
    {
        _file.Accept(Some.Define(Some.Syrup() with
        {
            Code = "replenished", MinimumPer80SquareInches = null,
            ReplenisherPer80SquareInches = Volume.FromMillilitres(20),
            Capacity = new(Area.FromSquareInches(1600), "own"),
        }));
        _file.Accept(Some.Define(Some.Fixer() with { Code = "stop", Role = ItemRole.Stop,
            Capacity = new(Area.FromSquareInches(960), "handbook") }));
        _file.Accept(Some.Delivery("replenished", 2, 20m));
        _file.Accept(Some.Delivery("stop", 1, 8m));
        _file.Accept(Some.Process() with
        {
            Key = Some.Key(), Process = "deep",
            Steps =
            [
                new() { Number = 1, Role = ItemRole.Developer, Item = "replenished", Use = StepUse.Reused },
                new() { Number = 2, Role = ItemRole.Stop, Item = "stop", Use = StepUse.Reused },
                new() { Number = 3, Role = ItemRole.Fixer, Item = "fix", Use = StepUse.Reused },
            ],
        });
        var session = Some.Session() with { Process = "deep", Bath = null,
            Lines = [new() { Item = "pan", Sheets = 8 }] };
        Assert.Contains("needs a bath of replenished", _file.Refuse(session).Sentence, StringComparison.Ordinal);
        _file.Accept(Some.Bath("D1") with { Item = "replenished", Dilution = Dilution.Parse("1+0"),
            WorkingVolume = Volume.FromMillilitres(1000) });
        _file.Accept(Some.Bath("S1") with { Item = "stop" });
        Assert.Contains("replenisher due in D1 after this: 160 ml",
            string.Join(' ', _file.Accept(session).Posting.Remarks), StringComparison.Ordinal);
        Assert.All(new[] { "D1", "S1", "F1" }, bath => Assert.Equal(640, Now.Bath(bath)!.Worked.SquareInches));
        Assert.Equal(160, new BathReading(Now.Bath("D1")!, Some.Day(3, 2)).Replenishment!.Due.Millilitres);
        EveryPeriodReconciles();
        _file.Accept(new TopUp { Key = Some.Key(), Date = Some.Day(3, 2), Bath = "D1",
            Added = Volume.FromMillilitres(160), Bled = Volume.FromMillilitres(100) });
        Assert.Equal(0, new BathReading(Now.Bath("D1")!, Some.Day(3, 2)).Replenishment!.Due.Millilitres);
        EveryPeriodReconciles();
    }

    private static PrintSession Prints() => new()
    {
        Key = Some.Key(), Date = Some.Day(4, 1), Session = "P01",
        Lines =
        [
            new() { Item = "fibre", Sheets = 2 },
            new() { Item = "fibre", Sheets = 4, Purpose = PrintPurpose.Work },
            new() { Item = "fibre", Sheets = 1, Strips = 3, Purpose = PrintPurpose.Strip },
        ],
    };

    private void EveryPeriodReconciles()
    {
        Assert.Empty(_file.Ledger.Check(null, default).Problems);
        for (var month = 1; month <= 12; month++)
        {
            Assert.True(new CostReading(_file.Ledger.Costs(Some.Day(month, 1), Some.Day(12, 31))).Reconciles,
                $"from month {month}");
            Assert.True(new CostReading(_file.Ledger.Costs(Some.Day(1, 1), Some.Day(month, 15))).Reconciles,
                $"to month {month}");
        }
    }
}
