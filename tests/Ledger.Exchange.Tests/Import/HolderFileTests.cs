namespace Ledger.Exchange.Tests.Import;

/// <summary>The files about holders and sheets.</summary>
public class HolderFileTests
{
    [Theory]
    [InlineData("1/2", new[] { "1", "2" })]
    [InlineData("left / right", new[] { "left", "right" })]
    [InlineData("6", new[] { "1", "2", "3", "4", "5", "6" })]
    [InlineData("", new string[0])]
    public void Sides_are_named_or_counted(string sides, string[] names)
    {
        var holder = Csv.One<HolderDefinition>("holders",
            $"holder,format,sides,notch,bought\nE07,8x10,{sides},VU,2019-05-01\n");
        Assert.Equal(("E07", "8x10", "VU"), (holder.Holder, holder.Format.Code, holder.Notch));
        Assert.Equal(names, holder.Sides);
    }

    [Fact]
    public void Several_sides_stand_in_one_cell()
    {
        var load = Csv.One<Load>("loads", "date,sides,from,anyway\n2025-05-12,\"E01, E02-1\",pan,yes\n");
        Assert.Equal(["E01", "E02-1"], load.Sides);
        Assert.True(load.Anyway);
        var exposure = Csv.One<ExposureNote>("exposures", "date,sides,group,subject\n2025-05-12,E01 E02-1,N-1,mill\n");
        Assert.Equal(("N-1", "mill", 2), (exposure.Group, exposure.Subject, exposure.Sides.Count));
        var unload = Csv.One<Unload>("unloads", "date;from;group\n2025-05-12;pan N;N+1\n");
        Assert.Equal(("pan N", "N+1"), (unload.From[0], unload.Group));
    }

    [Fact]
    public void Cleanings_services_and_keepers_are_read()
    {
        Assert.True(Csv.One<Cleaning>("cleanings", "date,holders,bagged\n2025-05-12,E01,yes\n").IsBagged);
        Assert.False(Csv.One<SideService>("services", "date,sides,reason\n2025-05-12,E07-2,leaks\n").IsInService);
        Assert.Equal("2025-014", Csv.One<KeeperNaming>("keepers", "date,negative\n2025-05-12,2025-014\n").Negative);
    }

    [Fact]
    public void A_session_names_known_sheets_and_what_spoiled_them()
    {
        var session = Csv.One<SessionLog>(
            "sessions",
            "session,date,process,item,sheets,fate,from,cause\nS1,2025-05-12,film,pan,1,reject,E07-2,loaded "
                + "backwards\n");
        Assert.Equal(("E07-2", RejectCause.LoadedBackwards), (session.Lines[0].From, session.Lines[0].Cause));
        Assert.StartsWith(
            "accepted is dust, scratch",
            Csv.Problem("sessions", "session,date,process,item,sheets,cause\nS1,2025-05-12,film,pan,1,rain\n").Accepted,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Formats_have_areas_in_either_unit_and_what_follows_them_may_be_of_them()
    {
        var defined = Csv.Read("formats", "format,area,unit\n220,160 sqin,roll\npostcard,134.75 cm2,\n120,490 cm2,\n");
        Assert.Empty(defined.Problems);
        Assert.Equal(
            [("220", 1032.256m, Unit.Roll), ("postcard", 134.75m, Unit.Sheet), ("120", 490m, Unit.Roll)],
            defined.Entries.Select(sourced => (FormatDefinition)sourced.Entry)
                .Select(entry => (entry.Format.Code, entry.Format.Area.SquareCentimetres, entry.Format.Unit)));
        var spelled = Csv.Read("formats", "format,area\nPostcard,134.75 cm2\n4X5in,19 sqin\n");
        Assert.Equal(["postcard", "4x5"],
            spelled.Entries.Select(sourced => ((FormatDefinition)sourced.Entry).Format.Code));
        Assert.Contains("516.13 cm2", Csv.Problem("formats", "format,area\n220,80 m2\n").Accepted,
            StringComparison.Ordinal);

        var files = ImportFolder.Read(
            [("items", Bytes("item,name,kind,format,pack\ncard,Card,film,postcard,25\n")),
                ("formats", Bytes("format,area\npostcard,134.75 cm2\n"))],
            Csv.Nothing);
        Assert.All(files, file => Assert.Empty(file.Problems));
        Assert.Equal(134.75m,
            Assert.IsType<ItemDefinition>(files[1].Entries[0].Entry).Item.Format!.Area.SquareCentimetres);
    }

    [Fact]
    public void Boxes_move_and_lots_have_exposure_indexes()
    {
        var move = Csv.One<StorageMove>("storage_moves",
            "date,container,to,open_from,note\n2025-05-12,pan/3,shelf,2025-05-14,slowly\n");
        Assert.Equal(
            ("pan/3", "shelf", new LocalDate(2025, 5, 12), new LocalDate(2025, 5, 14), "slowly"),
            (move.Container, move.To, move.Date, move.OpensFrom, move.Note));
        var rating = Csv.One<ExposureIndexSetting>("exposure_indexes",
            "date;container;exposure_index\n2025-05-12;pan/3;64\n");
        Assert.Equal(("pan/3", 64), (rating.Container, rating.ExposureIndex));
        Assert.Equal("exposure_index",
            Csv.Problem("exposure_indexes", "date,container,exposure_index\n2025-05-12,pan/3,fast\n").Column);
    }

    [Fact]
    public void Sides_and_boxes_of_exposed_sheets_are_counted_and_thrown_away_in_sheets()
    {
        Assert.Equal(new(1, Unit.Sheet),
            Csv.One<StockCount>("counts", "date,item,found,reason\n2025-05-12,pan N-1,1,miscounted\n").Found);
        Assert.Equal(new(1, Unit.Sheet),
            Csv.One<Discard>("discards", "date,what,quantity,reason\n2025-05-12,E07-1,1,fogged\n").Quantity);
    }

    private static MemoryStream Bytes(string text) => new(System.Text.Encoding.UTF8.GetBytes(text));
}
