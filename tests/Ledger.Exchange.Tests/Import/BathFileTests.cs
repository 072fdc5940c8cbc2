using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;
using Ledger.Exchange.Tests.Support;
using NodaTime;

namespace Ledger.Exchange.Tests.Import;

/// <summary>What ends baths, and what is taken back, as files tell it.</summary>
public class BathFileTests
{
    private static readonly LocalDate Day = new(2025, 5, 12);

    [Fact]
    public void AnObservationIsASignAMeasureATestOrAContainer()
    {
        const string text =
            """
            date,bath,kind,found,passed,session
            2025-05-12,F1,sight,yellow,,
            2025-05-12,F1,silver,6.5,,
            2025-05-12,F1,residual hypo,0.012 g/m2,yes,S1
            2025-05-12,F1,container,open tray,,
            2025-05-12,S1,indicator,purple,,
            2025-05-12,D1,control strip,speed -0.12,no,
            """;
        var entries = Csv.Read("observations", text).Entries.Select(entry => entry.Entry).ToList();
        Assert.Equal(("yellow", true), (((BathObservation)entries[0]).Sign, ((BathObservation)entries[0]).EndsUse));
        Assert.Equal(6.5m, ((SilverTest)entries[1]).GramsPerLitre);
        Assert.Equal(("hypo", true, "S1"), (((ResidualCheck)entries[2]).LookedFor, ((ResidualCheck)entries[2]).HasPassed, ((ResidualCheck)entries[2]).Session));
        Assert.Equal(WorkingContainer.OpenTray, ((BathStorage)entries[3]).Container);
        Assert.Equal("purple", ((IndicatorReading)entries[4]).Colour);
        Assert.Equal(("speed -0.12", false), (((ControlStripTest)entries[5]).Result, ((ControlStripTest)entries[5]).IsWithinLimits));
        Assert.Equal("passed", Csv.Problem("observations", "date,bath,kind,found\n2025-05-12,D1,control strip,fine\n").Column);
    }

    [Fact]
    public void AnUndoNamesItsEntryByReference()
    {
        var undo = Csv.One<Undo>("undone", "date,entry,reason\n2025-05-12,sessions:S1,wrong bath\n");
        Assert.Equal((Day, "sessions:S1", "wrong bath"), (undo.Date, undo.Reference, undo.Reason));
        Assert.Equal("entry", Csv.Problem("undone", "date,entry,reason\n2025-05-12,,wrong bath\n").Column);
        Assert.Equal("reason", Csv.Problem("undone", "date,entry,reason\n2025-05-12,sessions:S1,\n").Column);
    }

    [Fact]
    public void WhatIsPouredOffMayGoIntoAJug()
    {
        var topUp = Csv.One<TopUp>("top_ups", "date,bath,added_ml,poured_off_ml,jug\n2025-05-12,D1,80,60,J2\n");
        Assert.Equal((80m, 60m, "J2"), (topUp.Added.Millilitres, topUp.Bled.Millilitres, topUp.Jug));
    }

    [Fact]
    public void AnItemNamesItsIndicatorAndTheCeilingOfItsReplenisher()
    {
        var item = Csv.One<ItemDefinition>(
            "items", "item,name,kind,role,unit,pack,indicator,replenisher_ceiling_percent\nstop,Stop,chemical,stop,g,500,purple,80\n").Item;
        Assert.Equal(("purple", 80), (item.Indicator, item.ReplenisherCeilingPercent));
    }

    [Fact]
    public void TheRowsOfAPrintSessionMustAgree()
    {
        const string header = "session,date,item,sheets,bath\nP1,2025-05-12,pan,1,PF1\n";
        Assert.Equal("date", Csv.Problem("prints", header + "P1,2025-05-13,pan,1,PF1\n").Column);
        Assert.Equal("bath", Csv.Problem("prints", header + "P1,2025-05-12,pan,1,PF2\n").Column);
        Assert.Equal(2, Csv.One<PrintSession>("prints", header + "P1,,pan,2,\n").Lines.Count);
    }
}
