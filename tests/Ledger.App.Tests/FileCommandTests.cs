namespace Ledger.App.Tests;

public class FileCommandTests
{
    private static readonly int Year = DemoYear.Read(DemoYear.LastDay).Count;

    [Fact]
    public void An_export_holds_every_table_and_is_replaced_only_on_demand()
    {
        using var room = Darkroom.WithDemoYear();
        var folder = room.PathOf("export");
        Assert.Contains("tables exported to", room.Do("export", folder), StringComparison.Ordinal);
        Assert.Equal(Year + 1, File.ReadLines(Path.Combine(folder, "entry.csv")).Count(line => line.Length > 0));
        Assert.StartsWith("id,", File.ReadLines(Path.Combine(folder, "lot.csv")).First(), StringComparison.Ordinal);

        File.WriteAllText(Path.Combine(folder, "entry.csv"), "mine");
        Assert.Equal(3, room.Run("export", folder).Status);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(folder, "entry.csv")));
        room.Do("export", folder, "--replace");
        Assert.NotEqual("mine", File.ReadAllText(Path.Combine(folder, "entry.csv")));
        Assert.Empty(Directory.EnumerateFiles(folder, "*.part"));
    }

    [Fact]
    public void An_export_holds_readable_tables_with_a_code_book_that_an_import_does_not_read()
    {
        using var room = Darkroom.WithDemoYear();
        var folder = room.PathOf("export");
        room.Do("export", folder);
        var readable = Path.Combine(folder, "readable");
        string[] tables = ["baths", "costs", "journal", "sessions", "sheets", "shelf"];
        Assert.Equal(
            tables.Append("code-book").Order(StringComparer.Ordinal),
            Directory.EnumerateFiles(readable).Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal));
        var book = File.ReadLines(Path.Combine(readable, "code-book.csv")).Skip(1)
            .Select(line => string.Join('.', line.Split(',').Take(2))).ToList();
        var columns =
            tables.SelectMany(table => File.ReadLines(Path.Combine(readable, $"{table}.csv")).First().Split(',')
                .Select(column => $"{table}.{column}").Prepend($"{table}."));
        Assert.Equal(columns.Order(StringComparer.Ordinal), book.Order(StringComparer.Ordinal));
        Assert.Contains(File.ReadLines(Path.Combine(readable, "sessions.csv")),
            line => line.StartsWith("S01,", StringComparison.Ordinal)
                && line.Contains(",25,4,fen80 4,0,320,24.8,2.435,EUR", StringComparison.Ordinal));

        // Two of these have the names of files that can be imported: not read with their folder's own, and refused
        // where they are named.
        var notes = room.PathOf("notes");
        Directory.CreateDirectory(notes);
        Directory.Move(readable, Path.Combine(notes, "readable"));
        File.WriteAllText(Path.Combine(notes, "settings.csv"), room.Do("import", "settings", "--template"));
        Assert.Equal("nothing was written: this was a dry run\n", room.Run("import", "all", notes, "--dry-run").Error);
        foreach (var kind in new[] { "baths", "sessions" })
        {
            var refused = room.Run("import", kind, Path.Combine(notes, "readable", $"{kind}.csv"));
            Assert.Equal(3, refused.Status);
            Assert.Contains("found a header without", refused.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_check_names_what_was_changed_and_mends_what_follows_from_what_was_recorded()
    {
        using var room = Darkroom.WithDemoYear();
        Assert.Equal("", room.Run("check", "--mend").Error);
        Change(room, """
            DROP TRIGGER guard_balance_update;
            UPDATE balance SET quantity = quantity + 1
            WHERE place_id = (SELECT min(c.place_id) FROM container c JOIN item i ON i.id = c.item_id
                JOIN balance b USING (place_id) WHERE i.kind = 'film')
            """);
        var ran = room.Run("check");
        Assert.Equal(4, ran.Status);
        Assert.Contains("the guard guard_balance_update, which keeps other programs from changing",
            ran.Out, StringComparison.Ordinal);
        Assert.Matches("(?m)^container .*/.* holds [0-9]+ sheets?, its movements give [0-9]+ sheets?$", ran.Out);
        Assert.Contains("trayledger check --mend", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("--restore", ran.Error, StringComparison.Ordinal);
        Assert.Equal(2, room.Run("check", "--json").Json.GetProperty("mendable").GetArrayLength());

        ran = room.Run("check", "--mend");
        Assert.Equal(0, ran.Status);
        Assert.Equal(2, ran.Out.Split('\n').Count(line => line.StartsWith("mended: ", StringComparison.Ordinal)));
        var copy = ran.Error.TrimEnd().Split(' ')[^1];
        Assert.Equal(4, room.RunAnywhere("--file", copy, "check").Status);
        Assert.Contains("nothing is wrong", room.Do("check"), StringComparison.Ordinal);
    }

    private static void Change(Darkroom room, string sql)
    {
        using var connection = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={room.Ledger};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    [Theory]
    [InlineData("calendar", "ledger.db", "--replace")]
    [InlineData("calendar", "ledger.db")]
    [InlineData("calendar", "link.ics", "--replace")]
    [InlineData("calendar", "here/ledger.db", "--replace")]
    [InlineData("print", "wall-card", "--replace", "--html", "ledger.db")]
    [InlineData("print", "wall-card", "--html", "link.ics")]
    [InlineData("backup", "ledger.db")]
    public void No_output_goes_to_the_ledger_itself(params string[] line)
    {
        using var room = Darkroom.WithDemoYear();
        File.CreateSymbolicLink(room.PathOf("link.ics"), room.Ledger);
        Directory.CreateSymbolicLink(room.PathOf("here"), Path.GetDirectoryName(room.Ledger)!);
        var before = File.ReadAllBytes(room.Ledger);
        var ran = room.Run(
            [.. line.Select(word => word.Contains('.', StringComparison.Ordinal) ? room.PathOf(word) : word)]);
        Directory.Delete(room.PathOf("here"));
        Assert.Equal((3, ""), (ran.Status, ran.Out));
        Assert.EndsWith(" is the ledger itself; name another file\n", ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(room.Ledger));
    }

    [Fact]
    public void Nor_does_it_go_to_a_file_beside_the_ledger()
    {
        using var room = Darkroom.WithDemoYear();
        foreach (var ending in new[] { "-wal", "-shm" })
            Assert.EndsWith(
                " is a part of the ledger itself; name another file\n",
                room.Run("calendar", room.Ledger + ending, "--replace").Error, StringComparison.Ordinal);

        var table = room.PathOf("out/lot.csv");
        Directory.CreateDirectory(room.PathOf("out"));
        File.Copy(room.Ledger, table);
        Assert.Equal(3, room.RunAnywhere("--file", table, "export", room.PathOf("out"), "--replace").Status);
        Assert.Equal(0, room.RunAnywhere("--file", table, "check").Status);
        Assert.Single(Directory.EnumerateFiles(room.PathOf("out"), "*.csv"));
    }

    [Theory]
    [InlineData("calendar", "dates.ics")]
    [InlineData("print", "wall-card", "--html", "dates.ics")]
    [InlineData("backup", "dates.ics")]
    public void What_is_unfinished_has_a_name_of_its_own_and_follows_no_link(params string[] line)
    {
        using var room = Darkroom.WithDemoYear();
        var (mine, link) = (room.Write("mine.txt", "mine"), room.PathOf("dates.ics.part"));
        File.CreateSymbolicLink(link, mine);
        room.Do([.. line.Select(word => word.Contains('.', StringComparison.Ordinal) ? room.PathOf(word) : word)]);
        Assert.Equal("mine", File.ReadAllText(mine));
        Assert.Equal(mine, new FileInfo(link).LinkTarget);
        Assert.Equal(["dates.ics", "dates.ics.part", "ledger.db", "mine.txt"], room.Names());
    }

    [Fact]
    [System.Runtime.Versioning.UnsupportedOSPlatform("windows")]
    public void What_leaves_a_private_ledger_is_as_private()
    {
        const UnixFileMode mine = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        using var room = Darkroom.WithDemoYear();
        File.SetUnixFileMode(room.Ledger, mine);
        File.CreateSymbolicLink(room.PathOf("link.db"), room.Ledger);
        room.RunAnywhere("--file", room.PathOf("link.db"), "backup", room.PathOf("copy.db"));
        room.Do("calendar", room.PathOf("dates.ics"));
        room.Do("export", room.PathOf("out"));
        var old = room.Do("backup", "--restore", room.PathOf("copy.db")).TrimEnd().Split(' ')[^1];
        Assert.All(
            [room.Ledger, old, room.PathOf("copy.db"), room.PathOf("dates.ics"), room.PathOf("out/lot.csv")],
            file => Assert.Equal(mine, File.GetUnixFileMode(file)));
    }

    [Fact]
    public void An_export_holds_the_ledgers_own_tables_only()
    {
        using var room = Darkroom.WithDemoYear();
        using (var other = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={room.Ledger};Pooling=False"))
        {
            other.Open();
            using var command = other.CreateCommand();
            command.CommandText = "CREATE TABLE \"../escaped\" (x); CREATE TABLE recipe (x)";
            command.ExecuteNonQuery();
        }

        room.Do("export", room.PathOf("out"));
        Assert.False(File.Exists(room.PathOf("escaped.csv")));
        Assert.False(File.Exists(room.PathOf("out/recipe.csv")));
        Assert.True(File.Exists(room.PathOf("out/entry.csv")));
    }

    [Fact]
    public void A_ledger_that_may_only_be_read_is_shown_checked_and_exported_and_nothing_is_left_beside_it()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("record", "discard", "practice", "1", "--reason", "bent");
        var shelf = room.Do("show", "shelf");
        File.SetAttributes(room.Ledger, FileAttributes.ReadOnly);
        var before = File.ReadAllBytes(room.Ledger);
        Assert.Equal(shelf, room.Do("show", "shelf"));
        Assert.Equal(Year + 1, room.Run("check", "--json").Json.GetProperty("entries").GetInt32());
        room.Do("export", room.PathOf("out"));
        room.Do("backup", room.PathOf("copy.db"));
        Assert.Equal(4, room.Run("backup", "--restore", room.PathOf("copy.db")).Status);
        Assert.Equal(before, File.ReadAllBytes(room.Ledger));
        Assert.Equal(["copy.db", "ledger.db"], room.Names());
    }

    [Fact]
    public void A_calendar_holds_the_plans_and_cancels_what_no_longer_holds()
    {
        using var room = Darkroom.WithDemoYear();
        var file = room.PathOf("dates.ics");
        Assert.DoesNotContain("cancelled", room.Do("calendar", file), StringComparison.Ordinal);
        var first = File.ReadAllText(file);
        Assert.Contains("SUMMARY:Session tarn: 7 sheets", first, StringComparison.Ordinal);
        Assert.Contains("SUMMARY:Trip spring-coast: 16 sheets", first, StringComparison.Ordinal);
        room.Do("record", "plan-ending", "tarn", "--reason", "given up");
        Assert.Contains("1 cancelled that no longer hold; some calendars ignore that", room.Do("calendar", file),
            StringComparison.Ordinal);
        var second = File.ReadAllText(file).Split("BEGIN:VEVENT");
        var gone = Assert.Single(second, one => one.Contains("STATUS:CANCELLED", StringComparison.Ordinal));
        Assert.Contains("UID:session.tarn@", gone, StringComparison.Ordinal);
    }

    [Fact]
    public void A_calendar_replaces_only_a_calendar_unless_it_is_told_to()
    {
        using var room = Darkroom.WithDemoYear();
        var note = room.Write("note.txt", "mine");
        var refused = room.Run("calendar", note);
        Assert.Equal((3, $"{note} is not a calendar; name another file, or say --replace\n"),
            (refused.Status, refused.Error));
        Assert.Equal("mine", File.ReadAllText(note));
        room.Do("calendar", note, "--replace");
        room.Do("calendar", note);
        Assert.StartsWith("BEGIN:VCALENDAR", File.ReadAllText(note), StringComparison.Ordinal);
    }

    [Fact]
    public void A_backup_is_put_back_and_the_old_file_is_kept()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("backup", room.PathOf("copy.db"));
        room.Do("record", "discard", "practice", "1", "--reason", "bent");
        var text = room.Do("backup", "--restore", room.PathOf("copy.db"));
        Assert.Equal(Year, room.Run("check", "--json").Json.GetProperty("entries").GetInt32());
        var old = text.TrimEnd().Split(' ')[^1];
        Assert.Equal(Year + 1,
            room.RunAnywhere("--file", old, "check", "--json").Json.GetProperty("entries").GetInt32());
    }

    [Fact]
    public void A_backup_makes_a_ledger_where_there_was_none()
    {
        using var room = Darkroom.WithDemoYear();
        room.Do("backup", room.PathOf("copy.db"));
        var elsewhere = room.PathOf("new/folder/ledger.db");
        Assert.Equal(0, room.RunAnywhere("--file", elsewhere, "backup", "--restore", room.PathOf("copy.db")).Status);
        Assert.True(File.Exists(elsewhere));
    }

    [Fact]
    public void A_check_counts_in_the_singular_too()
    {
        using var room = new Darkroom();
        room.Do("record", "item", "pan", "--kind", "film", "--format", "8x10", "--pack", "25sheet");
        Assert.Contains(": 1 entry, 0 movements; ", room.Do("check"), StringComparison.Ordinal);
        room.Do("record", "delivery", "pan", "1");
        Assert.Contains(": 2 entries, 1 movement; ", room.Do("check"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_check_says_what_it_proved()
    {
        using var room = Darkroom.WithDemoYear();
        Assert.EndsWith("nothing is wrong\n", room.Do("check"), StringComparison.Ordinal);
        Assert.Empty(room.Run("check", "--json").Json.GetProperty("problems").EnumerateArray());
    }

    [Fact]
    public void The_demo_never_touches_a_ledger_that_is_there()
    {
        using var room = Darkroom.WithDemoYear();
        var before = File.ReadAllBytes(room.Ledger);
        Assert.Equal(3, room.Run("demo", "--no-ui").Status);
        Assert.Equal(3, room.RunAnywhere("demo", "--into", room.Ledger, "--no-ui").Status);
        Assert.Equal(before, File.ReadAllBytes(room.Ledger));
    }

    [Fact]
    public void The_demo_ends_today_whenever_that_is()
    {
        using var room = new Darkroom(new(2031, 3, 1));
        room.Do("demo", "--no-ui");
        Assert.Contains("bath F4 expired 2 days ago", room.Do("show", "today"), StringComparison.Ordinal);
        Assert.True(room.Run("check", "--json").Json.GetProperty("ok").GetBoolean());
    }

    [Fact]
    public void The_demo_opens_the_screens_on_a_new_file_of_its_own()
    {
        var screens = new RememberedScreens();
        using var room = new Darkroom { Screens = screens };
        var ran = room.RunAnywhere("demo", "--theme", "red");
        Assert.Equal(0, ran.Status);
        Assert.Equal("red", screens.Theme);
        Assert.StartsWith(Path.GetTempPath(), screens.Path, StringComparison.Ordinal);
        Assert.Contains(screens.Path!, ran.Out, StringComparison.Ordinal);
        Directory.Delete(Path.GetDirectoryName(screens.Path)!, recursive: true);
    }

    [Fact]
    public void An_interrupt_leaves_nothing_half_done()
    {
        using var room = Darkroom.WithDemoYear();
        room.Interrupt = new(canceled: true);
        var file = room.Write("items.csv", "item,name,kind,format,pack\nnew1,New film,film,8x10,25\n");
        foreach (var line in new[] { new[] { "import", "items", file }, ["export", room.PathOf("export")], ["check"] })
            Assert.Equal((130, "stopped; nothing of it was written\n"), (room.Run(line).Status, room.Run(line).Error));
        Assert.Equal(130, room.RunAnywhere("demo", "--into", room.PathOf("demo.db"), "--no-ui").Status);
        Assert.False(File.Exists(room.PathOf("demo.db")));
        Assert.Empty(Directory.EnumerateFiles(room.PathOf("export")));
        Assert.Equal(3, room.Run("show", "item", "new1").Status);
    }

    [Theory]
    [InlineData("bash", "complete -o default -F _trayledger trayledger")]
    [InlineData("zsh", "#compdef trayledger")]
    [InlineData("fish", "complete -c trayledger")]
    public void Each_shell_gets_its_completion(string shell, string line)
    {
        using var room = new Darkroom();
        Assert.Contains(line, room.Do("completion", shell), StringComparison.Ordinal);
    }

    private sealed class RememberedScreens : Wiring.IScreens
    {
        public string? Path { get; private set; }

        public string? Theme { get; private set; }

        public int Show(Storage.LedgerFile ledger, NodaTime.ZonedClock clock, string? theme)
        {
            (Path, Theme) = (ledger.Path, theme);
            return 0;
        }
    }
}
