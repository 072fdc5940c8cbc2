using System.Diagnostics;
using Ledger.Exchange.Import;
using Ledger.Storage;

namespace Ledger.Benchmarks;

/// <summary>
/// What users feel, measured as ratios against the sqlite3 shell or against the same work on a small ledger.
/// </summary>
internal static class Ratios
{
    private static readonly Dictionary<string, Func<string, IEnumerable<string>>> Groups = new()
    {
        ["reading"] = _ => ReadingRatios(),
        ["costs"] = _ => CostRatio(),
        ["reorder"] = _ => ReorderRatio(),
        ["trace"] = _ => TraceRatio(),
        ["import"] = _ => ImportRatio(),
        ["past"] = _ => PastRatios(),
        ["catalogue"] = binary => CatalogueRatios(Path.GetFullPath(binary)),
        ["screens"] = binary => ScreenKeys.Ratios(Path.GetFullPath(binary)),
        ["native"] = binary => NativeRatios(Path.GetFullPath(binary)),
    };

    public static bool Knows(string group) => group == "all" || Groups.ContainsKey(group);

    public static void Print(TextWriter output, string group, string binary)
    {
        output.WriteLine("| measured | value | aim |");
        output.WriteLine("|---|---|---|");
        foreach (var row in Groups.Where(one => group == "all" || one.Key == group)
            .SelectMany(one => one.Value(binary)))
            output.WriteLine(row);
    }

    private static IEnumerable<string> ReadingRatios()
    {
        using var small = BigLedger.WithMovements(10_000);
        using var large = BigLedger.WithMovements(1_000_000);
        yield return Ratio("`show shelf`, 1,000,000 movements : 10,000", () => ReadingBenchmarks.ShelfOf(large),
            () => ReadingBenchmarks.ShelfOf(small), 50, "1.5");
        yield return Ratio("journal page, 1,000,000 movements : 10,000", () => large.Journal(large.Today, null, 200),
            () => small.Journal(small.Today, null, 200), 50, "1.5");
        yield return Ratio("sessions page, 1,000,000 movements : 10,000", () => large.Sessions(large.Today, null, 200),
            () => small.Sessions(small.Today, null, 200), 50, "1.5");
        File.Delete(small.Path);
        File.Delete(large.Path);
    }

    /// <summary>
    /// The last sheet of a ledger far larger than a lifetime, whose one box, bottle and bath every session shares.
    /// </summary>
    private static IEnumerable<string> TraceRatio()
    {
        using var large = BigLedger.WithMovements(1_000_000);
        using var demo = LedgerFile.Open(BigLedger.NewPath(), BigLedger.Clock);
        Require(demo.Import(DemoYear.Read(demo.Today), dryRun: false, null, default));
        Require(large.Import(
            [
                new SessionLog
                {
                    Key = "last", Date = large.Today, Session = "last", Process = "film", Bath = "F1", Anyway = true,
                    Lines = [new() { Item = "fen80", Sheets = 4, Developer = Volume.FromMillilitres(25) }],
                },
            ], dryRun: false, null, default));
        var (last, shown) = ($"#{large.HoldingsOn(large.Today).Film.LastSheet}",
            $"#{demo.HoldingsOn(demo.Today).Film.LastSheet}");
        yield return Ratio(
            "`trace` of a sheet, 1,000,000 movements : `show sheet`, demo year",
            () => (object)new TraceReading(last, large.Named(last, large.Today), large,
                bath => large.Bath(bath, large.Today), large.Today),
            () => (object?)demo.Story(shown, demo.Today)!, 30, "3");
        File.Delete(large.Path);
        File.Delete(demo.Path);
    }

    private static void Require(ImportOutcome outcome)
    {
        if (outcome.Refused.Count > 0)
            throw new InvalidOperationException(outcome.Refused[0].Refusal.Sentence);
    }

    /// <summary>The costs of one year: what the nine others hold must not matter.</summary>
    private static IEnumerable<string> CostRatio()
    {
        using var one = BigLedger.OfYears(1, 100_000);
        using var ten = BigLedger.OfYears(10, 1_000_000);
        yield return Ratio(
            "`show costs` of a year inside ten, 1,000,000 movements : of the only year, 100,000",
            () => ReadingBenchmarks.CostsOf(ten, 2014), () => ReadingBenchmarks.CostsOf(one, 2010), 9, "2");
        File.Delete(one.Path);
        File.Delete(ten.Path);
    }

