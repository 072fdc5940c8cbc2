using Ledger.Faults.Injection;
using Ledger.Faults.Running;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults.Scenarios;

/// <summary>Tries one scenario with many faults, each in a copy of the same room.</summary>
public static class Trial
{
    /// <summary>
    /// How often the program is used afterwards before a file that is left over counts as one that stays for good.
    /// </summary>
    private const int MostNext = 3;

    /// <summary>Tries a scenario.</summary>
    /// <param name="scenario">What is done.</param>
    /// <param name="most">At how many calls something goes wrong, at most.</param>
    /// <param name="moments">How often it is killed at a random moment.</param>
    /// <param name="seed">Where the random moments come from.</param>
    public static Outcome Of(Scenario scenario, int most, int moments, int seed = 1)
    {
        using var template = new Room();
        scenario.Prepare(template);
        var outcome = new Outcome(scenario.Name);
        var plan = FaultPlan.Of(Calls(scenario, template, out var lasted), scenario.IsOfInterest,
            lasted, most, moments, new Random(seed));
        Parallel.ForEach(
            plan, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount },
            fault => outcome.Add(Try(scenario, template, fault)));
        return outcome;
    }

    private static IReadOnlyList<string> Calls(Scenario scenario, Room template, out TimeSpan lasted)
    {
        using var room = template.Copy();
        var ran = scenario.Run(room, null);
        if (ran.Status != 0)
            throw new InvalidOperationException(
                $"{scenario.Name} ends with {ran.Status} without a fault: {ran.Errors}");
        scenario.Learn(room);
        lasted = ran.Lasted;
        return ran.Calls;
    }

    private static List<Flaw> Try(Scenario scenario, Room template, Fault fault)
    {
        using var room = template.Copy();
        var ran = scenario.Run(room, fault);
        var flaws = new List<Flaw>();
        if (ran.Hung || ran.IsUnexplained)
            flaws.Add(new(FlawKind.Unexplained,
                ran.Hung ? $"it did not end: {ran.Output}" : $"it ended with {ran.Status}: {ran.Errors}"));
        flaws.AddRange(scenario.Judge(room, ran));
        for (var next = 0; next < MostNext && Strays(scenario, template, room).Any(); next++)
            scenario.RunNext(room);
        if (Strays(scenario, template, room).ToList() is { Count: > 0 } left)
            flaws.Add(new(FlawKind.HalfDone, $"{string.Join(", ", left)} stays for good"));

        return [
            .. flaws.Select(
                flaw => flaw with { Sentence = $"{fault}: {flaw.Sentence.Trim().ReplaceLineEndings(" ")}" })];
    }

    private static IEnumerable<string> Strays(Scenario scenario, Room template, Room room) =>
        room.Files.Except(template.Files).Where(file => !scenario.MayStand(file));
}
