using System.Text.RegularExpressions;
using Ledger.Exchange.Import;
using NodaTime.Extensions;
using NodaTime.Testing;

namespace Ledger.Terminal.Tests.Year;

/// <summary>
/// The demo year of sample-data, typed into a new file through the screens by keys alone on 80 by 24, day by day as it
/// happened; beside it the same year from its CSV files.
/// </summary>
public sealed class YearByKeysTests(TypedYear year) : IClassFixture<TypedYear>
{
    private static readonly LocalDate Begin = new(1900, 1, 1);

    [Fact]
    public void The_journals_tell_the_same() => Assert.Equal(Journal(year.Imported), Journal(year.Typed));

    [Fact]
    public void The_shelf_is_the_same_to_the_last_millionth() => Assert.Equal(
        year.Imported.HoldingsOn(DemoYear.LastDay).Containers.Select(Fact),
        year.Typed.HoldingsOn(DemoYear.LastDay).Containers.Select(Fact));

    [Fact]
    public void Every_item_and_process_is_the_same()
    {
        var (imported, typed) = (year.Imported.HoldingsOn(DemoYear.LastDay), year.Typed.HoldingsOn(DemoYear.LastDay));
        Assert.Equal(
            imported.Items.Select(item => item with { OtherCapacities = [] }),
            typed.Items.Select(item => item with { OtherCapacities = [] }));
        Assert.Equal(imported.Items.SelectMany(item => item.OtherCapacities),
            typed.Items.SelectMany(item => item.OtherCapacities));
        Assert.Equal(imported.Processes.SelectMany(process => process.Steps),
            typed.Processes.SelectMany(process => process.Steps));
    }

    [Fact]
    public void All_164_sheets_of_fen80_are_where_the_import_has_them()
    {
        var places = year.Typed.PlacesOf("fen80", DemoYear.LastDay);
        Assert.Equal(year.Imported.PlacesOf("fen80", DemoYear.LastDay), places);
        Assert.Equal(-164, places.Single(place => place.Kind == "supplier").Held.Base);
        Assert.Equal(0, places.Sum(place => place.Held.Base));
    }

    [Fact]
    public void Bath_F4_is_182_days_old_with_1400_of_3000_square_inches_left()
    {
        var reading = new Core.Baths.BathReading(year.Typed.HoldingsOn(DemoYear.LastDay).Bath("F4")!, DemoYear.LastDay);
        Assert.Equal((182, 1400m, 3000m), (
            Period.DaysBetween(reading.Bath.MixedOn, DemoYear.LastDay), reading.Remaining!.Value.SquareInches,
            reading.Bath.TotalCapacity!.Value.SquareInches));
        Assert.Equal(Core.Baths.BathEnd.Age, reading.EndedBy);
    }

    [Fact]
    public void The_film_cost_654_40_for_99_sheets()
    {
        var costs = new CostReading(year.Typed.Costs(Begin, DemoYear.LastDay));
        Assert.True(costs.Reconciles);
        Assert.Equal(
            new CostReading(year.Imported.Costs(Begin, DemoYear.LastDay)).Sheets.Select(
                sheet => sheet with { Entry = 0 }),
            costs.Sheets.Select(sheet => sheet with { Entry = 0 }));
        var film = costs.Of("fen80");
        Assert.Equal((99, 90, 31), (film.SheetsUsed, film.Negatives, film.Keepers));
        Assert.Equal(654.40m, film.Film.Amount);
    }

    [Fact]
    public void Every_holder_side_stands_as_the_import_has_it() =>
        Assert.Equal(Sides(year.Imported), Sides(year.Typed));

    [Fact]
    public void Orders_plans_jugs_and_baths_are_the_same()
    {
        var (imported, typed) = (year.Imported.HoldingsOn(DemoYear.LastDay), year.Typed.HoldingsOn(DemoYear.LastDay));
        Assert.Equal(imported.Orders.Open.Select(order => order.Code), typed.Orders.Open.Select(order => order.Code));
        Assert.Equal(imported.Plans.Select(plan => (plan.Name, plan.On, plan.Sheets)),
            typed.Plans.Select(plan => (plan.Name, plan.On, plan.Sheets)));
        Assert.Equal(imported.Jugs.Select(jug => (jug.Code, jug.Held)), typed.Jugs.Select(jug => (jug.Code, jug.Held)));
        Assert.Equal(
            imported.Baths.Select(bath => (bath.Code, bath.MixedOn, bath.WorkedWeighted, bath.Rotations, bath.Value)),
            typed.Baths.Select(bath => (bath.Code, bath.MixedOn, bath.WorkedWeighted, bath.Rotations, bath.Value)));
    }

    [Fact]
    public void The_typed_file_passes_its_check() => Assert.Empty(year.Typed.Check(null, default).Problems);

    /// <summary>
    /// The steps of a process are typed one by one, each a version of it; the import brings them at once.
    /// </summary>
    /// <summary>A process takes an entry for each step that is typed, so that the numbers of entries differ.</summary>
    private static IEnumerable<(LocalDate, string, string, string)> Journal(LedgerFile ledger) =>
        ledger.Journal(DemoYear.LastDay, null, int.MaxValue).Where(entry => entry.Kind != "process")
            .Select(entry => (entry.Date, entry.Kind, Regex.Replace(entry.Summary, "entry [0-9]+", "entry"),
                entry.Note)).Reverse();

    private static (string, Quantity, Money, LocalDate?, string, int?) Fact(Core.Stock.Container container) =>
        (container.Code, container.Held, container.Value, container.OpenedOn, container.Storage,
            container.Lot.ExposureIndex);

    private static IEnumerable<(string, string, string?, string?, string?, LocalDate?, bool)> Sides(LedgerFile ledger)
    {
        var film = ledger.HoldingsOn(DemoYear.LastDay).Film;
        return film.Holders.SelectMany(holder => holder.Sides.Select(side =>
        {
            var reading = film.Read(side, DemoYear.LastDay);
            return (side.Code, reading.StateName, reading.Sheet?.Item, reading.Sheet?.Exposure?.Group,
                reading.Sheet?.Exposure?.Subject, holder.CleanedOn, holder.IsBagged);
        }));
    }
}

/// <summary>The year, typed once for all tests that look at it.</summary>
public sealed class TypedYear : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trayledger").FullName;

    public TypedYear()
    {
        var entries = DemoYear.Read(DemoYear.LastDay);
        Imported = Open("imported", Noon(DemoYear.LastDay));
        Assert.Empty(Imported.Import(entries, dryRun: false, null, default).Refused);
        var clock = Noon(entries[0].Date);
        Typed = Open("typed", clock);
        using var screen = new Screen(Typed);
        var typist = new Typist(screen);
        var keys = new YearByKeys(typist, Typed);
        foreach (var entry in entries)
        {
            clock.Reset(entry.Date.At(new(12, 0)).InUtc().ToInstant());
            screen.Shell.Poll();
            keys.Type(entry);
        }

        Keys = typist.Keys;
        clock.Reset(DemoYear.LastDay.At(new(12, 0)).InUtc().ToInstant());
    }

    internal LedgerFile Imported { get; }

    internal LedgerFile Typed { get; }

    internal int Keys { get; }

    public void Dispose()
    {
        Imported.Dispose();
        Typed.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private static FakeClock Noon(LocalDate day) => new(day.At(new(12, 0)).InUtc().ToInstant());

    private LedgerFile Open(string name, FakeClock clock) =>
        ReadyLedger.Empty(Path.Combine(_folder, $"{name}.db"), clock.InUtc());
}
