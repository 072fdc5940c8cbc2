namespace Ledger.Core.Tests.Journal.Rules;

public sealed class SessionTests
{
    private readonly InMemoryLedger _ledger = Shelves.WithBath();

    [Fact]
    public void One_pass_draws_sheets_developer_stop_and_supplies_and_works_the_bath()
    {
        var posting = _ledger.Post("session line=4_fen80");
        Assert.Equal("session S1: 4 fen80, 320 sq in through F1", posting.Summary);
        Assert.Equal(
            """
            syrup/1: 1000 ml -> 975 ml
            fen80/1: 25 sheets -> 21 sheets
            stop/1: 500 g -> 470 g
            gloves/1: 50 pieces -> 49 pieces
            F1: 0 sq in of 3000 sq in -> 320 sq in of 3000 sq in
            """.ReplaceLineEndings("\n"),
            string.Join('\n', posting.Effects.Select(effect => $"{effect.What}: {effect.Before} -> {effect.After}")));
        Assert.Equal("25 ml", posting.Facts.OfType<SessionHeld>().Single().Developer.ToString());
        Assert.Empty(posting.Remarks);
        Assert.Equal(_ledger.Balances(), _ledger.Held());
    }

    [Fact]
    public void A_syrup_is_weighed_out_once_its_density_is_known()
    {
        var weighed = new Ledger.Core.Journal.Entries.SessionLog
        {
            Key = Some.Key(), Date = Some.Today, Session = "S1", Process = "pm",
            Lines = [new() { Item = "fen80", Sheets = 4, DeveloperWeight = Quantity.Of(31.25m, Unit.Gram) }],
        };
        Assert.Contains("has no density", Assert.IsType<Refused>(_ledger.Preview(weighed)).Refusal.Sentence,
            StringComparison.Ordinal);
        _ledger.Post(Some.Definition(Some.Syrup with { Density = Density.Of(1.25m) }));
        Assert.Contains(new Effect("syrup/1", "1000 ml", "975 ml"), _ledger.Post(weighed).Effects);
        Assert.IsType<Refused>(_ledger.Preview(weighed with
        {
            Key = Some.Key(), Session = "S2",
            Lines = [weighed.Lines[0] with { Developer = Volume.FromMillilitres(25) }],
        }));
    }

    [Theory]
    [InlineData("line=4_fen80", "")]
    [InlineData("line=5_fen80", "batch 1 has 5 sheets of fen80; your limit is 4 (setting batch-sheets)")]
    public void A_batch_of_more_sheets_than_the_users_limit_is_remarked_on(string lines, string remark) => Assert.Equal(
        remark,
        string.Join('|',
            _ledger.Post($"session {lines}").Remarks
                .Where(text => text.StartsWith("batch", StringComparison.Ordinal))));

    [Fact]
    public void What_lay_in_one_tray_is_of_one_film_and_one_group()
    {
        var posting = Assert.IsType<Accepted>(_ledger.Preview(new Ledger.Core.Journal.Entries.SessionLog
        {
            Key = Some.Key(), Date = Some.Today, Session = "S1", Process = "pm",
            Lines =
            [
                new() { Item = "fen80", Sheets = 2, Group = "N", Developer = Volume.FromMillilitres(25) },
                new() { Item = "fen80", Sheets = 2, Group = "N-1" },
                new() { Item = "fen80", Sheets = 2, Group = "N-1", Developer = Volume.FromMillilitres(25) },
            ],
        })).Posting;
        Assert.Equal(["batch 1 mixes the groups N and N-1"], posting.Remarks);
    }

    [Fact]
    public void A_negative_is_filed_and_a_spoiled_sheet_is_not()
    {
        var posting = _ledger.Post(
            "session line=2_fen80_keeper line=1_fen80 line=1_fen80_reject line=1_fen80_test line=1_fen80_practice");
        Assert.Equal(3, Sheets(posting, Places.FiledNegatives));
        Assert.Equal(3, Sheets(posting, Places.Rejects));
        Assert.Equal(
            [Fate.Keeper, Fate.Negative, Fate.Reject, Fate.Test, Fate.Practice],
            posting.Facts.OfType<SheetsDeveloped>().Select(sheets => sheets.Fate));
    }

    [Fact]
    public void Tabular_film_weighs_more_on_the_bath()
    {
        _ledger.Post("session line=8_reed400 line=1_fen80");
        var bath = _ledger.Holdings.Bath("F1")!;
        Assert.Equal((240m, 320m), (bath.Worked.SquareInches, bath.WorkedWeighted.SquareInches));
    }

