using NodaTime.Extensions;
using NodaTime.Testing;

namespace Ledger.Terminal.Tests.Year;

/// <summary>
/// Two months of work typed from an empty ledger by keys alone, on 80 by 24: setting it up, then a week at a time, each
/// entered on the Monday after it and so dated back. The keys are counted, and there may be no more of them than a
/// person has patience for.
/// </summary>
public sealed class TwoMonthsTests : IDisposable
{
    private const int MostKeys = 1200;
    private const int Weeks = 8;
    private static readonly LocalDate Begin = new(2026, 1, 5);

    private readonly string _folder = Directory.CreateTempSubdirectory("trayledger").FullName;
    private readonly FakeClock _clock = new(Noon(Begin));

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Two_months_are_typed_in_no_more_than_1200_keys()
    {
        using var ledger = ReadyLedger.Empty(Path.Combine(_folder, "ledger.db"), _clock.InUtc());
        using var screen = new Screen(ledger);
        var typist = new Typist(screen);

        SetUp(typist);
        var setUp = typist.Keys;
        for (var week = 1; week <= Weeks; week++)
        {
            _clock.Reset(Noon(Begin.PlusWeeks(week)));
            screen.Shell.Poll();
            Week(week, typist);
        }

        var holdings = ledger.HoldingsOn(ledger.Today);
        var sessions = ledger.Sessions(ledger.Today, null, 20);
        Assert.Equal(Weeks, sessions.Count);
        Assert.All(sessions, session => Assert.Equal(IsoDayOfWeek.Sunday, session.Date.DayOfWeek));
        Assert.Equal(4 * Weeks, sessions.Sum(session => session.Sheets));
        Assert.Equal(2,
            sessions.Sum(session => session.Lines.Where(line => line.Fate == Fate.Reject).Sum(line => line.Sheets)));
        Assert.Equal(4 * Weeks * 80, holdings.Bath("F1")!.Worked.SquareInches);
        Assert.Equal(4, holdings.Bath("F1")!.ClearingTests.Count);
        Assert.All(holdings.Film.Holders.SelectMany(holder => holder.Sides),
            side => Assert.Equal(SideState.Empty, holdings.Film.Read(side, ledger.Today).State));
        Assert.Equal(50 - 4 * Weeks, holdings.ContainersOf("fen80").Sum(box => box.Held.Base));
        Assert.Equal(1000 - 25 * Weeks - 4, holdings.ContainersOf("syrup").Sum(bottle => bottle.Held.Base) / 1000);
        Assert.Single(holdings.Orders.Open);
        Assert.Empty(ledger.Check(null, default).Problems);

        TestContext.Current.TestOutputHelper?.WriteLine(
            $"{typist.Keys} keys: {setUp} to set up, {typist.Keys - setUp} for {Weeks} weeks");
        Assert.True(typist.Keys <= MostKeys, $"{typist.Keys} keys, {setUp} of them to set up");
    }

    /// <summary>What is on the shelf, the process, the holders, and a pair of baths.</summary>
    private static void SetUp(Typist typist)
    {
        typist.On("2n").Fill(("Item", "fen80"), ("Pack", "25"));
        typist.On("n").Fill(
            ("Item", "syrup"), ("Kind", "chemical"), ("Role", "developer"), ("Pack", "1l"),
            ("Dilution", "1+49"), ("Least ml", "6"));
        typist.On("n").Fill(
            ("Item", "fix"), ("Kind", "chemical"), ("Role", "fixer"), ("Pack", "1l"), ("Dilution", "1+4"),
            ("Capacity, sq in/litre", "2000"), ("Basis", "handbook"), ("Days mixed", "180"));
        typist.On("r").Press(Key.F4, Key.F4).Fill(
            ("Item", "fen80"), ("Packs", "2"), ("Price of a pack", "178"), ("Item", "syrup"), ("Price of a pack", "42"),
            ("Item", "fix"), ("Price of a pack", "16"), ("Currency", "EUR"), ("Invoice", "R1"));
        typist.Find("processes").On("n").Fill(("Process", "tray"), ("Item", "syrup"), ("In ml", "1250"),
            ("Per", "batch"));
        typist.On("n").Fill(("Process", "tray"), ("what", "fixer"), ("Item", "fix"), ("Use", "reused"));
        typist.On("7n").Fill(("Holder", "E01"));
        typist.On("n").Fill(("Holder", "E02"));
        typist.On("b").Fill(("Bath", "F1"), ("Mixed from", "fix"), ("Made, ml", "1500"));
        typist.On("b").Fill(("Bath", "F2"), ("Second after", "F1"));
    }

    /// <summary>
    /// Four sheets are loaded and exposed on Saturday and developed on Sunday; all of it is entered on Monday.
    /// </summary>
    private static void Week(int week, Typist typist)
    {
        typist.On("7l").Fill(("Date", "sat"), ("Sides", "E01 E02"));
        typist.On("x").Press(Key.D.WithCtrl).Fill(("Sides", "E01 E02"), ("Subject", "shore"));
        typist.On("s");
        typist.Press(Key.F7);
        if (week is 2 or 5)
            typist.On("E01-1, E01-2, E02-1, E02-2").Press(Key.F10).On("rej");
        else
            typist.On("E01, E02");
        typist.Fill([("Date", "sun"), ("Process", "tray"),
            .. week is 2 or 5 ? [("dev. ml", "25")] : Array.Empty<(string, string)>()]);
        if (week % 2 == 0)
            typist.On("3t").Press(Key.D.WithCtrl).Fill(("Bath", "F1"), ("Cleared in, seconds", $"{40 + week}"));
        if (week == 3)
            typist.On("2").Find("count").Fill(("What", "syrup"), ("Found", "921"), ("Reason", "dregs"));
        if (week == 6)
            typist.On("8n").Fill(("Order", "spring"));
    }

    private static Instant Noon(LocalDate day) => day.At(new(12, 0)).InUtc().ToInstant();
}
