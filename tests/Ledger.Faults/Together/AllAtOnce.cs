using Ledger.Faults.Running;
using Ledger.Faults.Scenarios;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults.Together;

/// <summary>
/// Several processes meet a ledger that is not there yet, or is of an older version: one makes it, the others wait.
/// </summary>
public static class AllAtOnce
{
    private const int Processes = 4;

    /// <summary>The first use by several processes.</summary>
    public static Outcome FirstUse(int rounds) => Rounds("first use by four at once", rounds, _ => { }, (room, i) =>
        room.Run("record", "item", $"film-{i}", "--kind", "film", "--format", "8x10", "--pack", "25"), Processes);

    /// <summary>An older ledger opened by several processes.</summary>
    public static Outcome Migration(int rounds) => Rounds(
        "migration by four at once", rounds, room => OlderLedger.OfScripts(room.Ledger, 5),
        (room, _) => room.Run("show", "shelf"), 0);

    private static Outcome Rounds(string name, int rounds, Action<Room> prepare, Func<Room, int, Ran> run, long entries)
    {
        var outcome = new Outcome(name);
        for (var round = 0; round < rounds; round++)
        {
            using var room = new Room();
            prepare(room);
            var ran = Task.WhenAll(Enumerable.Range(0, Processes).Select(i => Task.Run(() => run(room, i))))
                .GetAwaiter().GetResult();
            outcome.Add(Judge(room, ran, entries));
        }

        return outcome;
    }

    private static IEnumerable<Flaw> Judge(Room room, Ran[] ran, long entries)
    {
        foreach (var failed in ran.Where(one => one.Status != 0))
        {
            yield return new(
                failed.Hung || failed.IsUnexplained ? FlawKind.Unexplained : FlawKind.Lost,
                $"one of them ended with {failed.Status}: {failed.Errors.ReplaceLineEndings(" ")}");
        }

        if (Proof.Of(room) is var proof
            && (!proof.IsWhole || (ran.All(one => one.Status == 0) && proof.Entries != entries)))
            yield return new(FlawKind.Lost, $"{proof.Trouble} {proof.Entries} entries of {entries}");
        if (room.Files.Count(file => file.EndsWith(".backup", StringComparison.Ordinal)) > 1)
            yield return new(FlawKind.HalfDone, "it is kept more than once");
    }
}
