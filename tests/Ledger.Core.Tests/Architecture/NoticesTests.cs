using System.Text.Json;

namespace Ledger.Core.Tests.Architecture;

/// <summary>Whoever gets the program is told under which terms its parts stand: every library, and no other.</summary>
public sealed class NoticesTests
{
    /// <summary>What only builds the program is no part of it.</summary>
    private static readonly string[] _tools = ["Microsoft.DotNet.ILCompiler", "Microsoft.NET.ILLink.Tasks"];

    [Fact]
    public void The_notices_name_every_library_of_the_program_with_its_licence()
    {
        using var known = JsonDocument.Parse(new SourceFile("src/Ledger.App/packages.lock.json").Text);
        var libraries = known.RootElement.GetProperty("dependencies").GetProperty("net10.0").EnumerateObject()
            .Where(one => one.Value.GetProperty("type").GetString() != "Project").Select(one => one.Name).Except(_tools)
            .Append("the .NET runtime");
        var rows = new SourceFile("src/Packaging/NOTICES.md").Text.Split('\n')
            .Where(line => line.StartsWith("| ", StringComparison.Ordinal)).Skip(1)
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries)).ToList();
        Assert.Equal(
            libraries.Order(StringComparer.OrdinalIgnoreCase),
            rows.Select(row => row[1]).Order(StringComparer.OrdinalIgnoreCase));
        Assert.All(rows, row =>
        {
            Assert.Contains(row[2], new[] { "MIT", "Apache-2.0", "BSD-2-Clause", "public domain" });
            Assert.NotEqual("", row[3]);
        });
    }
}