    private static IEnumerable<string> ReorderRatio()
    {
        using var ledger = BigLedger.WithWeeklyUse(items: 200, weeks: 520);
        yield return Ratio(
            "`show reorder` of 200 items with ten years of weeks : `show shelf`",
            () => ReorderBenchmarks.ReorderOf(ledger), () => ReadingBenchmarks.ShelfOf(ledger), 30, "40");
        File.Delete(ledger.Path);
    }

    /// <summary>
    /// 100,000 session lines from CSV, against the sqlite3 shell that inserts the very same rows into the same tables.
    /// </summary>
    private static IEnumerable<string> ImportRatio()
    {
        const int lines = 100_000;
        var (ours, shells) = (BigLedger.NewPath(), BigLedger.NewPath());
        TimeSpan import;
        using (var ledger = BigLedger.WithStock(ours))
        {
            ledger.BackUp(shells);
            Shell.Run("sqlite3", [shells, "PRAGMA journal_mode = wal"]);
            Shell.DropGuards(shells);
            var start = Stopwatch.GetTimestamp();
            var file = CsvImport.Read("sessions", BigLedger.SessionsCsv(lines),
                ReadingTerms.Of(ledger.HoldingsOn(ledger.Today), ledger.Today));
            var outcome = ledger.Import(file.Entries.Select(sourced => sourced.Entry), dryRun: false, null, default);
            import = Stopwatch.GetElapsedTime(start);
            if (outcome.Posted != lines / 4)
                throw new InvalidOperationException($"only {outcome.Posted} sessions were posted");
        }

        var script = BigLedger.NewPath() + ".sql";
        Shell.Dump(ours, shells, script);
        var begun = Stopwatch.GetTimestamp();
        Shell.Run("sqlite3", [shells, $".read {script}"]);
        var insert = Stopwatch.GetElapsedTime(begun);
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"| import of {lines:N0} session lines : sqlite3 shell inserting the same rows | {import / insert:0.0} ({import.TotalSeconds:0.0} s : {insert.TotalSeconds:0.0} s) | 4 |");
        foreach (var path in new[] { ours, shells, script })
            File.Delete(path);
    }

    /// <summary>
    /// What putting the past right costs, against posting: sixteen years of sessions, three or four in each week.
    /// </summary>
    private static IEnumerable<string> PastRatios()
    {
        const int sessions = 3_000;
        var path = BigLedger.NewPath();
        using (var ledger = BigLedger.WithStock(path))
        {
            var file = CsvImport.Read(
                "sessions", BigLedger.SessionsCsv(sessions * 4, sessionsADay: 0.5m),
                ReadingTerms.Of(ledger.HoldingsOn(ledger.Today), ledger.Today));
            var start = Stopwatch.GetTimestamp();
            Require(ledger.Import(file.Entries.Select(sourced => sourced.Entry), dryRun: false, null, default));
            var import = Stopwatch.GetElapsedTime(start);
            using var again = LedgerFile.Open(BigLedger.NewPath(), BigLedger.Clock);
            var lines = ledger.SaidLines();
            start = Stopwatch.GetTimestamp();
            var joined = again.Join(lines, dryRun: false);
            var derived = Stopwatch.GetElapsedTime(start);
            if (joined.Refusal is { } refusal)
                throw new InvalidOperationException(refusal);
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"| deriving {sessions:N0} sessions of four lines : importing them | {derived / import:0.00} ({derived.TotalSeconds:0.0} s : {import.TotalSeconds:0.0} s) | 1 |");
            // Posted into the other copy: each session would be one more that follows from the one that is amended.
            var month = ledger.Journal(ledger.Today, null, 60).Where(entry => entry.Kind == "session")
                .Skip(8).Take(6).ToList();
            var turn = 0;
            yield return Ratio(
                "amending a session of the last month in sixteen years : posting one",
                () => Accept(ledger.Post(new Amendment
                {
                    Key = $"amend-{++turn}", Date = ledger.Today, Number = month[turn % month.Count].Number,
                    Reason = "benchmark", Changes = [new(0, "note", $"{turn}")],
                })),
                () => Accept(again.Post(((SessionLog)file.Entries[^1].Entry) with
                {
                    Key = $"session-{++turn}", Date = again.Today, Session = $"T{turn}", Anyway = true,
                })), 15, "10");
            File.Delete(again.Path);
        }

        File.Delete(path);
    }

    private static void Accept(PostOutcome outcome)
    {
        if (outcome is NotPosted { Refusal: var refusal })
            throw new InvalidOperationException(refusal.Sentence);
    }

    private static IEnumerable<string> NativeRatios(string binary)
    {
        if (!File.Exists(binary))
        {
            yield return $"| the native binary | not published at {Path.GetFileName(binary)} | |";
            yield break;
        }

        var demo = BigLedger.NewPath();
        Shell.Run(binary, ["demo", "--into", demo, "--no-ui"]);
        yield return Ratio(
            "native `show today` on the demo year : sqlite3 shell running one SELECT",
            () => Shell.Run(binary, ["--file", demo, "show", "today"]),
            () => Shell.Run("sqlite3", [demo, "SELECT count(*) FROM balance"]), 30, "6");
        yield return string.Create(CultureInfo.InvariantCulture,
            $"| peak memory of native `show today` | {Shell.PeakMegabytes(binary, ["--file", demo, "show", "today"]):0.0} MiB | 40 |");
        yield return string.Create(CultureInfo.InvariantCulture,
            $"| first screen of the UI, native, in tmux | {Median(() => Shell.FirstScreen(binary, demo), 10).TotalMilliseconds:0} ms | 120 |");
        File.Delete(demo);
    }

    /// <summary>What was only defined must not matter: a rack and a list that no photographer has.</summary>
    private static IEnumerable<string> CatalogueRatios(string binary)
    {
        if (!File.Exists(binary))
        {
            yield return $"| the native binary | not published at {Path.GetFileName(binary)} | |";
            yield break;
        }

        var (demo, large) = (BigLedger.NewPath(), BigLedger.NewPath());
        Shell.Run(binary, ["demo", "--into", demo, "--no-ui"]);
        var start = Stopwatch.GetTimestamp();
        BigLedger.WithCatalogue(large, items: 30_000, holders: 10_000, deliveries: 1_000);
        var import = Stopwatch.GetElapsedTime(start);
        yield return string.Create(CultureInfo.InvariantCulture,
            $"| import of 30,000 items, 10,000 holders and 1,000 older deliveries | {import.TotalSeconds:0.0} s | 60 s |");
        var first = Enumerable.Range(0, 10)
            .Select(_ => (Slow: Shell.FirstScreen(binary, large), Quick: Shell.FirstScreen(binary, demo))).ToList();
        var (many, few) = (Middle(first.Select(turn => turn.Slow)), Middle(first.Select(turn => turn.Quick)));
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"| first screen of the UI, native, in tmux, 30,000 items and 10,000 holders : demo year | {many / few:0.00} ({many.TotalMilliseconds:0} ms : {few.TotalMilliseconds:0} ms) | 1.5, 150 ms |");
        var (most, least) = (ScreenKeys.Megabytes(binary, large), ScreenKeys.Megabytes(binary, demo));
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"| memory of the UI at its first screen, 30,000 items and 10,000 holders : demo year | {most.AtFirst:0} MiB : {least.AtFirst:0} MiB | 120 MiB |");
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"| the same once its lists were gone through and something was found in them | {most.InUse:0} MiB : {least.InUse:0} MiB | 120 MiB |");
        foreach (var path in new[] { demo, large })
            File.Delete(path);
    }

    /// <summary>The two are measured in turns, so that what else the machine does meets both alike.</summary>
    private static string Ratio(string what, Action slow, Action quick, int times, string aim)
    {
        WarmUp(slow);
        WarmUp(quick);
        var turns = Enumerable.Range(0, times).Select(_ => (Slow: Time(slow), Quick: Time(quick))).ToList();
        var (one, other) = (Middle(turns.Select(turn => turn.Slow)), Middle(turns.Select(turn => turn.Quick)));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {what} | {one / other:0.00} ({one.TotalMilliseconds:0.0} ms : {other.TotalMilliseconds:0.0} ms) | {aim} |");
    }

    private static string Ratio<T>(string what, Func<T> slow, Func<T> quick, int times, string aim) =>
        Ratio(what, () => { slow(); }, () => { quick(); }, times, aim);

    private static TimeSpan Time(Action work)
    {
        var start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start);
    }

    private static TimeSpan Median(Func<TimeSpan> measure, int times)
    {
        WarmUp(() => measure());
        return Middle(Enumerable.Range(0, times).Select(_ => measure()));
    }

    /// <summary>A second of it: the published binary never runs half-compiled code.</summary>
    private static void WarmUp(Action work)
    {
        var start = Stopwatch.GetTimestamp();
        do
            work();
        while (Stopwatch.GetElapsedTime(start) < TimeSpan.FromSeconds(1));
    }

    private static TimeSpan Middle(IEnumerable<TimeSpan> times)
    {
        var all = times.Order().ToList();
        return all[all.Count / 2];
    }
}