    /// <summary>What the process's developer takes: syrup 1+49 in 1250 ml, at least 6 ml per 80 sq in.</summary>
    private const string Developer = """
        lines                              | syrup ml | remark
        line=4_fen80                       | 25       |
        line=4_fen80 line=2_fen80          | 50       |
        line=4_fen80_30ml line=2_fen80     | 30       | 30 ml of syrup for 480 sq in in batch 1; at least 36 ml are asked for
        line=4_fen80_20ml                  | 20       | 20 ml of syrup for 320 sq in in batch 1; at least 24 ml are asked for
        line=4_fen80_24ml line=4_fen80_8ml | 32       | 8 ml of syrup for 320 sq in in batch 2; at least 24 ml are asked for
        line=4_fen80_60ml line=4_fen80_8ml | 68       | 8 ml of syrup for 320 sq in in batch 2; at least 24 ml are asked for
        line=6_fen80                       | 36       |
        line=24_reed400                    | 36       |
        """;

    [Fact]
    public void The_developer_is_what_was_measured_or_the_larger_of_dilution_and_area() =>
        Assert.All(Table.Read(Developer), row =>
        {
            var ledger = Shelves.WithBath();
            var posting = ledger.Post($"session {row["lines"]}");
            Assert.Equal(row.Number("syrup ml"), posting.Facts.OfType<SessionHeld>().Single().Developer.Millilitres);
            Assert.Equal(2000 - row.Number("syrup ml"), ledger.Holdings.OnHand(Some.Syrup).Value);
            Assert.Equal(row["remark"],
                string.Join("; ",
                    posting.Remarks.Where(remark => !remark.StartsWith("batch", StringComparison.Ordinal))));
        });

    [Fact]
    public void A_second_bath_takes_the_work_too_but_only_the_first_counts_it()
    {
        _ledger.Post("bath bath=F2 paired_with=F1 date=2026-02-01");
        var posting = _ledger.Post("session line=4_fen80");
        Assert.Equal([true, false], posting.Facts.OfType<BathWorked>().Select(worked => worked.IsFirst));
        Assert.Equal([320m, 0m], _ledger.Holdings.Baths.Select(bath => bath.Worked.SquareInches));

        _ledger.Post("discard what=F1");
        _ledger.Post("session session=S2 line=1_fen80");
        Assert.Equal([80m], _ledger.Holdings.Baths.Select(bath => bath.Worked.SquareInches));
    }

    [Fact]
    public void A_bath_that_would_be_overrun_or_is_too_old_is_remarked_but_not_refused()
    {
        _ledger.Post("session line=37_fen80_1ml date=2026-02-02");
        var posting = _ledger.Post("session session=S2 line=1_fen80_30ml");
        Assert.Equal(["bath F1 would be at 3040 sq in of 3000 sq in (own): mix a fresh one first"], posting.Remarks);

        var old = new InMemoryLedger(new(2026, 6, 1));
        foreach (var known in Shelves.WithBath().All)
            old.Post(known.Entry);
        Assert.Equal(
            ["bath F1 was good until 2026-04-02 and is 120 days old"],
            old.Post("session line=1_fen80_30ml date=2026-06-01").Remarks);
    }

    [Fact]
    public void A_line_draws_from_several_boxes_the_open_one_first()
    {
        _ledger.Post("opening container=fen80/2");
        var posting = _ledger.Post("session line=30_fen80");
        Assert.Equal([25L, 5L], posting.Facts.OfType<SheetsDeveloped>().Select(sheets => sheets.Sheets));
        Assert.Null(_ledger.Holdings.Container("fen80/2"));
        Assert.Equal("20 sheets", _ledger.Holdings.Container("fen80/1")!.Held.ToString());
        Assert.Equal(Money.Of(203.10m),
            posting.Facts.OfType<SheetsDeveloped>().Aggregate(Money.Zero, (sum, sheets) => sum + sheets.Cost));
    }

    [Fact]
    public void Two_steps_that_use_up_one_bottle_see_each_other()
    {
        _ledger.Post("delivery item=stop date=2026-01-11");
        _ledger.Post(Some.Process("twice",
            [.. Some.Steps.Take(1), Stop(2, 600), Stop(3, 400), Some.Steps[2] with { Number = 4 }]));
        Assert.Equal("stop/2: 500 g -> 0 g", Effect(_ledger.Post("session process=twice line=1_fen80"), "stop/2"));
        Assert.Null(_ledger.Holdings.Container("stop/1"));
        Assert.Equal(_ledger.Balances(), _ledger.Held());
    }

    [Fact]
    public void A_difference_can_be_booked_twice_on_the_same_bottle()
    {
        _ledger.Post(Some.Process("twice",
            [.. Some.Steps.Take(1), Stop(2, 600), Stop(3, 400), Some.Steps[2] with { Number = 4 }]));
        Assert.Equal(RefusalKind.MoreThanHeld, _ledger.Refuse("session process=twice line=1_fen80").Kind);
        var posting = _ledger.Post("session process=twice line=1_fen80 book_difference=yes");
        Assert.Equal(500_000, posting.Movements.Where(movement => movement.From == Places.LostOrGained)
            .Sum(movement => movement.Quantity));
        Assert.Equal(_ledger.Balances(), _ledger.Held());
    }

