using System.Text;

namespace Ledger.App.Tests;

/// <summary>
/// Wherever a file is named: a folder gets a sentence, a dash is the standard input or output, and what is there
/// already is refused alike.
/// </summary>
public sealed class FileNameTests
{
    [Theory]
    [InlineData("backup FOLDER")]
    [InlineData("backup --restore FOLDER")]
    [InlineData("calendar FOLDER")]
    [InlineData("join FOLDER")]
    [InlineData("import deliveries FOLDER")]
    [InlineData("import journal FOLDER")]
    [InlineData("record bath --input FOLDER")]
    [InlineData("print wall-card --html FOLDER")]
    [InlineData("export FILE")]
    public void A_folder_in_place_of_a_file_and_a_file_in_place_of_a_folder_get_a_sentence(string line)
    {
        using var room = Darkroom.WithDemoYear();
        Directory.CreateDirectory(room.PathOf("folder"));
        room.Write("file", "mine");
        var ran = room.Run(
            [.. line.Split(' ').Select(word => word switch { "FOLDER" => room.PathOf("folder"),
                "FILE" => room.PathOf("file"), _ => word })]);
        Assert.Equal((ExitStatus.UnusableFile, ""), (ran.Status, ran.Out));
        Assert.Contains(line.Contains("FILE", StringComparison.Ordinal) ? "is a file" : "folder",
            ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("error", ran.Error, StringComparison.Ordinal);
        Assert.Contains(room.PathOf("f"), ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_exists_already_is_refused_alike_and_stays()
    {
        using var room = Darkroom.WithDemoYear();
        var there = room.Write("there", "mine");
        room.Do("export", room.PathOf("exported"));
        string[][] lines =
        [
            ["backup", there], ["calendar", there], ["demo", "--into", there, "--no-ui"],
            ["print", "wall-card", "--html", there], ["export", room.PathOf("exported")],
        ];
        foreach (var line in lines)
            Assert.Equal(ExitStatus.Refused, room.Run(line).Status);
        Assert.Equal("mine", File.ReadAllText(there));
    }

    [Fact]
    public void A_backup_goes_through_a_pipe_and_back()
    {
        using var room = Darkroom.WithDemoYear();
        Assert.Equal("", room.Do("backup", "-"));
        Assert.StartsWith("SQLite format 3", Encoding.ASCII.GetString(room.Bytes.ToArray()[..15]),
            StringComparison.Ordinal);
        var shelf = room.Do("show", "settings");
        room.Input = room.Bytes.ToArray();
        Assert.Contains("0 entries added", room.Do("join", "-"), StringComparison.Ordinal);
        room.Do("record", "setting", "warn-days", "3");
        room.Do("backup", "--restore", "-");
        Assert.Equal(shelf, room.Do("show", "settings"));
    }

    [Fact]
    public void A_journal_a_table_a_document_and_a_calendar_go_through_pipes()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("export", room.PathOf("exported"));
        using var other = new Darkroom();
        other.Input = File.ReadAllBytes(Path.Combine(room.PathOf("exported"), "journal.jsonl"));
        other.Do("import", "journal", "-");
        Assert.Equal(room.Do("show", "shelf"), other.Do("show", "shelf"));
        other.Input = "date,setting,value\n2026-03-15,liquids,floz\n"u8.ToArray();
        other.Do("import", "settings", "-");
        other.Input = "{\"setting\": \"areas\", \"value\": \"cm2\"}"u8.ToArray();
        other.Do("record", "setting", "--input", "-");
        Assert.StartsWith("BEGIN:VCALENDAR", other.Do("calendar", "-"), StringComparison.Ordinal);
        Assert.Contains("<html", other.Do("print", "wall-card", "--html", "-"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--file", "-", "show", "today")]
    [InlineData("demo", "--into", "-")]
    public void A_ledger_is_no_stream(params string[] line)
    {
        using var room = new Darkroom();
        var ran = room.RunAnywhere(line);
        Assert.Equal(ExitStatus.WrongCommandLine, ran.Status);
        Assert.Contains("a ledger is a file", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_dashes_end_the_options()
    {
        using var room = Darkroom.WithDemoYear();
        Assert.Contains("there is no item \"--json\"", room.Run("show", "item", "--", "--json").Error,
            StringComparison.Ordinal);
        Assert.Contains("No sheet is like that", room.Do("show", "sheets", "--fate", "keeper", "--", "--zebra"),
            StringComparison.Ordinal);
        Assert.Contains("there is no setting \"--json\"", room.Run("record", "setting", "--", "--json", "1").Error,
            StringComparison.Ordinal);
    }
}
