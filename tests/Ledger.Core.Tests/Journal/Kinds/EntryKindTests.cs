using System.Text.Json;
using System.Text.RegularExpressions;
using CsCheck;

namespace Ledger.Core.Tests.Journal.Kinds;

/// <summary>
/// The descriptions say everything that the entries hold, and what they say is read back as the same, in words and in
/// JSON.
/// </summary>
public partial class EntryKindTests
{
    /// <summary>What no field says, and why.</summary>
    private static readonly Dictionary<string, string> Unsaid = new()
    {
        [".Kind"] = "the type's own name",
        [".FormerKeys#"] = "only looked up, never written",
        [".FormerKeys"] = "only looked up, never written",
        [".Denies#"] = "what a file denies, which an amendment says",
        [".Denies"] = "what a file denies, which an amendment says",
        [".IsTyped"] = "how it came, not what it says",
        [".Item.Id"] = "the ledger gives an item its number",
        [".Steps.UsualDilution"] = "it is derived from the step's item",
    };

    public static TheoryData<string> Kinds => [.. EntryKinds.All.Select(kind => kind.Name)];

    [Fact]
    public void Every_entry_has_a_description()
    {
        var described = typeof(EntryKind).Assembly.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(Entry)) && !type.IsAbstract)
            .Where(type => !EntryKinds.All.Any(kind => kind.GetType().GetGenericArguments()[0] == type))
            .Select(type => type.Name);
        Assert.Equal([], described); // a delivery of one line says the same
        Assert.Equal(EntryKinds.All.Count, EntryKinds.All.Select(kind => kind.Name).Distinct().Count());
        Assert.Equal(EntryKinds.All.Count, EntryKinds.All.Select(kind => kind.File).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Names_are_unique_and_of_small_letters(string name)
    {
        var kind = EntryKinds.Named(name)!;
        Assert.Matches(KindName(), kind.Name);
        Assert.Matches(FieldName(), kind.File);
        foreach (var fields in new[] { kind.AllFields, kind.Line?.Fields ?? [] })
        {
            Assert.Equal(fields.Count, fields.Select(field => field.Name).Distinct().Count());
            Assert.Equal(fields.Count, fields.Select(field => field.Option).Distinct().Count());
            Assert.All(fields, field => Assert.Matches(FieldName(), field.Name));
            Assert.All(fields, field => Assert.Matches("^--[a-z0-9-]+$", field.Option));
            Assert.All(fields, field => Assert.False(field.Help.EndsWith('.') || field.Help.Length > 160, field.Help));
        }

        // A row of a file holds both; only a note may be the entry's and a line's.
        Assert.Empty(kind.AllFields.Select(field => field.Name)
            .Intersect(kind.Line?.Fields.Select(field => field.Name) ?? []).Except(["note"]));
        Assert.DoesNotContain(kind.AllFields, field => field.JsonName == kind.Line?.Name);
        Assert.DoesNotContain(kind.AllFields, field => field.Option == $"--{kind.Line?.Name}");
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_example_is_accepted(string name)
    {
        var kind = EntryKinds.Named(name)!;
        foreach (var fields in new[] { kind.AllFields, kind.Line?.Fields ?? [] })
        {
            var read = new FieldValues();
            foreach (var field in fields.Where(field => field.Example.Length > 0))
            {
                var parsed = field.Notation.ReadBoxed(field.Example, read, Said.Terms);
                Assert.True(parsed.IsRead, $"{field.Name}: \"{field.Example}\"; accepted is {parsed.Accepted}");
                read.Put(field, parsed.Value);
            }

            Assert.All(fields.Where(field => field.IsNeeded), field => Assert.NotEmpty(field.Example));
        }

        var reading = EntryReading.Read(kind, ExampleWords.Read(kind), Said.Terms with { IsTyped = true });
        Assert.Empty(reading.Problems.Select(problem => problem.Sentence(field => field.Option)));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_word_is_read_back_in_any_case(string name)
    {
        var kind = EntryKinds.Named(name)!;
        foreach (var field in kind.AllFields.Concat(kind.Line?.Fields ?? []))
            foreach (var word in field.Notation.Words)
                foreach (var written in new[] { word, word.ToUpperInvariant(), $" {word.Replace(' ', '-')} ",
                    word.Replace(' ', '_') })
                {
                    var parsed = field.Notation.ReadBoxed(written, new(), Said.Terms);
                    Assert.True(parsed.IsRead, $"{field.Name}: {written}");
                    Assert.Equal(word, field.Notation.WriteBoxed(parsed.Value, Said.Terms));
                }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_is_said_is_read_back_as_the_same_in_words_and_in_json(string name)
    {
        var kind = EntryKinds.Named(name)!;
        Said.Text(kind).Sample(
            text =>
            {
                var entry = Read(kind, text);
                Assert.Same(kind, EntryKinds.Of(entry));
                var again = Read(kind, EntryWriting.Write(kind, entry, Said.Terms));
                Assert.Equal(Said.Whole(entry), Said.Whole(again));

                using var document = JsonDocument.Parse(EntryJson.Write(entry, Said.Terms));
                var problems = new List<FieldProblem>();
                var fromJson = Read(kind, EntryJson.Text(kind, document.RootElement, problems));
                Assert.Empty(problems);
                Assert.Equal(Said.Whole(entry), Said.Whole(fromJson));
            },
            iter: 200);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_list_in_the_place_of_a_text_is_refused_by_the_name_of_its_field(string name) => Assert.All(
        EntryKinds.Named(name)!.AllFields, field =>
        {
            using var document = JsonDocument.Parse($$"""{"{{field.JsonName}}":["2026-001"]}""");
            var problems = new List<FieldProblem>();
            EntryJson.Text(EntryKinds.Named(name)!, document.RootElement, problems);
            Assert.StartsWith($"{field.JsonName}: found ", Assert.Single(problems).Sentence(one => one.JsonName),
                StringComparison.Ordinal);
        });

    /// <summary>
    /// A property that no field says would be the same in every entry; a field that nothing keeps would be said in
    /// none.
    /// </summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_property_is_said_by_a_field_and_every_field_is_kept(string name)
    {
        var kind = EntryKinds.Named(name)!;
        var values = new Dictionary<string, HashSet<string>>();
        var said = new HashSet<Field>();
        Said.Text(kind).Sample(
            text =>
            {
                var entry = Read(kind, text);
                foreach (var (path, value) in Said.Values(entry))
                    (values.TryGetValue(path, out var known) ? known : values[path] = []).Add(value);
                var written = EntryWriting.Write(kind, entry, Said.Terms);
                said.UnionWith(kind.AllFields.Where(field => written[field].Length > 0));
                foreach (var line in written.Lines)
                    said.UnionWith(kind.Line!.Fields.Where(field => line[field].Length > 0));
            },
            iter: 400, threads: 1);

        // What is null in one entry has values of its own in another, under longer paths.
        Assert.Empty(
            values.Where(value => value.Value.Count < 2
                && !values.Keys.Any(longer => longer.StartsWith($"{value.Key}.", StringComparison.Ordinal))
                && !IsDerived(value.Key) && (kind.HasPlace || value.Key != ".Before")).Select(value => value.Key));
        Assert.Empty(kind.AllFields.Concat(kind.Line?.Fields ?? []).Except(said).Select(field => field.Name));
    }

    private static bool IsDerived(string path) =>
        Unsaid.Keys.Any(known => path == known || path.StartsWith($"{known}.", StringComparison.Ordinal))
            || path.EndsWith(".IsZero", StringComparison.Ordinal) || path.EndsWith(".Unit", StringComparison.Ordinal);

    private static Entry Read(EntryKind kind, EntryText text)
    {
        var reading = EntryReading.Read(kind, text, Said.Terms);
        Assert.Empty(reading.Problems.Select(problem => problem.Sentence(field => field.Name)));
        return reading.Entry!;
    }

    [GeneratedRegex("^[a-z]+(-[a-z]+)*$")]
    private static partial Regex KindName();

    [GeneratedRegex("^[a-z]+(_[a-z0-9]+)*$")]
    private static partial Regex FieldName();
}
