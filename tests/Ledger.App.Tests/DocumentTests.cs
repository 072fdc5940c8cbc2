using System.Text.Json;
using System.Text.RegularExpressions;
using CsCheck;
using Json.Schema;
using Ledger.Core.Tests.Journal.Kinds;

namespace Ledger.App.Tests;

/// <summary>
/// What a command shows is described once: its JSON keeps to its schema (checked by an independent library), and its
/// tables can be written, sorted and looked through in every format.
/// </summary>
public sealed partial class DocumentTests
{
    /// <summary>Real documents of the demo year, and the name of each.</summary>
    private const string Documents = """
        show today: show today
        show shelf: show shelf
        show baths: show baths
        show holders: show holders
        show sessions: show sessions
        show session: show session S22
        show prints: show prints
        show plans: show plans
        show costs: show costs
        show costs: show costs --by month
        show costs: show costs --film fen80
        show costs: show costs --formula average
        show prices: show prices
        show reorder: show reorder
        show journal: show journal --last 500
        show item: show item syrup
        show item: show item fen80
        show bath: show bath F4
        show bath: show bath F1
        show bath: show bath PF4
        show sheet: show sheet E07-2
        show sheets: show sheets
        show faults: show faults
        show forgotten: show forgotten --months 1
        show formats: show formats
        show jugs: show jugs
        show settings: show settings
        trace: trace F3
        trace: trace S16
        trace: trace F3 --at-risk
        plan session: plan session --from-plan tarn
        plan session: plan session --process film --sheets "40 fen80 N" --bath F4
        check: check
        record setting: record setting liquids ml --dry-run
        record clearing-test: record clearing-test F4 fen80 40
        """;

