using Ledger.Faults.Scenarios;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults;

/// <summary>The long run: everything is tried, and the table of the map is written. Names of scenarios as arguments try these only.</summary>
internal static class Program
{
    private const int FaultsEach = 1200;
    private const int MomentsEach = 100;

    public static int Main(string[] names)
    {
        var outcomes = new List<Outcome>();
        foreach (var scenario in AllScenarios.Here().Where(scenario => names.Length == 0 || names.Contains(scenario.Name)))
        {
            var watch = System.Diagnostics.Stopwatch.StartNew();
            outcomes.Add(Trial.Of(scenario, FaultsEach, MomentsEach));
            Console.Error.WriteLine($"{scenario.Name}: {outcomes[^1].Tried} tried, {outcomes[^1].Flaws.Count} flaws, {watch.Elapsed.TotalSeconds:0} s");
        }

        OutcomeTable.Write(outcomes, Console.Out);
        OutcomeTable.WriteFlaws(outcomes, Console.Out);
        return outcomes.Exists(outcome => outcome.Flaws.Count > 0) ? 1 : 0;
    }
}
