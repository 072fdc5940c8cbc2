using System.Text.RegularExpressions;

namespace Ledger.Core.Tests.Architecture;

/// <summary>
/// The folders of the terminal UI, each built on those before it: from what is drawn to the window that holds it.
/// </summary>
public sealed partial class TerminalFolderTests
{
    private static readonly string[] Order =
        ["Quiet", "Themes", "Pictures", "Blocks", "Pages", "Tables", "Forms", "Screens", "Finder", "Shell"];

    /// <summary>What stands in no folder is what the App is given and gives, and the start.</summary>
    private static IEnumerable<SourceFile> Filed =>
        Repository.Files("src/Ledger.Terminal").Where(file => file.Path.Split('/').Length > 3);

    [Fact]
    public void Every_folder_has_its_place_in_the_order() => Assert.Equal(
        Order.Order(), Filed.Select(Folder).Distinct().Order());

    [Fact]
    public void A_file_says_the_folder_that_it_stands_in() => Assert.All(Filed, file => Assert.Contains(
        $"namespace Ledger.Terminal.{Folder(file)};", file.Text, StringComparison.Ordinal));

    [Fact]
    public void A_folder_uses_only_the_folders_before_it() => Assert.All(Filed, file =>
    {
        var place = Array.IndexOf(Order, Folder(file));
        Assert.DoesNotContain(Used(file.Code.Select(line => line.Text)), used => Array.IndexOf(Order, used) > place);
    });

    [Fact]
    public void The_scan_sees_every_way_of_naming_a_folder() => Assert.Equal(
        ["Shell", "Forms", "Tables", "Screens"],
        Used(
        [
            "using Ledger.Terminal.Shell;",
            "using static Ledger.Terminal.Forms.FieldRows;",
            "    Ledger.Terminal.Tables.PagedRows<string> rows;",
            "    var model = new Screens.TodayModel(ledger);",
        ]));

    private static string Folder(SourceFile file) => file.Path.Split('/')[2];

    /// <summary>A folder that a line names: in a using, or before the name of a type that stands in it.</summary>
    private static IEnumerable<string> Used(IEnumerable<string> lines) => lines
        .SelectMany(line => Name().Matches(line))
        .Where(match => match.Groups["type"] is not { Success: true } type
            || Holds(match.Groups["folder"].Value, type.Value))
        .Select(match => match.Groups["folder"].Value)
        .Where(Order.Contains);

    private static bool Holds(string folder, string type) => Filed.Any(file =>
        Folder(file) == folder && Regex.IsMatch(file.Text, $@"(class|record|enum|interface|struct) {type}\b"));

    [GeneratedRegex(
        @"(?:Ledger\.Terminal\.(?<folder>\w+)[.;])|(?:(?<![\w.])(?<folder>[A-Z]\w+)\.(?<type>[A-Z]\w+))",
        RegexOptions.ExplicitCapture)]
    private static partial Regex Name();
}
