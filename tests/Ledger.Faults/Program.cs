using System.Diagnostics;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults;

/// <summary>
/// The long run: everything is tried, and the table of the map is written. A number as the first argument tries so many
/// times less, the word "short" as little as every test run does; further arguments name the lines of the table that
/// are wanted.
/// </summary>
internal static class Program
{
    public static int Main(string[] arguments)
    {
        var isScaled = arguments.Length > 0 && int.TryParse(arguments[0], out _);
        var less = isScaled ? int.Parse(arguments[0], System.Globalization.CultureInfo.InvariantCulture) : 1;
        var isShort = arguments.Length > 0 && arguments[0] == "short";
        var names = arguments.Skip(isScaled || isShort ? 1 : 0).ToList();
        var outcomes = new List<Outcome>();
        var parts = isShort ? Runs.OfEveryTestRun() : Runs.All(less);
        foreach (var part in parts.Where(part => names.Count == 0
            || names.Exists(name => part.Name.StartsWith(name, StringComparison.Ordinal))))
        {
            var watch = Stopwatch.StartNew();
            var found = part.Try();
            outcomes.AddRange(found);
            Console.Error.WriteLine(
                $"{part.Name}: {found.Sum(one => one.Tried)} tried, {found.Sum(one => one.Flaws.Count)} flaws, "
                    + $"{watch.Elapsed.TotalSeconds:0.0} s");
            OutcomeTable.WriteFlaws(found, Console.Error); // at once: the whole run takes an hour or two
        }

        OutcomeTable.Write(outcomes, Console.Out);
        OutcomeTable.WriteFlaws(outcomes, Console.Out);
        return outcomes.Exists(outcome => outcome.Flaws.Count > 0) ? 1 : 0;
    }
}
