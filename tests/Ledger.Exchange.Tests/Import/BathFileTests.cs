namespace Ledger.Exchange.Tests.Import;

/// <summary>What ends baths, and what is taken back, as files tell it.</summary>
public class BathFileTests
{
    private static readonly LocalDate Day = new(2025, 5, 12);

    [Fact]
    public void What_is_learned_about_a_bath_has_a_file_for_each_way_of_learning_it()
    {
        var seen = Csv.One<BathObservation>("observations", "date,bath,sign,note\n2025-05-12,F1,yellow,by daylight\n");
        Assert.Equal(("yellow", true, "by daylight"), (seen.Sign, seen.EndsUse, seen.Note));
        Assert.False(Csv.One<BathObservation>("observations",
            "date,bath,sign,still_used\n2025-05-12,F1,a little yellow,yes\n").EndsUse);
        Assert.Equal(6.5m,
            Csv.One<SilverTest>("silver_tests", "date,bath,grams_per_litre\n2025-05-12,F1,6.5\n").GramsPerLitre);
        var left = Csv.One<ResidualCheck>(
            "residual_tests", "date,bath,looked_for,result,passed,session\n2025-05-12,F1,hypo,0.012 g/m2,yes,S1\n");
        Assert.Equal(("hypo", true, "S1"), (left.LookedFor, left.HasPassed, left.Session));
        Assert.Equal(
            WorkingContainer.OpenTray,
            Csv.One<BathStorage>("bath_storage", "date,bath,container\n2025-05-12,F1,open tray\n").Container);
        Assert.Equal("purple",
            Csv.One<IndicatorReading>("indicators", "date,bath,colour\n2025-05-12,S1,purple\n").Colour);
        var strip = Csv.One<ControlStripTest>("control_strips",
            "date,bath,result,within_limits\n2025-05-12,D1,speed -0.12,no\n");
        Assert.Equal(("speed -0.12", false), (strip.Result, strip.IsWithinLimits));
        Assert.Equal(
            "within_limits",
            Csv.Problem("control_strips", "date,bath,result,within_limits\n2025-05-12,D1,fine,perhaps\n").Column);
    }

    [Fact]
    public void An_undo_names_its_entry_by_reference()
    {
        var undo = Csv.One<Undo>("undone", "date,entry,reason\n2025-05-12,sessions:S1,wrong bath\n");
        Assert.Equal((Day, "sessions:S1", "wrong bath"), (undo.Date, undo.Reference, undo.Reason));
        Assert.Equal("entry", Csv.Problem("undone", "date,entry,reason\n2025-05-12,,wrong bath\n").Column);
        Assert.Equal("reason", Csv.Problem("undone", "date,entry,reason\n2025-05-12,sessions:S1,\n").Column);
    }

    [Fact]
    public void What_is_poured_off_may_go_into_a_jug()
    {
        var topUp = Csv.One<TopUp>("top_ups", "date,bath,added_ml,poured_off_ml,jug\n2025-05-12,D1,80,60,J2\n");
        Assert.Equal((80m, 60m, "J2"), (topUp.Added.Millilitres, topUp.Bled.Millilitres, topUp.Jug));
    }

    [Fact]
    public void An_item_names_its_indicator_and_the_ceiling_of_its_replenisher()
    {
        var item = Csv.One<ItemDefinition>(
            "items",
            "item,name,kind,role,unit,pack,indicator,replenisher_ceiling_percent\nstop,Stop,chemical,stop,g,500,purple,80\n").Item;
        Assert.Equal(("purple", 80), (item.Indicator, item.ReplenisherCeilingPercent));
    }

    [Fact]
    public void The_rows_of_a_print_session_must_agree()
    {
        const string header = "session,date,item,sheets,bath\nP1,2025-05-12,pan,1,PF1\n";
        Assert.Equal("date", Csv.Problem("prints", header + "P1,2025-05-13,pan,1,PF1\n").Column);
        Assert.Equal("bath", Csv.Problem("prints", header + "P1,2025-05-12,pan,1,PF2\n").Column);
        Assert.Equal(2, Csv.One<PrintSession>("prints", header + "P1,,pan,2,\n").Lines.Count);
    }
}
