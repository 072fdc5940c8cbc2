using System.Text.RegularExpressions;

namespace Ledger.Core.Tests.Architecture;

/// <summary>
/// The folders of a project are words in an order: what is in one uses what is in those before it, never what comes
/// after.
/// </summary>
public sealed partial class FolderOrderTests
{
    /// <summary>
    /// Each folder with those inside it, from what stands alone to what uses all the rest; a dot is the folder itself.
    /// </summary>
    private const string Orders = """
        folder                   | order
        src/Ledger.Core          | Measures Keeping Stock Film Baths Sessions Costing Tracing Journal Planning Reordering Notices Faults Glossary
        src/Ledger.Core/Journal  | Entries . Kinds Rules
        src/Ledger.Storage       | Files Reading Writing Deriving Upkeep .
        src/Ledger.Exchange      | Calendars Export Import Print
        src/Ledger.Exchange/Import | Rows Identity .
        src/Ledger.App           | Values Wiring Output Commands Screens .
        src/Ledger.App/Commands  | Show Plan Files Print Record
        """;

    /// <summary>
    /// Words that may stand before the name of a type; after any other word, a name is that of a member.
    /// </summary>
    private const string BeforeAType =
        "public private protected internal static sealed abstract virtual override readonly partial async extern const "
            + "required event new return throw is as in out ref params this await yield case when and or not else "
            + "where using fixed lock do operator implicit explicit";

    public static TheoryData<string> Folders => [.. Table.Read(Orders).Select(row => row["folder"])];

    [Theory]
    [MemberData(nameof(Folders))]
    public void Every_folder_has_its_place_in_the_order(string folder) =>
        Assert.Empty(Places(folder).Select(file => file.Place).Distinct().Except(OrderOf(folder)));

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_uses_only_what_is_in_those_before_it(string folder) => Findings.None(
        Against(OrderOf(folder), Places(folder),
            Repository.Files("src").Where(file => !file.Path.StartsWith(folder, StringComparison.Ordinal))));

    [Fact]
    public void A_type_that_is_used_against_the_order_is_found() => Assert.Equal(
        ["Stock: Tray (in Baths)", "Stock: Session (in .)"],
        Against(["Stock", "Baths", "."],
        [
            ("Baths", "internal sealed class Tray(Box box);"),
            (".", "public record struct Session(Tray Tray);"),
            ("Stock", "public enum Box { Open, Tray }"),
            ("Stock",
                "class Shelf { Box Box; string text = $\"Tray {new Tray(Box)}\"; IEnumerable<Session> Sessions => []; "
                    + "}"),
        ]));

    [Fact]
    public void A_member_a_comment_and_a_text_are_no_use_of_a_type() => Assert.Empty(
        Against(["Stock", "Baths"],
        [
            ("Baths", "internal sealed class Tray;"),
            ("Stock", "class Shelf { string Tray => this.Tray; string? Tray = \"Tray\"; } // Tray"),
        ]));

    [Fact]
    public void A_namespace_that_is_named_against_the_order_is_found() => Assert.Equal(
        ["Stock: namespace Baths", "Stock: namespace Journal"],
        Against(["Stock", "Baths", "Journal"],
        [
            ("Baths", "class Tray;"),
            ("Journal", "class Posting;"),
            ("Stock", "using Ledger.Core.Baths;\nusing static Ledger.Core.Journal.Posting;"),
        ]));

    private static string[] OrderOf(string folder) =>
        Table.Read(Orders).Single(row => row["folder"] == folder)["order"].Split(' ');

    private static IEnumerable<(string Place, string Text)> Places(string folder) =>
        Repository.Files(folder).Select(file =>
        {
            var below = file.Path[(folder.Length + 1)..].Split('/');
            return (below.Length == 1 ? "." : below[0], string.Join('\n', file.Code.Select(line => line.Text)));
        });

