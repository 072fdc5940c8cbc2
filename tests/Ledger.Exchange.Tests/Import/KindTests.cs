using Ledger.Exchange.Import.Rows;

namespace Ledger.Exchange.Tests.Import;

public class KindTests
{
    private static readonly LocalDate Day = new(2025, 5, 12);

    [Fact]
    public void An_item_has_all_its_settings()
    {
        const string text =
            """
            item,name,kind,role,format,unit,pack,dilution,capacity_sq_in_per_litre,capacity_basis,minimum_ml_per_80_sq_in,fixer_factor,sealed_days,opened_full_days,opened_part_days,working_full_days,working_part_days,tray_hours,lead_time_days,service_level,minimum_on_hand,formula,cautions
            fix,Some Fix,chemical,fixer,,ml,1000,1+4,2000,handbook,6.25,1.5,1,2,3,4,5,6,7,0.95,300.5,v2,gloves
            """;
        var definition = Csv.One<ItemDefinition>("items", text);
        Assert.Equal(Csv.Undated, definition.Date);
        Assert.Equal(
            new Item
            {
                Code = "fix",
                Name = "Some Fix",
                Kind = ItemKind.Chemical,
                Role = ItemRole.Fixer,
                Unit = Unit.Millilitre,
                Pack = Quantity.Of(1000, Unit.Millilitre),
                Dilution = Dilution.Parse("1+4"),
                Capacity = new(Area.FromSquareInches(2000), "handbook"),
                MinimumPer80SquareInches = Volume.FromMillilitres(6.25m),
                FixerFactorThousandths = 1500,
                Keeping = new KeepingLimits(1, 2, 3, 4, 5, 6),
                LeadTimeDays = 7,
                ServiceLevel = 0.95m,
                MinimumOnHand = Quantity.Of(300.5m, Unit.Millilitre),
                Formula = "v2",
                Cautions = "gloves",
            },
            definition.Item with { OtherCapacities = [] });
        Assert.Empty(definition.Item.OtherCapacities);
    }

    [Fact]
    public void Film_may_leave_its_unit_to_its_format()
    {
        var item = Csv.One<ItemDefinition>("items", "item,name,kind,format,pack\nroll,A roll,Film,120,5\n").Item;
        Assert.Equal((Unit.Roll, Quantity.Of(5, Unit.Roll), 1000), (item.Unit, item.Pack, item.FixerFactorThousandths));
    }

    [Fact]
    public void The_rows_of_a_process_make_its_steps()
    {
        const string text =
            """
            process,step,role,item,dilution,working_ml,amount,use,minutes,per,note
            film,1,developer,syrup,1+49,1250,,,11.5,batch,gently
            film,2,fixer,fix,,1500,,reused,4,,
            film,3,stop,,,,,,1,,
            film,4,developer,soup,1+9,1000,,,,,
            """;
        var steps = Csv.One<ProcessDefinition>("processes", text).Steps;
        Assert.Equal(
            new ProcessStep
            {
                Number = 1,
                Role = ItemRole.Developer,
                Item = "syrup",
                Dilution = Dilution.Parse("1+49"),
                WorkingVolume = Volume.FromMillilitres(1250),
                Use = StepUse.OneShot,
                Per = StepPer.Batch,
                Minutes = 11.5m,
                Note = "gently",
            },
            steps[0]);
        Assert.Equal((StepUse.Reused, StepPer.Session, null), (steps[1].Use, steps[1].Per, steps[1].Amount));
        Assert.Null(steps[2].Item);
        Assert.Equal(StepPer.Batch, steps[3].Per);
    }

    [Fact]
    public void A_delivery_has_all_its_costs()
    {
        const string text =
            """
            date,item,packs,price,discount,shipping,duty,currency,rate,expires,batch,storage,reference
            2025-05-12,pan,0.56,155.00,1.5,14.50,18.40,usd,0.92,2026-11-30,C1,freezer,order 7
            """;
        var delivery = Csv.One<Delivery>("deliveries", text);
        Assert.Equal(
            new DeliveryLine
            {
                Item = "pan",
                Packs = 0.56m,
                Price = Money.Of(155),
                ExpiresOn = new(2026, 11, 30),
                Batch = "C1",
                Storage = "freezer",
            },
            Assert.Single(delivery.Lines));
        Assert.Equal(
            new Delivery
            {
                Key = "deliveries:order 7",
                FormerKeys = delivery.FormerKeys,
                Reference = "order 7",
                Date = Day,
                Lines = delivery.Lines,
                Discount = Money.Of(1.5m),
                Shipping = Money.Of(14.5m),
                Duty = Money.Of(18.4m),
                Currency = "USD",
                Rate = 0.92m,
            },
            delivery);
    }

