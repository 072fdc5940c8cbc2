using Ledger.Tests;

namespace Ledger.App.Tests;

/// <summary>What the README shows to be typed is typed.</summary>
public sealed class ReadmeTests
{
    [Fact]
    public void The_first_evening_by_commands_ends_with_the_cost_that_it_tells()
    {
        using var room = new Darkroom();
        var shown = "";
        foreach (var line in Readme.Blocks("A first evening")[0])
            shown = room.Do([.. Words(line)]);
        foreach (var cost in new[] { "15.55", "14.24", "1.05", "0.26" })
        {
            Assert.Contains(cost, shown);
            Assert.True(Readme.Says(cost), $"the README does not tell {cost}");
        }
    }

    [Fact]
    public void Every_other_command_works_on_the_demo_year()
    {
        using var room = Darkroom.WithDemoYear();
        Directory.CreateDirectory(room.PathOf("my-notes"));
        File.WriteAllText(room.PathOf("my-notes/counts.csv"), "date,item,found,reason\n2026-01-24,gloves,80,counted\n");
        var lines = Readme.Blocks("One native binary").SelectMany(block => block)
            .Where(line => line.StartsWith("trayledger ", StringComparison.Ordinal));
        Assert.All(lines,
            line => room.Do([.. Words(line).Select(word => word == "my-notes/" ? room.PathOf("my-notes") : word)]));
    }

    /// <summary>
    /// The words behind the program's name, as a shell takes them apart; what is behind a # is a remark.
    /// </summary>
    private static IEnumerable<string> Words(string line)
    {
        var parts = line.Split('"');
        for (var i = 0; i < parts.Length; i++)
        {
            if (i % 2 == 1)
                yield return parts[i];
            else
                foreach (var word in parts[i].Split('#')[0].Split(' ', StringSplitOptions.RemoveEmptyEntries)
                    .Skip(i == 0 ? 1 : 0))
                    yield return word;
            if (i % 2 == 0 && parts[i].Contains('#', StringComparison.Ordinal))
                yield break;
        }
    }
}
