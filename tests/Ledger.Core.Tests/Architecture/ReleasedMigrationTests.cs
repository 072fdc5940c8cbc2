using System.Security.Cryptography;
using System.Text;

namespace Ledger.Core.Tests.Architecture;

/// <summary>
/// A migration that was released is never edited: ledgers have run it. Each is pinned with the hash of its text.
/// </summary>
public sealed class ReleasedMigrationTests
{
    private static string Pins => new SourceFile("tests/Ledger.Core.Tests/Architecture/released-migrations.txt").Text;

    [Fact]
    public void No_released_migration_has_changed() => Assert.Empty(
        Broken(Pins, Repository.Files("migrations", "*.sql").ToDictionary(file => Path.GetFileName(file.Path),
            file => file.Text)));

    [Fact]
    public void A_changed_or_missing_migration_is_noticed()
    {
        var pins = $"""
            # a remark
            {Hash("CREATE TABLE item (id INTEGER)")}  0001-first.sql
            {Hash("CREATE TABLE lot (id INTEGER)")}  0002-second.sql
            {Hash("CREATE TABLE place (id INTEGER)")}  0003-third.sql
            """;
        var files = new Dictionary<string, string>
        {
            ["0001-first.sql"] = "CREATE TABLE item (id INTEGER)",
            ["0002-second.sql"] = "CREATE TABLE lot (id INTEGER, batch TEXT)",
            ["0004-new.sql"] = "CREATE TABLE bath (id INTEGER)",
        };
        Assert.Equal(["0002-second.sql has changed since its release", "0003-third.sql is missing"],
            Broken(pins, files));
    }

    [Fact]
    public void Line_ends_make_no_difference() => Assert.Equal(Hash("a\nb\n"), Hash("a\r\nb\r\n"));

    [Fact]
    public void Migrations_are_numbered_in_the_order_in_which_they_run() => Assert.All(
        Repository.Files("migrations", "*.sql").Select((file, i) => (Name: Path.GetFileName(file.Path), Number: i + 1)),
        file => Assert.StartsWith($"{file.Number:0000}", file.Name, StringComparison.Ordinal));

    private static IEnumerable<string> Broken(string pins, Dictionary<string, string> files)
    {
        foreach (var pin in pins.Split('\n').Select(line => line.Trim())
            .Where(line => line.Length > 0 && line[0] != '#'))
        {
            var (hash, name) = (pin.Split("  ")[0], pin.Split("  ")[1]);
            if (!files.TryGetValue(name, out var text))
                yield return $"{name} is missing";
            else if (Hash(text) != hash)
                yield return $"{name} has changed since its release";
        }
    }

    private static string Hash(string text) => Convert.ToHexStringLower(
        SHA256.HashData(Encoding.UTF8.GetBytes(text.Replace("\r\n", "\n", StringComparison.Ordinal))));
}