    [Fact]
    public void The_rows_of_a_delivery_make_one_entry_and_its_costs_stand_in_one_of_them()
    {
        const string text =
            """
            date,item,packs,price,discount,shipping,duty,currency,rate,batch,reference
            2025-05-12,pan,2,150,5,10,,usd,0.92,C1,inv-1
            2025-05-13,syrup,1,42,,,,,,,
            ,stop,1,9,,,3.3,,,,INV-1
            """;
        var entries = Csv.Read("deliveries", text).Entries.Select(entry => entry.Entry).ToList();
        Assert.Equal(2, entries.Count);
        var delivery = Assert.IsType<Delivery>(entries[0]);
        Assert.Equal(("deliveries:inv-1", "inv-1", Day), (delivery.Key, delivery.Reference, delivery.Date));
        Assert.Equal((Money.Of(5), Money.Of(10), Money.Of(3.3m)),
            (delivery.Discount, delivery.Shipping, delivery.Duty));
        Assert.Equal(("USD", 0.92m), (delivery.Currency, delivery.Rate));
        Assert.Equal([("pan", 2, "C1"), ("stop", 1, "")],
            delivery.Lines.Select(line => (line.Item, (int)line.Packs!.Value, line.Batch)));
        Assert.Equal("syrup", Assert.Single(Assert.IsType<Delivery>(entries[1]).Lines).Item);
        Assert.Equal("shipping",
            Csv.Problem("deliveries", "date,item,packs,shipping,reference\n2025-05-12,pan,1,5,a\n,pan,1,6,a\n").Column);
    }

    [Fact]
    public void An_opening_names_an_item_or_a_container()
    {
        const string text = "date,container,batch\n2025-05-12,pan,C1\n2025-05-12,pan/3,\n";
        var openings = Csv.Read("openings", text).Entries.Select(entry => (Opening)entry.Entry).ToList();
        Assert.Equal([("pan", "C1"), ("pan/3", "")], openings.Select(opening => (opening.Container, opening.Batch)));
        Assert.Equal("container", Csv.Problem("openings", "date,container,batch\n2025-05-12,,C1\n").Column);
    }

    [Fact]
    public void A_bath_is_measured_in_the_unit_of_its_item()
    {
        const string text =
            """
            date,bath,item,dilution,working_ml,concentrate_ml,material,capacity_sq_in_per_litre,capacity_basis,paired_with
            2025-05-12,F2,syrup,1+4,1500,300.5,paper,2000,strict,F1
            2025-05-12,W1,powder,1+0,1500,30,,,,
            """;
        var baths = Csv.Read("baths", text).Entries.Select(entry => (BathMixing)entry.Entry).ToList();
        Assert.Equal(Quantity.Of(300.5m, Unit.Millilitre), baths[0].Amount);
        Assert.Equal((BathMaterial.Paper, "F1", "strict"),
            (baths[0].Material, baths[0].PairedWith, baths[0].Capacity!.Basis));
        Assert.Equal(Quantity.Of(30, Unit.Gram), baths[1].Amount);
        Assert.Equal((BathMaterial.Film, null, null), (baths[1].Material, baths[1].PairedWith, baths[1].Capacity));
    }

    [Fact]
    public void Counts_and_discards_are_in_the_unit_of_the_item_or_of_the_containers_item()
    {
        Assert.Equal(Quantity.Of(30, Unit.Gram),
            Csv.One<StockCount>("counts", "date,item,found,reason\n2025-05-12,powder/2,30,spilt\n").Found);
        Assert.Equal(Quantity.Of(2, Unit.Sheet),
            Csv.One<Discard>("discards", "date,what,quantity,reason\n2025-05-12,pan,2,fogged\n").Quantity);
        Assert.Null(Csv.One<Discard>("discards", "date,what,quantity,reason\n2025-05-12,F1,,spent\n").Quantity);
    }

