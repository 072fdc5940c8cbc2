using System.Text;

namespace Ledger.App.Tests;

public class ImportTests
{
    private static readonly int Year = DemoYear.Read(DemoYear.LastDay).Count;

    private const string Items = "item,name,kind,format,pack\nfen80,Corvane Fen 80,film,8x10,25\n";

    [Fact]
    public void A_folder_is_imported_and_importing_it_again_adds_nothing()
    {
        using var room = new Darkroom();
        using var demo = Darkroom.WithDemoYear();
        Assert.Equal($"{Year} entries recorded, 0 already there\n", room.Do("import", "all", SampleData.Folder));
        Assert.Equal($"0 entries recorded, {Year} already there\n", room.Do("import", "all", SampleData.Folder));
        Assert.Equal(demo.Do("show", "costs", "--json"), room.Do("show", "costs", "--json"));
    }

    [Fact]
    public void A_dry_run_of_a_folder_writes_nothing()
    {
        using var room = new Darkroom();
        var ran = room.Run("import", "all", SampleData.Folder, "--dry-run");
        Assert.Equal((0, $"{Year} entries would be recorded, 0 already there\n"), (ran.Status, ran.Out));
        Assert.Contains("nothing was written", ran.Error, StringComparison.Ordinal);
        Assert.Equal(0, room.Run("check", "--json").Json.GetProperty("entries").GetInt32());
    }

    [Fact]
    public void Every_bad_row_is_listed_and_nothing_is_written()
    {
        using var room = new Darkroom();
        room.Do("import", "items", room.Write("items.csv", Items));
        var file = room.Write("deliveries.csv", """
            date,item,packs,price,colour
            2025-02-29,fen80,1,155,red
            2025-03-01,fen80,-1,155,red
            2025-03-01,fen80,1,155,red
            2025-03-01,pan101,1,1x5,red
            """);
        var ran = room.Run("import", "deliveries", file);
        Assert.Equal((3, ""), (ran.Status, ran.Out));
        Assert.Contains($"{file}, line 2, date: found \"2025-02-29\"", ran.Error, StringComparison.Ordinal);
        Assert.Contains("line 3, packs", ran.Error, StringComparison.Ordinal);
        Assert.Contains("line 5, price", ran.Error, StringComparison.Ordinal);
        Assert.Contains("note: the column", ran.Error, StringComparison.Ordinal);
        Assert.Contains("nothing was written", ran.Error, StringComparison.Ordinal);
        Assert.Equal(1, room.Run("check", "--json").Json.GetProperty("entries").GetInt32());
    }

