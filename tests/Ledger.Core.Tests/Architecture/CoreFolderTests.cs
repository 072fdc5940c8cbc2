using System.Text.RegularExpressions;

namespace Ledger.Core.Tests.Architecture;

/// <summary>The folders of the core are the trade's words, each built on those before it.</summary>
public sealed partial class CoreFolderTests
{
    private static readonly string[] Order =
        ["Measures", "Keeping", "Stock", "Film", "Baths", "Sessions", "Costing", "Journal", "Planning", "Reordering", "Notices"];

    [Fact]
    public void Every_folder_of_the_core_has_its_place_in_the_order() => Assert.Empty(
        Repository.Files("src/Ledger.Core").Select(Folder).Distinct().Except(Order));

    [Fact]
    public void A_folder_uses_only_the_folders_before_it() => Assert.All(Repository.Files("src/Ledger.Core"), file =>
    {
        var place = Array.IndexOf(Order, Folder(file));
        Assert.DoesNotContain(Used(file.Code.Select(line => line.Text)), used => Array.IndexOf(Order, used) > place);
    });

    [Fact]
    public void The_scan_sees_every_way_of_naming_a_folder() => Assert.Equal(
        ["Journal", "Notices", "Baths", "Sessions", "Costing"],
        Used(
        [
            "using Ledger.Core.Journal;",
            "using static Ledger.Core.Notices.Prospect;",
            "    Ledger.Core.Baths.Bath bath = new();",
            "    public Sessions.Fate Fate => this.Reordering.Stock;",
            "    var flow = new Costing.CostFlow(formula);",
        ]));

    private static string Folder(SourceFile file) => file.Path.Split('/')[2];

    private static IEnumerable<string> Used(IEnumerable<string> lines) => lines
        .SelectMany(line => Name().Matches(line))
        .Select(match => match.Groups["folder"].Value)
        .Where(Order.Contains);

    [GeneratedRegex(@"(?:Ledger\.Core\.(?<folder>\w+)[.;])|(?:(?<![\w.])(?<folder>[A-Z]\w+)\.[A-Z])", RegexOptions.ExplicitCapture)]
    private static partial Regex Name();
}
