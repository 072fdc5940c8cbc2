using Ledger.Faults.Damage;
using Ledger.Faults.Scenarios;
using Ledger.Faults.Together;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults;

/// <summary>How often what is tried.</summary>
public static class Runs
{
    /// <summary>The run for the map's table.</summary>
    /// <param name="less">By how much each number is divided.</param>
    public static IEnumerable<(string Name, Func<IReadOnlyList<Outcome>> Try)> All(int less = 1) =>
    [
        .. AllScenarios.Here().Select(scenario => (scenario.Name, (Func<IReadOnlyList<Outcome>>)(() =>
            [scenario is OnTheScreens ? Trial.Of(scenario, 100 / less, 10 / less)
                : Trial.Of(scenario, 800 / less, 200 / less)]))),
        ("at once", () => [AllAtOnce.FirstUse(Math.Max(1, 30 / less)), AllAtOnce.Migration(Math.Max(1, 30 / less))]),
        ("beside a writer", () => Crowd.Of(1000 / less, 300 / less, 100 / less, 100 / less, 100 / less)),
        .. Alteration.All.Select(alteration =>
            ($"damage: {alteration.Name}",
                (Func<IReadOnlyList<Outcome>>)(() => [DamageTrial.Of(alteration, 300 / less)]))),
    ];

    /// <summary>
    /// The run that every test run can afford: each scenario, a few faults spread evenly over its calls; under half a
    /// minute.
    /// </summary>
    public static IEnumerable<(string Name, Func<IReadOnlyList<Outcome>> Try)> OfEveryTestRun() =>
    [
        .. AllScenarios.Here().Where(scenario => scenario is not OnTheScreens)
            .Select(scenario => (scenario.Name, (Func<IReadOnlyList<Outcome>>)(() => [Trial.Of(scenario, 4, 1)]))),
        ("at once", () => [AllAtOnce.FirstUse(1), AllAtOnce.Migration(1)]),
        ("beside a writer", () => Crowd.Of(12, 5, 2, 2, 2)),
        .. Alteration.All.Where(alteration => alteration.IsAlwaysSeen)
            .Select(alteration => ($"damage: {alteration.Name}",
                (Func<IReadOnlyList<Outcome>>)(() => [DamageTrial.Of(alteration, 2)]))),
    ];
}