    public static TheoryData<string, string> Lines
    {
        get
        {
            var lines = new TheoryData<string, string>();
            foreach (var line in Documents.Split('\n',
                StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
                lines.Add(line.Split(": ")[0], line.Split(": ")[1]);
            return lines;
        }
    }

    [Theory]
    [MemberData(nameof(Lines))]
    public void A_document_keeps_to_its_schema(string name, string line)
    {
        using var room = Darkroom.WithDemoYear();
        AssertKeeps(room, name, room.Run([.. CommandLine.Words(line), "--json"]));
    }

    [Fact]
    public void An_empty_ledger_gives_documents_that_keep_to_their_schemas()
    {
        using var room = Darkroom.WithEmptyLedger();
        foreach (var name in new[] { "today", "shelf", "baths", "sessions", "costs", "reorder",
            "journal", "holders", "jugs", "plans", "sheets", "faults" })
            AssertKeeps(room, $"show {name}", room.Run("show", name, "--json"));
    }

    [Fact]
    public void Backups_tell_what_they_did_as_a_document_too()
    {
        using var room = Darkroom.WithDemoYear();
        AssertKeeps(room, "backup", room.Run("backup", room.PathOf("copy.db"), "--json"));
        AssertKeeps(room, "backup", room.Run("backup", "--restore", room.PathOf("copy.db"), "--json"));
    }

    [Fact]
    public void What_is_done_with_whole_files_is_told_as_a_document_too()
    {
        using var room = Darkroom.WithDemoYear();
        using var other = new Darkroom();
        AssertKeeps(room, "export", room.Run("export", room.PathOf("out"), "--json"));
        AssertKeeps(room, "calendar", room.Run("calendar", room.PathOf("days.ics"), "--json"));
        AssertKeeps(room, "join", room.Run("join", room.Ledger, "--json"));
        AssertKeeps(room, "import", room.Run("import", "all", SampleData.Folder, "--json"));
        var imported = other.Run("import", "journal", room.PathOf("out/journal.jsonl"), "--json");
        AssertKeeps(other, "import", imported);
        Assert.True(imported.Json.GetProperty("recorded").GetInt32() > 100);
        Assert.Equal(0, imported.Json.GetProperty("alreadyThere").GetInt32());
    }

    [Fact]
    public void What_is_refused_is_a_document_with_the_reason()
    {
        using var room = Darkroom.WithDemoYear();
        using var other = Darkroom.WithDemoYear();
        room.Do("record", "bath", "F99", "tarnfix", "1l");
        other.Do("record", "bath", "F99", "tarnfix", "1l");
        other.Do("export", other.PathOf("out"));
        var journal = room.Run("import", "journal", other.PathOf("out/journal.jsonl"), "--json");
        Assert.Equal((ExitStatus.Refused, ""), (journal.Status, journal.Error));
        Assert.False(journal.Json.GetProperty("isDone").GetBoolean());
        var join = room.Run("join", other.Ledger, "--json");
        Assert.Equal((ExitStatus.Refused, ""), (join.Status, join.Error));
        Assert.Equal(journal.Json.GetProperty("problems")[0].GetString(), join.Json.GetProperty("refusal").GetString());
    }

    [Theory]
    [InlineData("calendar")]
    [InlineData("backup")]
    public void A_file_and_a_document_do_not_both_go_to_the_output(string command)
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run(command, "-", "--json");
        Assert.Equal((ExitStatus.WrongCommandLine, ""), (ran.Status, ran.Out));
        Assert.Contains("do not go together", ran.Error, StringComparison.Ordinal);
        Assert.Equal(0, room.Bytes.Length);
    }

    /// <summary>Each command that lists a document has one that a test holds to its schema.</summary>
    [Fact]
    public void No_document_is_left_untried()
    {
        using var room = new Darkroom();
        string[] tried = ["backup", "export", "calendar", "join", "import", .. Lines.Select(line => line.Data.Item1)];
        var listed = room.RunAnywhere("help", "json").Out.Split('\n')
            .Where(line => line.StartsWith("  ", StringComparison.Ordinal)).Select(line => line.Trim());
        Assert.Empty(listed.Where(name => !name.StartsWith("record ", StringComparison.Ordinal)).Except(tried));
    }

    public static TheoryData<string> Kinds => [.. EntryKinds.All.Select(kind => kind.Name)];

    /// <summary>
    /// The schema of what was said is that of what --input takes: random entries of each kind keep to it, each of its
    /// fields is one that is read, and what it refuses is refused.
    /// </summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_was_said_keeps_to_the_schema_of_its_kind(string name)
    {
        using var room = new Darkroom();
        var kind = EntryKinds.Named(name)!;
        using var document = JsonDocument.Parse(room.RunAnywhere("help", "json", "record", name).Out);
        var said = document.RootElement.GetProperty("properties").GetProperty("said");
        Assert.Equal(
            kind.AllFields.Select(field => field.JsonName).Append("kind").Distinct()
                .Concat(kind.Line is null ? [] : new[] { kind.Line.Name }).Order(),
            said.GetProperty("properties").EnumerateObject().Select(property => property.Name).Order());
        var schema = JsonSchema.FromText(said.GetRawText());
        Said.Text(kind).Sample(
            text =>
            {
                text[CommonFields.Reference] = "key";
                var entry = EntryReading.Read(kind, text, Said.Terms).Entry!;
                var written = EntryJson.Write(entry, Said.Terms);
                Assert.True(Keeps(schema, written), written);
                var problems = new List<FieldProblem>();
                using var again = JsonDocument.Parse(written);
                Assert.Equal(Said.Whole(entry),
                    Said.Whole(EntryReading.Read(kind, EntryJson.Text(kind, again.RootElement, problems),
                        Said.Terms).Entry!));
                Assert.False(Keeps(schema, Kind().Replace(written, "\"kind\":\"other\"")));
                Assert.False(Keeps(schema, written.Insert(1, "\"unheardOf\":1,")));
            },
            iter: 30, threads: 1);
    }

    [Theory]
    [InlineData("""{"kind":"session","session":"S1","process":"film"}""",
        "sheets: found nothing; accepted is one line at least")]
    [InlineData("""{"kind":"session","session":"S1","process":"film","sheets":"two"}""",
        "sheets: found \"\"two\"\"; accepted is a list of objects")]
    [InlineData("""{"kind":"session","session":"S1","process":"film","sheets":[2]}""",
        "sheets: found \"[2]\"; accepted is a list of objects")]
    [InlineData("""{"kind":"delivery"}""", "found \"delivery\"; accepted is the kind session, or no kind")]
    public void What_a_document_lacks_is_named(string json, string sentence)
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run("record", "session", "--input", room.Write("in.json", json));
        Assert.Equal(ExitStatus.WrongCommandLine, ran.Status);
        Assert.Contains(sentence, ran.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    /// <summary>
    /// The schema itself is one of the draft that it names, and a document with a field that it does not know fails it.
    /// </summary>
    [Fact]
    public void A_schema_refuses_what_it_does_not_describe()
    {
        using var room = Darkroom.WithDemoYear();
        var schema = JsonSchema.FromText(room.Do("help", "json", "show", "shelf"));
        var text = room.Do("show", "shelf", "--json");
        Assert.True(Keeps(schema, text));
        Assert.False(Keeps(schema, text.Replace("\"belowMinimum\"", "\"tooLittle\"", StringComparison.Ordinal)));
        Assert.False(Keeps(schema,
            text.Replace("\"belowMinimum\": false", "\"belowMinimum\": \"no\"", StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_document_is_listed_and_a_slip_names_what_may_have_been_meant()
    {
        using var room = new Darkroom();
        var listed = room.RunAnywhere("help", "json").Out;
        Assert.All(Lines, line => Assert.Contains($"  {line.Data.Item1}\n", listed, StringComparison.Ordinal));
        var ran = room.RunAnywhere("help", "json", "show", "shelff");
        Assert.Equal(ExitStatus.Refused, ran.Status);
        Assert.Contains("did you mean show shelf", ran.Error, StringComparison.Ordinal);
    }

    /// <summary>
    /// Every table of every reading can be written in each format; the cells of each row are as many as the columns.
    /// </summary>
    [Theory]
    [MemberData(nameof(Lines))]
    public void Its_tables_are_written_in_every_format(string name, string line)
    {
        if (name.Split(' ')[0] is "check" or "record")
            return;
        using var room = Darkroom.WithDemoYear();
        string[] words = [.. CommandLine.Words(line)];
        var tables = Tables(room, name);
        Assert.NotEmpty(tables);
        foreach (var table in tables)
        {
            var tsv = room.Do([.. words, "--format", "tsv", "--table", table]).Split('\n',
                StringSplitOptions.RemoveEmptyEntries);
            var columns = tsv[0].Split('\t').Length;
            Assert.All(tsv, row => Assert.Equal(columns, row.Split('\t').Length));
            Assert.StartsWith(tsv[0].Replace('\t', ','), room.Do([.. words, "--format", "csv", "--table", table]),
                StringComparison.Ordinal);
            room.Do([.. words, "--format", "text", "--table", table]);
        }
    }

    [Fact]
    public void Csv_is_the_first_table_with_a_column_for_each_amount_and_its_unit()
    {
        using var room = Darkroom.WithDemoYear();
        var csv = room.Do("show", "shelf", "--format", "csv").Split("\r\n");
        Assert.StartsWith("item,name,kind,onHand,onHandUnit,usable,usableUnit,", csv[0], StringComparison.Ordinal);
        Assert.Contains(csv,
            row => row.StartsWith("syrup,", StringComparison.Ordinal)
                && row.Contains(",64,ml,", StringComparison.Ordinal));
        var inner = room.Do("show", "shelf", "--format", "csv", "--table", "containers").Split("\r\n");
        Assert.StartsWith("item,container,lot,", inner[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_are_sorted_and_chosen_in_text_JSON_and_CSV_alike()
    {
        using var room = Darkroom.WithDemoYear();
        room.Width = 200;
        string[] choice = ["show", "shelf", "--where", "kind~film", "--sort", "on hand", "--reverse"];
        var json = room.Run([.. choice, "--json"]).Json.GetProperty("items").EnumerateArray().ToList();
        Assert.All(json, item => Assert.Equal("film", item.GetProperty("kind").GetString()));
        var amounts = json.Select(item => item.GetProperty("onHand").GetProperty("value").GetDecimal()).ToList();
        Assert.Equal(amounts.OrderDescending(), amounts);
        var codes = json.Select(item => item.GetProperty("item").GetString()!).ToList();
        Assert.Equal(codes,
            room.Do([.. choice, "--format", "csv"]).Split("\r\n").Skip(1).SkipLast(1).Select(row => row.Split(',')[0]));
        Assert.Equal(codes, room.Do(choice).Split('\n').Skip(1).Take(codes.Count).Select(row => row.Split(' ')[0]));
    }

    [Fact]
    public void The_journal_is_looked_through_as_a_whole_before_the_last_entries_are_taken()
    {
        using var room = Darkroom.WithDemoYear();
        var all = room.Run("show", "journal", "--last", "10000", "--json").Json.GetProperty("entries")
            .EnumerateArray().ToList();
        var first = all[^1].GetProperty("kind").GetString()!;
        var day = all[^1].GetProperty("date").GetString()!;
        var found = room.Run("show", "journal", "--kind", first.ToUpperInvariant(), "--to",
            day, "--last", "3", "--json").Json
            .GetProperty("entries").EnumerateArray().ToList();
        Assert.NotEmpty(found);
        Assert.All(found,
            entry => Assert.Equal((first, day),
                (entry.GetProperty("kind").GetString(), entry.GetProperty("date").GetString())));
    }

    [Theory]
    [InlineData("show shelf --sort weight", "there is no column \"weight\"")]
    [InlineData("show shelf --sort nmae", "did you mean name?")]
    [InlineData("show shelf --table itmes", "did you mean items?")]
    [InlineData("show shelf --where item", "write it as item~fen")]
    [InlineData("show shelf --json --format csv", "do not go together")]
    [InlineData("show journal --from 2026-03-01 --to 2026-02-01", "before it begins")]
    [InlineData("show shelf --json --table containers", "JSON holds all tables")]
    public void What_cannot_be_done_is_said(string line, string sentence)
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run([.. CommandLine.Words(line)]);
        Assert.Equal((2, ""), (ran.Status, ran.Out));
        Assert.Contains(sentence, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Habits_are_listed_in_one_place()
    {
        using var room = new Darkroom();
        var listed = room.RunAnywhere("help", "environment").Out;
        Assert.All(
            VariablesAndFiles.Choices.SelectMany(habit => new[] { habit.Option, habit.Setting })
                .Concat(VariablesAndFiles.Variables.Select(variable => variable.Name)),
            word => Assert.Contains(word, listed, StringComparison.Ordinal));
        Assert.All(VariablesAndFiles.Choices.Where(habit => habit.Setting.Length > 0),
            habit => Assert.NotNull(Core.Journal.Setting.Named(habit.Setting)));
    }

    private static List<string> Tables(Darkroom room, string name) =>
    [
        .. room.RunAnywhere([.. name.Split(' '), "--help"]).Out.Split("Tables for")[1].Split('\n').Skip(1)
            .Where(line => line.StartsWith("  ", StringComparison.Ordinal) && line.Length > 2
                && line[2] != ' ' && line.Contains(": ", StringComparison.Ordinal))
            .Select(line => line.Trim().Split(':')[0]),
    ];

    private static void AssertKeeps(Darkroom room, string name, Support.Ran ran)
    {
        Assert.True(ran.Status == 0, ran.Error);
        var schema = JsonSchema.FromText(room.Do(["help", "json", .. name.Split(' ')]));
        using var document = JsonDocument.Parse(ran.Out);
        var result = schema.Evaluate(document.RootElement, new() { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid,
            string.Join('\n', (result.Details ?? []).Where(detail => detail.Errors is { Count: > 0 })
                .Select(
                    detail =>
                        $"{detail.InstanceLocation}: "
                            + $"{string.Join("; ", detail.Errors!.Select(error => $"{error.Key} {error.Value}"))}")));
    }

    private static bool Keeps(JsonSchema schema, string text)
    {
        using var document = JsonDocument.Parse(text);
        return schema.Evaluate(document.RootElement).IsValid;
    }

    [GeneratedRegex("\"kind\":\"[a-z-]+\"")]
    private static partial Regex Kind();
}
