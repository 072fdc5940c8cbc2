using System.Reflection;
using System.Text.RegularExpressions;
using Ledger.App.Output;

namespace Ledger.App.Tests;

/// <summary>The manual page: whole, without a fault in its form, and true.</summary>
public sealed partial class ManualTests
{
    private static readonly string[] _sections =
    [
        "NAME", "SYNOPSIS", "DESCRIPTION", "OPTIONS", "COMMANDS", "CSV FILES", "DATA", "EXIT STATUS",
        "ENVIRONMENT", "FILES", "EXAMPLES", "CAUTIONS",
    ];

    private static IReadOnlyList<string> Lines
    {
        get
        {
            using var room = new Darkroom();
            return room.RunAnywhere("manual").Out.Split('\n');
        }
    }

    [Fact]
    public void It_names_every_command_and_option_and_uses_no_macro_but_those_of_man()
    {
        var lines = Lines;
        foreach (var heading in new[] { "trayledger record session <SESSION>", "trayledger show today",
            "trayledger backup <FILE>" })
            Assert.Contains($".SS \"{heading}\"", lines);
        Assert.Contains(".B \\-\\-as\\-of <DATE>", lines);
        var macros = lines.Where(line => line is ['.', ..]).Select(line => line[1..].Split(' ')[0]).Distinct();
        Assert.Empty(macros.Except(["TH", "SH", "SS", "TP", "B", "PP", "nf", "fi", "br"]));
        Assert.DoesNotContain(lines, line => line.StartsWith('\''));
    }

    [Fact]
    public void Its_sections_stand_in_the_order_that_pages_have() => Assert.Equal(
        _sections,
        Lines.Where(line => line.StartsWith(".SH ", StringComparison.Ordinal)).Select(line => line[4..].Trim('"')));

    /// <summary>mandoc(1), -T lint: errors, warnings and remarks about style alike.</summary>
    [Fact]
    public void A_checker_of_manual_pages_finds_nothing()
    {
        if (!Executables.Has("mandoc"))
            Assert.Skip("there is no mandoc here");
        using var room = new Darkroom();
        var page = room.Write("trayledger.1", string.Join('\n', Lines));
        var checkedPage = Executables.Run("mandoc", ["-T", "lint", page]);
        Assert.Equal("", checkedPage.Output + checkedPage.Errors);
    }

    /// <summary>
    /// What is broken in the page's source, because lines there may not be long, is one line in the page.
    /// </summary>
    [Fact]
    public void A_long_example_is_one_line_to_be_copied()
    {
        if (!Executables.Has("mandoc"))
            Assert.Skip("there is no mandoc here");
        using var room = new Darkroom();
        var page = room.Write("trayledger.1", string.Join('\n', Lines));
        var shown = Overstrike().Replace(Executables.Run("mandoc", ["-T", "ascii", "-O", "width=200", page]).Output,
            "");
        Assert.Contains(ManualExamples.All, example => example.Line.Length > 80);
        Assert.All(ManualExamples.All,
            example => Assert.Contains($" {example.Line}\n", shown, StringComparison.Ordinal));
    }

