using System.Xml.Linq;

namespace Ledger.Core.Tests.Architecture;

/// <summary>The direction of every dependency: the program's one picture, read from the project files.</summary>
public sealed class ProjectReferenceTests
{
    /// <summary>What each project may use. Analyzers do not count.</summary>
    private const string Allowed = """
        project         | projects                            | packages
        Ledger.Core     |                                     | NodaTime
        Ledger.Storage  | Core                                | Dapper Dapper.AOT Microsoft.Data.Sqlite
        Ledger.Exchange | Core                                | CsvHelper Ical.Net
        Ledger.Terminal | Core                                | Terminal.Gui
        Ledger.App      | Core Storage Exchange Terminal      | System.CommandLine NodaTime
        """;

    private static readonly string[] Analyzers = ["Microsoft.CodeAnalysis.BannedApiAnalyzers"];

    [Fact]
    public void Every_project_of_the_program_is_in_the_table() => Assert.Equal(
        Table.Read(Allowed).Select(row => row["project"]).Order(StringComparer.Ordinal),
        Repository.Files("src", "*.csproj").Select(file => Path.GetFileNameWithoutExtension(file.Path)));

    [Fact]
    public void A_project_uses_only_the_projects_to_which_the_picture_points() => Assert.All(Table.Read(Allowed), row =>
        Assert.Empty(References(row["project"], "ProjectReference")
            .Select(path => Path.GetFileNameWithoutExtension(path.Replace('\\', '/')).Replace("Ledger.",
                "", StringComparison.Ordinal))
            .Except(Words(row["projects"]))));

    [Fact]
    public void A_project_uses_only_the_packages_of_its_task() => Assert.All(Table.Read(Allowed), row =>
        Assert.Empty(References(row["project"], "PackageReference").Except(Analyzers).Except(Words(row["packages"]))));

    [Fact]
    public void The_core_uses_NodaTime_and_nothing_else()
    {
        Assert.Equal(["NodaTime"], References("Ledger.Core", "PackageReference").Except(Analyzers));
        Assert.Empty(References("Ledger.Core", "ProjectReference"));
    }

    [Fact]
    public void Versions_stand_in_one_place() => Assert.All(
        Repository.Files("src", "*.csproj").Concat(Repository.Files("tests", "*.csproj")),
        file => Assert.DoesNotContain(
            XDocument.Parse(file.Text).Descendants("PackageReference"),
            package => package.Attribute("Version") is not null));

    private static IEnumerable<string> References(string project, string kind) =>
        XDocument.Parse(new SourceFile($"src/{project}/{project}.csproj").Text).Descendants(kind)
            .Select(item => item.Attribute("Include")!.Value);

    private static string[] Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
