using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Exchange.Tests.Support;

namespace Ledger.Exchange.Tests.Import;

/// <summary>The files about holders and sheets.</summary>
public class HolderFileTests
{
    [Theory]
    [InlineData("1/2", new[] { "1", "2" })]
    [InlineData("left / right", new[] { "left", "right" })]
    [InlineData("6", new[] { "1", "2", "3", "4", "5", "6" })]
    [InlineData("", new string[0])]
    public void SidesAreNamedOrCounted(string sides, string[] names)
    {
        var holder = Csv.One<HolderDefinition>("holders", $"holder,format,sides,notch,bought\nE07,8x10,{sides},VU,2019-05-01\n");
        Assert.Equal(("E07", "8x10", "VU"), (holder.Holder, holder.Format.Code, holder.Notch));
        Assert.Equal(names, holder.Sides);
    }

    [Fact]
    public void SeveralSidesStandInOneCell()
    {
        var load = Csv.One<Load>("loads", "date,sides,from,anyway\n2025-05-12,\"E01, E02-1\",pan,yes\n");
        Assert.Equal(["E01", "E02-1"], load.Sides);
        Assert.True(load.Anyway);
        var exposure = Csv.One<ExposureNote>("exposures", "date,sides,group,line\n2025-05-12,E01 E02-1,N-1,mill\n");
        Assert.Equal(("N-1", "mill", 2), (exposure.Group, exposure.Line, exposure.Sides.Count));
        var unload = Csv.One<Unload>("unloads", "date;from;group\n2025-05-12;pan N;N+1\n");
        Assert.Equal(("pan N", "N+1"), (unload.From[0], unload.Group));
    }

    [Fact]
    public void CleaningsServicesAndKeepersAreRead()
    {
        Assert.True(Csv.One<Cleaning>("cleanings", "date,holders,bagged\n2025-05-12,E01,yes\n").IsBagged);
        Assert.False(Csv.One<SideService>("services", "date,sides,reason\n2025-05-12,E07-2,leaks\n").IsInService);
        Assert.Equal("2025-014", Csv.One<KeeperNaming>("keepers", "date,negative\n2025-05-12,2025-014\n").Negative);
    }

    [Fact]
    public void ASessionNamesKnownSheetsAndWhatSpoiledThem()
    {
        var session = Csv.One<SessionLog>(
            "sessions", "session,date,process,item,sheets,fate,from,cause\nS1,2025-05-12,film,pan,1,reject,E07-2,wrong way round\n");
        Assert.Equal(("E07-2", RejectCause.WrongWayRound), (session.Lines[0].From, session.Lines[0].Cause));
        Assert.StartsWith(
            "accepted is one of dust",
            Csv.Problem("sessions", "session,date,process,item,sheets,cause\nS1,2025-05-12,film,pan,1,rain\n").Accepted,
            StringComparison.Ordinal);
    }
}