    [Fact]
    public void The_rows_of_a_session_make_one_entry_and_blank_ones_inherit()
    {
        const string text =
            """
            session,date,process,item,sheets,group,developer_ml,bath,fate,container,note
            S1,2025-05-12,film,pan,3,N,25,F1,,pan/2,
            S2,2025-05-13,film,pan,1,N,25,,test,,
            S1,,,pan,1,N-1,,,keeper,,fine
            """;
        var file = Csv.Read("sessions", text);
        Assert.Empty(file.Problems);
        Assert.Equal([2, 3], file.Entries.Select(entry => entry.Line));
        var session = Assert.IsType<SessionLog>(file.Entries[0].Entry);
        Assert.Equal(("sessions:S1", "S1", Day, "film", "F1"),
            (session.Key, session.Session, session.Date, session.Process, session.Bath));
        Assert.Equal(
            [
                new SessionLine { Item = "pan", Sheets = 3, Group = "N", Developer = Volume.FromMillilitres(25),
                    Container = "pan/2" },
                new SessionLine { Item = "pan", Sheets = 1, Group = "N-1", Fate = Fate.Keeper, Note = "fine" },
            ],
            session.Lines);
        Assert.Null(Assert.IsType<SessionLog>(file.Entries[1].Entry).Bath);
    }

    [Fact]
    public void A_line_has_its_note_and_so_has_the_whole_session()
    {
        var session = Csv.One<SessionLog>(
            "sessions",
            "session,date,process,item,sheets,note,session_note\nS1,2025-05-12,film,pan,1,dust,a long "
                + "day\nS1,,,pan,1,,\n");
        Assert.Equal(("a long day", "dust", ""), (session.Note, session.Lines[0].Note, session.Lines[1].Note));
        Assert.Equal("gently",
            Csv.One<ProcessDefinition>("processes", "process,step,role,process_note\nfilm,1,presoak,gently\n").Note);
    }

    [Fact]
    public void Rows_of_one_reference_are_one_entry_of_several_lines()
    {
        var decanting = Csv.One<Decanting>(
            "decantings", "date,from,bottles,size_ml,last_ml,reference\n2025-04-06,syrup,3,250,,D1\n,,1,125,64,D1\n");
        Assert.Equal("decantings:D1", decanting.Key);
        Assert.Equal(
            [(250m, null), (250m, null), (250m, null), (125m, 64m)],
            decanting.Bottles.Select(bottle => (bottle.Size.Value, bottle.Amount?.Value)));
    }

    [Fact]
    public void A_definition_may_name_the_day_from_which_it_holds() =>
        Assert.Equal(Day,
            Csv.One<ItemDefinition>("items", "item,kind,format,pack,date\npan,film,8x10,25,2025-05-12\n").Date);

    [Theory]
    [InlineData("2025-05-13,film,F1", "date", "2025-05-13", "2025-05-12")]
    [InlineData("2025-05-12,paper,F1", "process", "paper", "film")]
    [InlineData("2025-05-12,film,F2", "bath", "F2", "F1")]
    public void The_rows_of_a_session_must_agree(string second, string column, string found, string said)
    {
        var file = Csv.Read("sessions",
            $"session,item,sheets,date,process,bath\nS1,pan,1,2025-05-12,film,F1\nS1,pan,1,{second}\n");
        Assert.Equal(
            new RowProblem(3, column, found, $"accepted is {said} as on line 2, or nothing: all rows of S1 share it"),
            Assert.Single(file.Problems));
        Assert.Empty(file.Entries);
    }

    [Fact]
    public void A_session_with_one_bad_row_is_no_entry()
    {
        var file = Csv.Read("sessions",
            "session,date,process,item,sheets\nS1,2025-05-12,film,pan,1\nS1,,,,2\n,,,pan,2\n");
        Assert.Empty(file.Entries);
        Assert.Equal([(3, "item"), (4, "session"), (4, "process"), (4, "date")],
            file.Problems.Select(problem => (problem.Line, problem.Column)));
    }

    [Fact]
    public void A_shift_moves_what_happened_and_printed_dates_alike()
    {
        var file = Csv.Read(
            "deliveries", "date,item,packs,expires\n2025-05-12,pan,1,2026-11-30\n", date => date.PlusDays(10));
        var delivery = Assert.IsType<Delivery>(Assert.Single(file.Entries).Entry);
        Assert.Equal((new(2025, 5, 22), new(2026, 12, 10)), (delivery.Date, delivery.Lines[0].ExpiresOn!.Value));
    }
}
