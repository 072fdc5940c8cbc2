using Ledger.Faults.Running;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults.Damage;

/// <summary>
/// A ledger is altered behind the program's back: what changes a reading must be reported, by the check or by what is
/// asked.
/// </summary>
public static class DamageTrial
{
    private static readonly string[] _readings = ["today", "shelf", "baths", "holders", "sessions",
        "prints", "costs", "reorder", "journal", "item fen80", "settings"];

    /// <summary>Tries one way of altering it many times.</summary>
    /// <param name="alteration">The way.</param>
    /// <param name="times">How often.</param>
    /// <param name="seed">Where the places come from.</param>
    public static Outcome Of(Alteration alteration, int times, int seed = 1)
    {
        using var template = new Room();
        template.KeepTheDemoYear();
        var bytes = File.ReadAllBytes(template.Ledger);
        var whole = new Answers(template);
        var outcome = new Outcome($"damage: {alteration.Name}");
        Parallel.For(
            0, times, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount },
            i => outcome.Add(Try(alteration, [.. bytes], new Random(seed + i), whole)));
        return outcome;
    }

    private static IEnumerable<Flaw> Try(Alteration alteration, byte[] bytes, Random random, Answers whole)
    {
        using var room = new Room();
        var (altered, what) = alteration.Alter(bytes, random);
        File.WriteAllBytes(room.Ledger, altered);
        var check = room.Run("check");
        if (check.Hung || check.IsUnexplained)
            return [new(FlawKind.Unexplained,
                $"{what}: check ended with {check.Status}: {check.Errors.ReplaceLineEndings(" ")}")];
        // Words in which the journal tells an entry are remarked on: another version may tell it otherwise.
        if (check.Status != 0 || check.Output.Contains("remark: ", StringComparison.Ordinal))
            return [];
        return Unseen(room, whole) is { } reading
            ? [new(FlawKind.Unreported, $"{what}: {reading} is another one, and check finds nothing")]
            : [];
    }

    /// <summary>A reading that is another one than that of the whole ledger, or null.</summary>
    private static string? Unseen(Room room, Answers whole) =>
        Answers.Tables(room) == whole.OfTables ? null
            : _readings.FirstOrDefault(reading => Answers.Reading(room, reading) is { Status: 0 } ran
                && ran.Output != whole.OfReading(reading));

    /// <summary>
    /// What a ledger answers. Where all its tables are alike, so are all its readings, which saves asking for them.
    /// </summary>
    private sealed class Answers(Room room)
    {
        private readonly Dictionary<string, string> _readings = DamageTrial._readings.ToDictionary(reading => reading,
            reading => Reading(room, reading).Output);

        public string OfTables { get; } = Tables(room);

        public string OfReading(string reading) => _readings[reading];

        public static Ran Reading(Room room, string reading) => room.Run(["show", .. reading.Split(' '), "--json"]);

        public static string Tables(Room room)
        {
            room.Run("export", room.Path("tables"));
            return !Directory.Exists(room.Path("tables")) ? ""
                : string.Concat(Directory.EnumerateFiles(room.Path("tables")).Order()
                    .Select(file => Path.GetFileName(file) + File.ReadAllText(file)));
        }
    }
}