    [Theory]
    [InlineData(StepPer.Session, 30)]
    [InlineData(StepPer.Batch, 60)]
    [InlineData(StepPer.Sheet, 180)]
    [InlineData(StepPer.Litre, 37.5)]
    public void An_amount_is_used_per_session_batch_sheet_or_litre(StepPer per, decimal grams)
    {
        var stop = Stop(2, 30) with { Per = per, WorkingVolume = Volume.FromMillilitres(1250) };
        _ledger.Post(Some.Process("stops", [Some.Steps[0], stop, Some.Steps[2]]));
        _ledger.Post("session process=stops line=4_fen80 line=2_fen80");
        Assert.Equal(500 - grams, _ledger.Holdings.OnHand(Some.Stop).Value);
    }

    [Theory]
    [InlineData(StepPer.Batch, 10, 20)]
    [InlineData(StepPer.Sheet, 10, 60)]
    [InlineData(StepPer.Litre, 40, 100)]
    public void An_amount_of_developer_is_used_per_batch_sheet_or_litre(StepPer per, decimal millilitres, decimal used)
    {
        _ledger.Post(Some.Definition(Some.Syrup with { MinimumPer80SquareInches = null }));
        var developer = Some.Steps[0] with { Per = per, Dilution = null,
            Amount = Quantity.Of(millilitres, Unit.Millilitre) };
        _ledger.Post(Some.Process("amounts", [developer, Some.Steps[2]]));
        var before = _ledger.Holdings.OnHand(Some.Syrup).Value;
        _ledger.Post("session process=amounts line=4_fen80 line=2_fen80");
        Assert.Equal(used, before - _ledger.Holdings.OnHand(Some.Syrup).Value);
    }

    [Theory]
    [InlineData("line=4_reed400 line=2_reed400", StepPer.Session, 60)]
    [InlineData("line=4_reed400 line=2_fen80", StepPer.Session, 150)]
    [InlineData("line=4_reed400 line=2_fen80", StepPer.Batch, 210)]
    public void A_tray_holds_the_volume_of_the_format_in_it(string lines, StepPer per, decimal used)
    {
        _ledger.Post(Some.Process("small", [Some.Steps[0], Some.Steps[2] with
        {
            Use = StepUse.OneShot, Per = per, Dilution = Dilution.Parse("1+9"),
            WorkingVolume = Volume.FromMillilitres(1500), VolumesByFormat = FormatVolumes.Read("4x5=600"),
        }]));
        var before = _ledger.Holdings.OnHand(Some.Fixer).Value;
        _ledger.Post($"session process=small {lines}");
        Assert.Equal(used, before - _ledger.Holdings.OnHand(Some.Fixer).Value);
    }

    [Fact]
    public void A_process_without_developer_or_bath_needs_neither()
    {
        _ledger.Post(Some.Process("water", [new() { Number = 1, Role = ItemRole.Water }]));
        var posting = _ledger.Post("session process=water line=1_fen80_practice");
        Assert.Empty(posting.Facts.OfType<BathWorked>());
        Assert.Equal("session S1: 1 fen80, 80 sq in", posting.Summary);
        Assert.Contains(
            "has no developer, so none can be used",
            _ledger.Refuse("session session=S2 process=water line=1_fen80_5ml").Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void With_two_baths_that_fit_the_session_says_which()
    {
        _ledger.Post("bath bath=F9 working_ml=1000 date=2026-02-01");
        Assert.Equal("say which bath the film went through: F1 or F9 of fix",
            _ledger.Refuse("session line=1_fen80").Sentence);
        Assert.EndsWith("through F9", _ledger.Post("session line=1_fen80 bath=f9").Summary, StringComparison.Ordinal);
    }

    [Fact]
    public void Film_past_its_printed_date_is_remarked()
    {
        _ledger.Post("delivery item=fen80 expires=2026-03-14 date=2026-01-10");
        Assert.Equal(
            ["fen80/3 was good until 2026-03-14 (expiry date)"],
            _ledger.Post("session line=1_fen80_from_fen80/3").Remarks);
    }

    private static ProcessStep Stop(int number, decimal grams) =>
        new() { Number = number, Role = ItemRole.Stop, Item = "stop", Amount = Quantity.Of(grams, Unit.Gram) };

    private static long Sheets(Posting posting, PlaceId place) =>
        posting.Movements.Where(movement => movement.To == place).Sum(movement => movement.Quantity);

    private static string Effect(Posting posting, string what) =>
        posting.Effects.Where(effect => effect.What == what)
            .Select(effect => $"{what}: {effect.Before} -> {effect.After}").Single();
}
