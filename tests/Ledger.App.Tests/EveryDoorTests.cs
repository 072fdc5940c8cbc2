using System.CommandLine;
using CsCheck;
using Ledger.App.Commands.Record;
using Ledger.Core.Tests.Journal.Kinds;

namespace Ledger.App.Tests;

/// <summary>
/// Every field of every kind of entry, and of its lines, in the doors of commands, files and documents (forms: beside
/// their tests); and what random entries say through the words of a command.
/// </summary>
public sealed partial class EveryDoorTests
{
    /// <summary>What is missing in a door: "kind.field door", and why.</summary>
    private static readonly Dictionary<string, string> Missing = [];

    public static TheoryData<string> Kinds => [.. EntryKinds.All.Select(kind => kind.Name)];

    [Fact]
    public void Every_field_of_every_kind_has_its_place_in_the_command_the_file_and_the_document()
    {
        using var room = new Darkroom();
        var commands = Program.Commands(Bench(room)).Subcommands
            .Single(command => command.Name == "record").Subcommands;
        var list = EntryKinds.All.SelectMany(kind => Doors(kind, commands.Single(command => command.Name == kind.Name)))
            .ToList();
        Assert.True(list.Count > 900, $"the list has {list.Count} places only");
        Assert.Empty(list.Where(place => !place.IsThere).Select(place => place.Name).Except(Missing.Keys));
        Assert.Empty(Missing.Keys.Except(list.Where(place => !place.IsThere).Select(place => place.Name)));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_random_entry_says_the_same_through_the_words_of_a_command(string name)
    {
        var kind = EntryKinds.Named(name)!;
        var proved = 0;
        var typing = Said.Terms with { IsTyped = true };
        Said.Text(kind).Sample(
            text =>
            {
                text[CommonFields.Reference] = "key";
                foreach (var line in text.Lines)
                    JoinNames(line, kind.Line!.Fields);
                if (EntryReading.Read(kind, text, Said.Terms).Entry is not { } entry)
                    return; // a name without its blanks may say something else
                proved++;
                var arguments = new KindArguments(kind);
                var command = new Command(kind.Name);
                arguments.AddTo(command);
                var parse = command.Parse(TypedCommand.Of(entry)[2..],
                    new ParserConfiguration { ResponseFileTokenReplacer = null });
                Assert.Empty(parse.Errors.Select(error => error.Message));
                var problems = new List<FieldProblem>();
                var reading = EntryReading.Read(kind, arguments.Text(parse, typing, problems), typing);
                Assert.Empty(
                    problems.Concat(reading.Problems).Select(problem => problem.Sentence(field => field.Option)));
                Assert.Equal(Said.Whole(entry), Said.Whole(reading.Entry! with { IsTyped = false }));
            },
            iter: 50, threads: 1);
        Assert.True(proved > 10, $"only {proved} of them could be said");
    }

    /// <summary>
    /// In a line of words a name is a code, and a container has a stroke; a note stands at the end and may say
    /// anything.
    /// </summary>
    private static void JoinNames(EntryText line, IReadOnlyList<Field> fields)
    {
        foreach (var field in fields.Where(field => field.Name != "note"
            && field.Notation is { Words.Count: 0, HasUnit: false, Shape: Shape.Text or Shape.Choice }))
            if (IsFigure(field))
                line[field] = line[field].Split(' ')[0];
            else if (line[field].Length > 0 && !Code().IsMatch(line[field]))
                line[field] = field.Name == "container" ? $"code/{line[field].Length}" : $"code-{line[field].Length}";
    }

    /// <summary>Whether it takes no name.</summary>
    private static bool IsFigure(Field field) =>
        !field.Notation.ReadBoxed("code-1", new(), Said.Terms).IsRead;

    private static Workbench Bench(Darkroom room) => new(new()
    {
        Out = TextWriter.Null, Error = TextWriter.Null, In = () => Stream.Null, Clock = room.Clock,
        Variable = _ => null,
    });

    private static IEnumerable<(string Name, bool IsThere)> Doors(EntryKind kind, Command command)
    {
        var columns = CsvImport.ColumnsOf(kind.File);
        foreach (var field in kind.AllFields)
        {
            yield return ($"{kind.Name}.{field.Name} command", field.IsArgument
                ? command.Arguments.Any(argument => argument.Name == field.Name
                    || argument.Name.Contains(field.Notation.Placeholder, StringComparison.OrdinalIgnoreCase))
                : command.Options.Any(option => option.Name == field.Option));
            yield return ($"{kind.Name}.{field.Name} file", columns.Contains(field.Name)
                || columns.Contains($"{kind.NamedBy?.Name}_{field.Name}"));
            yield return ($"{kind.Name}.{field.Name} document", IsRead(kind, $"{{\"{field.JsonName}\":\"x\"}}"));
        }

        foreach (var field in kind.Line?.Fields ?? [])
        {
            yield return ($"{kind.Name} {kind.Line!.Name}.{field.Name} command",
                command.Options.Any(option => option.Name == kind.Line.Option));
            yield return ($"{kind.Name} {kind.Line.Name}.{field.Name} file", columns.Contains(field.Name));
            yield return ($"{kind.Name} {kind.Line.Name}.{field.Name} document",
                IsRead(kind, $"{{\"{kind.Line.Name}\":[{{\"{field.JsonName}\":\"x\"}}]}}"));
        }
    }

    /// <summary>Whether a document's name is one that the kind knows.</summary>
    private static bool IsRead(EntryKind kind, string json)
    {
        using var document = System.Text.Json.JsonDocument.Parse(json);
        var problems = new List<FieldProblem>();
        EntryJson.Text(kind, document.RootElement, problems);
        return problems.Count == 0;
    }

    [System.Text.RegularExpressions.GeneratedRegex("^[a-z]+[0-9]*$")]
    private static partial System.Text.RegularExpressions.Regex Code();
}
