namespace Ledger.Faults.Verdicts;

/// <summary>The outcomes as a table for the map, and the flaws with how to see each again.</summary>
public static class OutcomeTable
{
    private const int ExamplesOfAKind = 5;

    /// <summary>Writes the table.</summary>
    public static void Write(IReadOnlyList<Outcome> outcomes, TextWriter output)
    {
        output.WriteLine("| tried | times | lost | half done | unreported | unexplained |");
        output.WriteLine("|---|---|---|---|---|---|");
        foreach (var outcome in outcomes)
            output.WriteLine(Line(outcome.Name, outcome.Tried, outcome.Count));
        output.WriteLine(Line("all", outcomes.Sum(outcome => outcome.Tried),
            kind => outcomes.Sum(outcome => outcome.Count(kind))));
    }

    /// <summary>Writes the flaws; of many of a kind in one scenario a few, spread over all of them.</summary>
    public static void WriteFlaws(IReadOnlyList<Outcome> outcomes, TextWriter output, int most = ExamplesOfAKind)
    {
        foreach (var outcome in outcomes.Where(outcome => outcome.Flaws.Count > 0))
        {
            output.WriteLine($"{outcome.Name}:");
            foreach (var kind in outcome.Flaws.GroupBy(flaw => flaw.Kind))
            {
                var flaws = kind.ToList();
                foreach (var flaw in flaws.Where((_, i) => i % Math.Max(1, flaws.Count / most) == 0).Take(most))
                    output.WriteLine($"  {kind.Key}: {flaw.Sentence}");
            }
        }
    }

    private static string Line(string name, int tried, Func<FlawKind, int> count) =>
        $"| {name} | {tried} | {string.Join(" | ", Enum.GetValues<FlawKind>().Select(count))} |";
}
