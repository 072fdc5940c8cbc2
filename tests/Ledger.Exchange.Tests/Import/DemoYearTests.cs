namespace Ledger.Exchange.Tests.Import;

/// <summary>The demo year as its files tell it, before any rule of the ledger has seen it.</summary>
public class DemoYearTests
{
    private static readonly IReadOnlyList<Entry> Entries = DemoYear.Read(DemoYear.LastDay);
    private static readonly List<SessionLog> Sessions = [.. Entries.OfType<SessionLog>()];
    private static readonly Dictionary<string, Item> Items = Entries.OfType<ItemDefinition>()
        .ToDictionary(entry => entry.Item.Code, entry => entry.Item);

    [Fact]
    public void Every_file_has_nothing_to_remark()
    {
        Assert.Equal(
        [
            "items", "processes", "holders", "orders", "deliveries", "storage_moves", "openings",
            "exposure_indexes", "cleanings", "loads", "exposures", "unloads", "decantings", "jug_starts",
            "jug_handovers", "baths", "rotations", "counts", "discards", "sessions", "prints",
            "clearing_tests", "services", "keepers", "price_rises", "plans", "undone",
        ], DemoYear.Kinds);
        var files = ImportFolder.Read(DemoYear.Kinds.Select(kind => (kind, DemoYear.Open(kind)!)),
            Csv.Nothing with { Today = DemoYear.LastDay });
        Assert.Empty(files.SelectMany(file => file.Problems));
        Assert.Empty(files.SelectMany(file => file.Remarks));
        Assert.Equal(Entries.Count, Entries.Select(entry => entry.Key).Distinct().Count());
    }

    [Fact]
    public void Twenty_two_sessions_of37_batches_take925_millilitres_and9600_square_inches()
    {
        Assert.Equal(22, Sessions.Count);
        Assert.Equal(37, Lines().Count(line => line.Developer is not null));
        Assert.Equal(925, Lines().Sum(line => line.Developer?.Millilitres ?? 0));
        Assert.Equal(9600, Lines().Sum(line => Items[line.Item].AreaOf(line.Sheets).SquareInches));
    }

    [Theory]
    [InlineData("fen80", 164, 96, 3)]
    [InlineData("reed400", 31, 24, 0)]
    [InlineData("fen80-120", 8, 6, 0)]
    [InlineData("ortho16", 19, 8, 0)]
    [InlineData("practice", 100, 4, 2)]
    public void Film_is_received_developed_and_lost(string film, int received, int developed, int lost)
    {
        Assert.Equal(received, Came(film).Sum(one => one.Line.Packs!.Value * Items[film].Pack.Base));
        Assert.Equal(developed, Lines(film).Sum(line => line.Sheets));
        var cutUp = Entries.OfType<ClearingTest>().Where(test => test.Film == film).Sum(test => test.Sheets);
        Assert.Equal(lost,
            cutUp + Entries.OfType<Discard>().Where(discard => discard.What == film)
                .Sum(discard => discard.Quantity!.Value.Base));
    }

    [Fact]
    public void Fen80_has6_rejects90_good_negatives_and31_keepers()
    {
        Assert.Equal(6, Lines("fen80").Where(line => line.Fate == Fate.Reject).Sum(line => line.Sheets));
        Assert.Equal(90, Lines("fen80").Where(line => line.Fate.IsNegative()).Sum(line => line.Sheets));
        Assert.Equal(31, Lines("fen80").Where(line => line.Fate == Fate.Keeper).Sum(line => line.Sheets));
    }

    [Theory]
    [InlineData("fen80", new[] { 6.20, 6.20, 6.77, 7.41, 7.73 })]
    [InlineData("ortho16", new[] { 8.40, 11.14 })]
    [InlineData("reed400", new[] { 1.55 })]
    [InlineData("fen80-120", new[] { 7.20 })]
    [InlineData("practice", new[] { 0.55 })]
    public void Each_delivery_has_its_landed_cost_per_sheet(string film, double[] perSheet) =>
        Assert.Equal(
            perSheet.Select(amount => (decimal)amount),
            Came(film).Select(one => Landed(one.Delivery, one.Line) / (one.Line.Packs!.Value * Items[film].Pack.Base)));

    [Fact]
    public void On_another_day_the_whole_year_is_moved()
    {
        var later = DemoYear.Read(DemoYear.LastDay.PlusDays(500));
        Assert.Equal(Entries.Select(entry => (entry.Key, entry.Date.PlusDays(500))),
            later.Select(entry => (entry.Key, entry.Date)));
        Assert.All(
            Lines(Entries).Zip(Lines(later)),
            pair => Assert.Equal(pair.First.ExpiresOn?.PlusDays(500), pair.Second.ExpiresOn));
        Assert.True(later.All(entry => entry.Date <= DemoYear.LastDay.PlusDays(500)));
    }

    [Fact]
    public void Ten_print_sessions_take55_and_a_half_sheets_of_paper_by_area()
    {
        var lines = Entries.OfType<PrintSession>().SelectMany(session => session.Lines).ToList();
        int Sheets(PrintPurpose purpose) => lines.Where(line => line.Purpose == purpose).Sum(line => line.Sheets);
        Assert.Equal(10, Entries.OfType<PrintSession>().Count());
        Assert.Equal((18, 31, 26),
            (Sheets(PrintPurpose.Final), Sheets(PrintPurpose.Work), lines.Sum(line => line.Strips)));
        Assert.Equal(56, lines.Sum(line => line.Sheets));
        Assert.All(lines, line => Assert.Equal(4, line.StripsPerSheet));
        Assert.Equal(55.5m,
            Sheets(PrintPurpose.Final) + Sheets(PrintPurpose.Work) + lines.Sum(line => line.Strips) / 4m);
    }

    private static IEnumerable<SessionLine> Lines() => Sessions.SelectMany(session => session.Lines);

    private static IEnumerable<SessionLine> Lines(string film) => Lines().Where(line => line.Item == film);

    private static IEnumerable<DeliveryLine> Lines(IEnumerable<Entry> entries) =>
        entries.OfType<Delivery>().SelectMany(delivery => delivery.Lines);

    private static IEnumerable<(Delivery Delivery, DeliveryLine Line)> Came(string item) =>
        Entries.OfType<Delivery>().SelectMany(delivery => delivery.Lines.Select(line => (delivery, line)))
            .Where(one => one.line.Item == item);

    /// <summary>Every delivery of the year has one line, which bears all its costs.</summary>
    private static decimal Landed(Delivery delivery, DeliveryLine line) =>
        (line.Price ?? Money.Zero).At(line.Packs!.Value).Amount
            - delivery.Discount.Amount + delivery.Shipping.Amount + delivery.Duty.Amount;
}
