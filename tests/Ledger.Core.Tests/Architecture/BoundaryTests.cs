using System.Text.RegularExpressions;

namespace Ledger.Core.Tests.Architecture;

/// <summary>
/// What stays where: SQL in the storage, the console in the program, no clock, culture or chance in the core.
/// </summary>
public sealed partial class BoundaryTests
{
    [Fact]
    public void Only_the_storage_speaks_SQL() => Findings.None(
        Found(["src/Ledger.Core", "src/Ledger.Exchange", "src/Ledger.Terminal", "src/Ledger.App"], Sql()));

    [Fact]
    public void Only_the_program_itself_uses_the_console() => Findings.None(
        Found(["src/Ledger.Core", "src/Ledger.Storage", "src/Ledger.Exchange", "src/Ledger.Terminal"], ConsoleUse()));

    [Fact]
    public void The_core_has_no_clock_no_culture_and_no_chance() =>
        Findings.None(Found(["src/Ledger.Core"], Outside()));

    [Fact]
    public void Nothing_is_left_unwritten() => Findings.None(Found(["src"], Unwritten()));

    [Theory]
    [InlineData("var rows = \"SELECT lot FROM movement\";")]
    [InlineData("\"INSERT INTO entry VALUES (1)\"")]
    [InlineData("DELETE FROM entry")]
    [InlineData("UPDATE balance SET quantity = 1")]
    public void The_scan_knows_SQL(string line) => Assert.Matches(Sql(), line);

    [Theory]
    [InlineData("DateTime.UtcNow")]
    [InlineData("SystemClock.Instance")]
    [InlineData("CultureInfo.CurrentCulture")]
    [InlineData("new Random(1)")]
    [InlineData("Guid.NewGuid()")]
    public void The_scan_knows_what_comes_from_outside(string line) => Assert.Matches(Outside(), line);

    private static IEnumerable<string> Found(IEnumerable<string> folders, Regex forbidden) =>
        from folder in folders
        from file in Repository.Files(folder)
        from line in file.Code
        where forbidden.IsMatch(line.Text)
        select $"{file}:{line.Number}: {line.Text.Trim()}";

    [GeneratedRegex(
        @"\b(SELECT|INSERT\s+INTO|DELETE\s+FROM|CREATE\s+(TABLE|TRIGGER|INDEX)|PRAGMA)\b|\bUPDATE\s+\w+\s+SET\b")]
    private static partial Regex Sql();

    [GeneratedRegex(@"\bConsole\.")]
    private static partial Regex ConsoleUse();

    [GeneratedRegex(
        @"SystemClock\b|DateTime(Offset)?\.(Now|UtcNow|Today)|Stopwatch|TickCount|"
        + @"CultureInfo\.Current|\bnew Random\b|Random\.Shared|Guid\.NewGuid",
        RegexOptions.ExplicitCapture)]
    private static partial Regex Outside();

    [GeneratedRegex(@"NotImplementedException|\b(TODO|FIXME|HACK)\b")]
    private static partial Regex Unwritten();
}