    [Fact]
    public void The_views_of_the_file_and_their_columns_are_explained_as_the_file_does_it()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("export", room.PathOf("out"));
        var section = Section("DATA");
        foreach (var view in Directory.EnumerateFiles(room.PathOf("out/readable"), "*.csv")
            .Select(file => Path.GetFileNameWithoutExtension(file)!))
            if (view != "code-book")
            {
                var own = section.SkipWhile(line => line != $".SS \"{view}\"").Skip(1)
                    .TakeWhile(line => !line.StartsWith(".SS", StringComparison.Ordinal)).ToList();
                var columns = File.ReadLines(room.PathOf($"out/readable/{view}.csv")).First().Split(',');
                Assert.Equal(columns,
                    own.Where(line => line.StartsWith(".B ", StringComparison.Ordinal)).Select(line => line[3..]));
            }
    }

    [Fact]
    public void Every_exit_status_of_the_program_is_explained()
    {
        var known = typeof(ExitStatus).GetFields(BindingFlags.Static | BindingFlags.Public)
            .Select(field => $"{field.GetRawConstantValue()}");
        var section = Section("EXIT STATUS");
        Assert.All(known,
            status => Assert.Contains(section, line => line.StartsWith($".B {status}", StringComparison.Ordinal)));
    }

    /// <summary>The names are looked for in the source, so that none can be read and not be told.</summary>
    [Fact]
    public void Every_variable_of_the_environment_that_the_program_reads_is_explained()
    {
        var source = Path.Combine(NativeBinary.Root, "src");
        var read = Directory.EnumerateFiles(source, "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}",
                StringComparison.Ordinal))
            .SelectMany(file => Variable().Matches(File.ReadAllText(file)).Select(found => found.Groups["name"].Value))
            .Distinct().ToList();
        Assert.Contains("TRAYLEDGER_FILE", read);
        Assert.Contains("NO_COLOR", read);
        var section = Section("ENVIRONMENT");
        Assert.All(read, name => Assert.Contains($".B {name}", section));
    }

    [Fact]
    public void Every_column_of_every_file_is_explained()
    {
        var text = string.Join('\n', Section("CSV FILES"));
        Assert.All(CsvImport.Kinds, kind =>
        {
            var part = text.Split($".SS \"{kind}.csv\"\n")[1].Split(".SS ")[0].Split('\n');
            Assert.Equal(
                CsvImport.ColumnsOf(kind).Select(column => $".B {column}"),
                part.Where(line => line.StartsWith(".B ", StringComparison.Ordinal)));
        });
    }

    /// <summary>What a ledger leaves beside itself is among the files that the page names.</summary>
    [Fact]
    public void The_files_are_those_that_stand_there()
    {
        var section = string.Join(' ', Section("FILES"));
        using var room = Darkroom.WithDemoYear();
        using (Storage.LedgerFile.Open(room.Ledger, room.Clock))
            room.Do("record", "count", "fen80", "60", "--reason", "miscounted");
        room.Do("check");
        Assert.Contains("ledger.db", room.Names());
        Assert.All(room.Names(), name => Assert.Contains(
            name.Replace("-", "\\-", StringComparison.Ordinal), section, StringComparison.Ordinal));
    }

    /// <summary>They are typed one after the other, as they stand there; what only a shell does is left out.</summary>
    [Fact]
    public void Every_example_works_on_the_demo_year()
    {
        using var room = Darkroom.WithDemoYear();
        foreach (var line in ManualExamples.All.Select(example => example.Line)
            .Where(line => !line.StartsWith("export ", StringComparison.Ordinal)))
        {
            var words = CommandLine.Words(line).TakeWhile(word => word is not (">" or "|" or "||")).ToList();
            Assert.Equal("trayledger", words[0]);
            var ran = room.Run([.. words.Skip(1).Select(word => Placed(word, room))]);
            Assert.True(
                ran.Status == 0 || (ran.Status == ExitStatus.NeedsTheUser && words.Contains("--exit-code")),
                $"{line}\n{ran.Error}");
            Assert.NotEqual("", ran.Out);
        }
    }

    private static List<string> Section(string name) =>
    [
        .. Lines.SkipWhile(line => line != $".SH \"{name}\"").Skip(1)
            .TakeWhile(line => !line.StartsWith(".SH ", StringComparison.Ordinal)),
    ];

    private static string Placed(string word, Darkroom room) => word switch
    {
        "sample-data" => SampleData.Folder,
        "demo.db" or "ledger-copy.db" or "ledger-2026" => room.PathOf(word),
        _ => word,
    };

    [GeneratedRegex(
        """(?<=[vV]ariable\(|const string \w*Variable = |_localeVariables = \[[^\]]*)"(?<name>[A-Z_]+)(?=")""")]
    private static partial Regex Variable();

    [GeneratedRegex("\\w?\b|.\b")]
    private static partial Regex Overstrike();
}
