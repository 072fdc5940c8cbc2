using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace Ledger.Exchange.Tests.Import;

/// <summary>
/// The folders of the import use each other in one direction: what a CSV text is, what a row's identity is, what a file
/// means.
/// </summary>
public sealed partial class ImportOrderTests
{
    private static readonly string[] _order = ["Rows", "Identity", ""];

    [Fact]
    public void A_folder_uses_only_those_before_it()
    {
        var files = Directory.GetFiles(Import(), "*.cs", SearchOption.AllDirectories);
        Assert.NotEmpty(files);
        Assert.All(files, file =>
        {
            var folder = Path.GetRelativePath(Import(), Path.GetDirectoryName(file)!);
            var place = Array.IndexOf(_order, folder == "." ? "" : folder);
            Assert.True(place >= 0, $"{folder} has no place in the order");
            Assert.DoesNotContain(
                Used().Matches(File.ReadAllText(file)).Select(match => match.Groups["folder"].Value),
                used => Array.IndexOf(_order, used) > place);
        });
    }

    private static string Import([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "src",
            "Ledger.Exchange", "Import"));

    [GeneratedRegex(@"using Ledger\.Exchange\.Import(?:\.(?<folder>\w+))?;", RegexOptions.ExplicitCapture)]
    private static partial Regex Used();
}