    /// <summary>
    /// What is used against an order: "user: type (in its folder)". A name that other files have too is left to the
    /// namespaces.
    /// </summary>
    private static IEnumerable<string> Against(
        string[] order, IEnumerable<(string Place, string Text)> files, IEnumerable<SourceFile>? others = null)
    {
        var elsewhere = (others ?? []).SelectMany(file => Declared().Matches(OnlyCode(file.Text)))
            .Select(type => type.Groups["name"].Value).ToHashSet();
        var codes = files.Select(file => (file.Place, Code: OnlyCode(file.Text))).ToList();
        var homes = codes
            .SelectMany(file => Declared().Matches(file.Code)
                .Select(type => (Name: type.Groups["name"].Value, file.Place)))
            .ToLookup(type => type.Name, type => type.Place);
        foreach (var (place, code) in codes)
        {
            var named = NamedSpace().Matches(code)
                .SelectMany(space => space.Groups["part"].Captures.Select(part => part.Value)).ToHashSet();
            foreach (var later in order.SkipWhile(folder => folder != place).Skip(1).Where(named.Contains))
                yield return $"{place}: namespace {later}";
            foreach (var name in Used(code).Distinct()
                .Where(name => !homes[name].Contains(place) && !elsewhere.Contains(name)))
                if (homes[name].Distinct().ToList() is [var home]
                    && Array.IndexOf(order, home) > Array.IndexOf(order, place))
                    yield return $"{place}: {name} (in {home})";
        }
    }

    /// <summary>
    /// The names that stand where a type can; what the file has as a member of that name, after a type of another, is
    /// none.
    /// </summary>
    private static IEnumerable<string> Used(string code)
    {
        var names = Word().Matches(code)
            .Select(word => (Name: word.Value, Before: Before().Match(code, 0, word.Index).Groups["word"])).ToList();
        var members = names.Where(name => IsMember(name.Before) && name.Before.Value != name.Name)
            .Select(name => name.Name).ToHashSet();
        return names.Where(name => !IsMember(name.Before)).Select(name => name.Name)
            .Where(name => !members.Contains(name));
    }

    private static bool IsMember(Group before) => before.Success && !BeforeAType.Split(' ').Contains(before.Value);

    /// <summary>
    /// The code without comments, texts and the names in an enumeration; what is inserted into a text stays.
    /// </summary>
    private static string OnlyCode(string text) => Enumerated().Replace(
        Texts().Replace(Comments().Replace(text, ""), literal =>
            literal.Value.Contains('$', StringComparison.Ordinal)
                ? string.Join(' ', Inserted().Matches(literal.Value))
                : "\"\""),
        "enum ${name}");

    [GeneratedRegex(@"\benum\s+(?<name>\w+)[^{;]*\{[^}]*\}", RegexOptions.ExplicitCapture)]
    private static partial Regex Enumerated();

    [GeneratedRegex(@"\b(class|record struct|record|struct|interface|enum)\s+(?<name>[A-Z]\w*)",
        RegexOptions.ExplicitCapture)]
    private static partial Regex Declared();

    [GeneratedRegex(@"\busing (static )?Ledger(\.(?<part>\w+))+", RegexOptions.ExplicitCapture)]
    private static partial Regex NamedSpace();

    [GeneratedRegex(@"(?<![\w.])[A-Z]\w*")]
    private static partial Regex Word();

    [GeneratedRegex(@"\b(?<word>\w+)[?\]>]*\s+$", RegexOptions.ExplicitCapture | RegexOptions.RightToLeft)]
    private static partial Regex Before();

    [GeneratedRegex(@"(?<!:)//[^\n]*")]
    private static partial Regex Comments();

    [GeneratedRegex("""
        \$*""\"[\s\S]*?""\"|\$?"(\\.|[^"\\\n])*"
        """, RegexOptions.ExplicitCapture)]
    private static partial Regex Texts();

    [GeneratedRegex(@"\{[^{}]*\}")]
    private static partial Regex Inserted();
}
