using Ledger.Faults;
using Ledger.Faults.Injection;
using Ledger.Faults.Verdicts;

namespace Ledger.App.Tests.Native;

/// <summary>The short run of the fault harness; the long one is a command of the map.</summary>
public sealed class FaultTests
{
    [Fact]
    public void Nothing_is_lost_half_done_or_unreported_where_the_program_is_killed_or_the_disk_fails()
    {
        if (!Preload.IsPossible)
            Assert.Skip("faults are injected on Linux, with gcc");
        var outcomes = Runs.OfEveryTestRun().SelectMany(part => part.Try()).ToList();
        using var seen = new StringWriter();
        OutcomeTable.Write(outcomes, seen);
        OutcomeTable.WriteFlaws(outcomes, seen);
        Assert.All(outcomes, outcome => Assert.True(outcome.Tried > 0, outcome.Name));
        Assert.True(outcomes.All(outcome => outcome.Flaws.Count == 0), seen.ToString());
    }
}
