using NodaTime.Extensions;
using NodaTime.Testing;

namespace Ledger.Terminal.Tests.Year;

/// <summary>The first evening as the README shows it by keys, from an empty ledger.</summary>
public sealed class FirstEveningTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trayledger").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_keys_of_the_README_end_with_the_cost_that_it_tells()
    {
        var clock = new FakeClock(Instant.FromUtc(2026, 3, 15, 20, 0)).InUtc();
        using var ledger = ReadyLedger.Empty(Path.Combine(_folder, "ledger.db"), clock);
        using var screen = new Screen(ledger);
        var typist = new Typist(screen);
        foreach (var line in Readme.Blocks("A first evening")[1])
        {
            var parts = line.Split("  ", 2, StringSplitOptions.TrimEntries);
            foreach (var key in parts[0].Split(' '))
                Press(typist, key);
            if (parts.Length == 2)
                typist.Fill(parts[1].Split("; ").Select(answer => answer.Split(": "))
                    .Select(answer => (answer[0], answer[1])));
        }

        Assert.Contains("all film: 15.55", screen.Text);
        Assert.Empty(ledger.Check(null, default).Problems);
    }

    /// <summary>A letter is typed small, as on a keyboard; F2 and Enter are keys; what is longer is text.</summary>
    private static void Press(Typist typist, string key)
    {
        if (key.Length == 1)
            typist.On(key.ToLowerInvariant());
        else if (Key.TryParse(key, out var known))
            typist.Press(known);
        else
            typist.On(key);
    }
}