    [Fact]
    public void A_template_shows_the_columns_with_an_example_and_writes_nothing()
    {
        using var room = new Darkroom();
        var lines = room.Do("import", "Clearing-Tests", "--template").Split("\r\n");
        Assert.Equal(
            ["date,bath,film,seconds,fresh,sheets,from,note,before,anyway,reference",
                "2026-03-15,F4,fen80,55,no,1,fen80/3,,,no,", ""], lines);
        Assert.False(File.Exists(room.Ledger));
        Assert.Contains("one kind of file", room.Run("import", "all", "--template").Error, StringComparison.Ordinal);
        Assert.Contains("name the file", room.Run("import", "items").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_rules_remark_on_an_entry_is_shown_with_its_line()
    {
        using var room = new Darkroom();
        var ran = room.Run("import", "all", SampleData.Folder, "--dry-run");
        Assert.Contains("note: storage_moves.csv, line 2: fen80/2 comes out of the cold: ",
            ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_rules_refuse_is_told_with_its_line_and_undoes_the_rest()
    {
        using var room = new Darkroom();
        room.Do("import", "items", room.Write("items.csv", Items));
        var file = room.Write("deliveries.csv",
            "date,item,packs,price\n2025-03-01,fen80,1,155\n2026-03-16,fen80,1,155\n");
        var ran = room.Run("import", "deliveries", file);
        Assert.Equal(3, ran.Status);
        Assert.Contains($"{file}, line 3: 2026-03-16 is later than today", ran.Error, StringComparison.Ordinal);
        Assert.Equal(1, room.Run("check", "--json").Json.GetProperty("entries").GetInt32());
    }

    [Fact]
    public void The_standard_input_is_a_file_too()
    {
        using var room = new Darkroom { Input = Encoding.UTF8.GetBytes(Items.Replace(',', ';')) };
        Assert.Equal("1 entry recorded, 0 already there\n", room.Do("import", "items", "-"));
    }

    [Fact]
    public void A_file_that_is_not_there_cannot_be_used()
    {
        using var room = new Darkroom();
        Assert.Equal(4, room.Run("import", "items", room.PathOf("items.csv")).Status);
        Assert.Equal(4, room.Run("import", "all", room.PathOf("nowhere")).Status);
    }

    [Fact]
    public void A_binary_file_is_refused_in_a_sentence()
    {
        using var room = new Darkroom();
        File.WriteAllBytes(room.PathOf("items.csv"), [0xFF, 0xD8, 0xFF, 0xE0, 0, 0x10, 0x4A, 0x46]);
        var ran = room.Run("import", "items", room.PathOf("items.csv"));
        Assert.Equal(3, ran.Status);
        Assert.Contains("UTF-8", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_without_known_files_is_refused_and_strange_files_are_told()
    {
        using var room = new Darkroom();
        Directory.CreateDirectory(room.PathOf("csv"));
        Assert.Equal(3, room.Run("import", "all", room.PathOf("csv")).Status);
        room.Write("csv/items.csv", Items);
        room.Write("csv/holidays.csv", "date\n2025-08-01\n");
        var ran = room.Run("import", "all", room.PathOf("csv"));
        Assert.Equal(0, ran.Status);
        Assert.Contains("holidays.csv is not a file that can be imported", ran.Error, StringComparison.Ordinal);
    }

    /// <summary>
    /// What the rules refuse is not kept back until all rows can be read: a user mends a file in one go.
    /// </summary>
    [Fact]
    public void Rows_that_cannot_be_read_and_rows_that_are_refused_are_listed_in_one_run()
    {
        using var room = new Darkroom();
        room.Do("import", "items", room.Write("items.csv", Items));
        var file = room.Write("deliveries.csv", """
            date,item,packs,price
            2025-03-01,fen80,1,155
            2026-03-16,fen80,1,155
            2025-02-29,fen80,-1,155
            2026-04-01,fen80,1,155
            """);
        var ran = room.Run("import", "deliveries", file);
        Assert.Equal((3, ""), (ran.Status, ran.Out));
        var lines = ran.Error.Split('\n');
        Assert.StartsWith($"{file}, line 3: 2026-03-16 is later than today", lines[0], StringComparison.Ordinal);
        Assert.StartsWith($"{file}, line 4, date: found", lines[1], StringComparison.Ordinal);
        Assert.StartsWith($"{file}, line 4, packs: found", lines[2], StringComparison.Ordinal);
        Assert.StartsWith($"{file}, line 5: 2026-04-01 is later than today", lines[3], StringComparison.Ordinal);
        Assert.StartsWith(
            "nothing was written: 3 rows must be mended first: 1 cannot be read, 2 are refused, ",
            string.Join(' ', lines[4..]), StringComparison.Ordinal);
        Assert.Equal(1, room.Run("check", "--json").Json.GetProperty("entries").GetInt32());
    }

    /// <summary>
    /// Where a whole file is missing, everything would be refused for that; only the file is told then.
    /// </summary>
    [Fact]
    public void What_only_lacks_a_file_that_cannot_be_read_is_not_listed()
    {
        using var room = new Darkroom();
        Directory.CreateDirectory(room.PathOf("csv"));
        room.Write("csv/items.csv", "name,kind\nCorvane Fen 80,film\n");
        room.Write("csv/deliveries.csv", "date,item,packs,price\n2025-03-01,fen80,1,155\n");
        var ran = room.Run("import", "all", room.PathOf("csv"));
        Assert.Equal(3, ran.Status);
        Assert.Contains("items.csv, line 1: found a header without item", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("deliveries.csv", ran.Error, StringComparison.Ordinal);
        Assert.Contains("1 row must be mended first\n", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_an_export_wrote_gives_the_same_ledger()
    {
        using var demo = Darkroom.WithDemoYear();
        using var room = new Darkroom();
        demo.Do("export", room.PathOf("export"));
        var ran = room.Run("import", "all", room.PathOf("export"));
        Assert.True(ran.Status == 0, ran.Error);
        Assert.Contains("is an export: its journal.jsonl holds all that was said", ran.Error, StringComparison.Ordinal);
        Assert.Equal(demo.Do("show", "costs", "--json"), room.Do("show", "costs", "--json"));
        Assert.StartsWith("0 entries added, ", room.Do("import", "all", room.PathOf("export")),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_of_an_export_say_what_is_to_be_named_instead()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("export", room.PathOf("export"));
        Refused("its readable part", room.PathOf("export/readable"), "name the export's own folder");
        room.Write("export/items.csv", Items);
        Refused("an export and a file of entries", room.PathOf("export"), "holds an export and items.csv too");
        File.Delete(room.PathOf("export/items.csv"));
        File.Delete(room.PathOf("export/journal.jsonl"));
        Refused("an export without its journal", room.PathOf("export"), "without its journal.jsonl");

        void Refused(string what, string folder, string sentence)
        {
            var ran = room.Run("import", "all", folder);
            Assert.True(ran.Status == 3 && ran.Error.ReplaceLineEndings(" ").Contains(sentence,
                StringComparison.Ordinal), $"{what}: {ran.Error}");
        }
    }
}
