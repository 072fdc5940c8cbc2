using System.Text.Json;
using Ledger.Faults.Running;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults.Together;

/// <summary>
/// Readers, backups and imports beside a process that records without a pause: each reading is of one moment.
/// </summary>
public static class Crowd
{
    /// <summary>Runs the crowd.</summary>
    /// <param name="costs">How often the costs are read.</param>
    /// <param name="checks">How often the ledger is checked.</param>
    /// <param name="exports">How often it is exported.</param>
    /// <param name="backups">How often it is backed up.</param>
    /// <param name="imports">How often a file is imported.</param>
    public static IReadOnlyList<Outcome> Of(int costs, int checks, int exports, int backups, int imports)
    {
        using var room = new Room();
        room.KeepTheDemoYear();
        var before = Proof.EntriesIn(room);
        var acknowledged = 0;
        (Outcome Outcome, int Times, Func<Room, int, IEnumerable<Flaw>> Do)[] tasks =
        [
            (new("costs beside a writer"), costs, (there, _) => Costs(there)),
            (new("check beside a writer"), checks, (there, _) => Check(there)),
            (new("export beside a writer"), exports, Export),
            (new("backup beside a writer"), backups, BackUp),
            (new("import beside a writer"), imports,
                (there, i) => Import(there, i, () => Interlocked.Add(ref acknowledged, 3))),
        ];
        var writing = new Outcome("entries beside all of these");
        using var stop = new CancellationTokenSource();
        var writer = Task.Run(() => Write(room, writing, () => Interlocked.Increment(ref acknowledged), stop.Token));
        var all = tasks.SelectMany(task => Enumerable.Range(0, task.Times).Select(i => (task.Outcome, task.Do, i)))
            .ToArray();
        new Random(1).Shuffle(all);
        Parallel.ForEach(
            all, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount },
            one => one.Outcome.Add(one.Do(room, one.i)));
        stop.Cancel();
        writer.Wait();
        if (Proof.Of(room) is var proof && (!proof.IsWhole || proof.Entries < before + acknowledged))
            writing.Add(
                [new(FlawKind.Lost,
                    $"{proof.Trouble} {proof.Entries} entries; {before} and {acknowledged} acknowledged ones")]);
        return [writing, .. tasks.Select(task => task.Outcome)];
    }

    /// <summary>A refusal because the file is locked is an answer too; nothing is then recorded.</summary>
    private static void Write(Room room, Outcome outcome, Action acknowledge, CancellationToken stop)
    {
        for (var i = 0; !stop.IsCancellationRequested; i++)
        {
            var ran = room.Run("record", "count", "fen80", $"{40 + i % 2}", "--reason", "counted again");
            if (ran.Status == 0)
                acknowledge();
            outcome.Add(Answered("record", ran));
        }
    }

    private static IEnumerable<Flaw> Costs(Room room)
    {
        var ran = room.Run("show", "costs", "--json");
        if (ran.Status != 0)
            return [Refused("show costs", ran)];
        using var costs = JsonDocument.Parse(ran.Output);
        return costs.RootElement.GetProperty("reconciles").GetBoolean()
            ? []
            : [new(FlawKind.HalfDone, "the costs do not reconcile")];
    }

    private static IEnumerable<Flaw> Check(Room room) =>
        room.Run("check") is { Status: not 0 } ran ? [Refused("check", ran)] : [];

    /// <summary>What the movements brought to each place and took from it is the balance there.</summary>
    private static IEnumerable<Flaw> Export(Room room, int number)
    {
        var folder = Path.Combine(Path.GetDirectoryName(room.Folder)!, $"tables-{number}");
        var ran = room.Run("export", folder);
        if (ran.Status != 0)
            return [Refused("export", ran)];
        var sums = new Dictionary<(string Place, string Lot), long>();
        foreach (var row in ExportedRows.Of(Path.Combine(folder, "movement.csv")))
        {
            Add(row["to_place"], row, 1);
            Add(row["from_place"], row, -1);
        }

        foreach (var row in ExportedRows.Of(Path.Combine(folder, "balance.csv")))
            Add(row["place_id"], row, -1);
        Directory.Delete(folder, recursive: true);
        return sums.Values.All(left => left == 0)
            ? []
            : [new(FlawKind.HalfDone, "the exported balances are not those of the exported movements")];

        void Add(string place, IReadOnlyDictionary<string, string> row, int sign)
        {
            var key = (place, row["lot_id"]);
            sums[key] = sums.GetValueOrDefault(key)
                + sign * long.Parse(row["quantity"], System.Globalization.CultureInfo.InvariantCulture);
        }
    }

    private static IEnumerable<Flaw> BackUp(Room room, int number)
    {
        var copy = Path.Combine(Path.GetDirectoryName(room.Folder)!, $"copy-{number}.db");
        var ran = room.Run("backup", copy);
        if (ran.Status != 0)
            return [Refused("backup", ran)];
        var proof = Proof.Of(room, copy);
        File.Delete(copy);
        return proof.IsWhole ? [] : [new(FlawKind.HalfDone, $"the backup is not whole: {proof.Trouble}")];
    }

    private static IEnumerable<Flaw> Import(Room room, int number, Action acknowledge)
    {
        var file = Path.Combine(Path.GetDirectoryName(room.Folder)!, $"deliveries-{number}.csv");
        File.WriteAllLines(file, ["date,item,packs,price,reference",
            .. Enumerable.Range(0, 3).Select(i => $"2026-02-01,syrup,1,44.00,crowd-{number}-{i}")]);
        var ran = room.Run("import", "deliveries", file);
        if (ran.Status == 0)
            acknowledge();
        return Answered("import", ran);
    }

    /// <summary>It was written, or waited in vain for another one that writes.</summary>
    private static IEnumerable<Flaw> Answered(string what, Ran ran) =>
        ran.Status == 0 || (ran.Status == 4 && ran.Errors.Contains("locked", StringComparison.Ordinal))
            ? []
            : [Refused(what, ran)];

    private static Flaw Refused(string what, Ran ran) => new(
        ran.IsUnexplained ? FlawKind.Unexplained : FlawKind.HalfDone,
        $"{what} ended with {ran.Status}: {(ran.Output + ran.Errors).ReplaceLineEndings(" ")}");
}
