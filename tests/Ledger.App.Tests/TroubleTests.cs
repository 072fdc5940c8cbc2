namespace Ledger.App.Tests;

/// <summary>Whatever goes wrong ends with a sentence of this program's own that says what is recorded.</summary>
public class TroubleTests
{
    [Fact]
    public void An_output_that_is_lost_says_which_entry_is_recorded()
    {
        using var room = Darkroom.WithDemoYear();
        room.Output = new LostOutput(hasReaderLeft: false);
        var ran = room.Run("record", "count", "fen80", "61", "--reason", "counted");
        Assert.Equal(4, ran.Status);
        Assert.Matches("^the output is gone; entry [0-9]+ is recorded\n$", ran.Error);
        room.Output = null;
        Assert.Contains("61", room.Do("show", "journal", "--last", "1"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_reader_that_left_is_told_only_of_what_was_recorded()
    {
        using var room = Darkroom.WithDemoYear();
        room.Output = new LostOutput(hasReaderLeft: true);
        Assert.Equal(new(141, "", ""), room.Run("show", "journal"));
        Assert.EndsWith("is recorded\n", room.Run("record", "count", "fen80", "61", "--reason", "counted").Error,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("import items {0}/none/items.csv", "its folder does not exist")]
    [InlineData("import items {0}/none.csv", "there is no such file")]
    [InlineData("import items {0}", "it is a folder")]
    [InlineData("print wall-card --html {0}/none/card.html", "its folder does not exist")]
    [InlineData("calendar {0}/none/days.ics", "its folder does not exist")]
    [InlineData("calendar {0}/ledger.db/days.ics", "")]
    [InlineData("export {0}/ledger.db/out", "")]
    [InlineData("backup {0}/none/copy.db", "")]
    [InlineData("backup {0}/ledger.db/copy.db", "")]
    public void A_file_that_cannot_be_used_is_told_in_our_own_words(string line, string why)
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run(
            [.. line.Split(' ')
                .Select(word => word.Replace("{0}", room.PathOf("").TrimEnd('/'), StringComparison.Ordinal))]);
        Assert.Equal(4, ran.Status);
        Assert.Contains(why, ran.Error, StringComparison.Ordinal);
        foreach (var foreign in new[] { "Could not", "Access to", "SQLite Error", "https://",
            "   at ", "Exception", "error " })
            Assert.DoesNotContain(foreign, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_an_older_file_or_a_cell_holds_is_shown_by_number()
    {
        using var room = Darkroom.WithDemoYear();
        using (var file = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={room.Ledger};Pooling=False"))
        {
            file.Open();
            using var command = file.CreateCommand();
            command.CommandText = """
                CREATE TEMP TABLE was AS SELECT name, sql FROM sqlite_master
                    WHERE type = 'trigger' AND tbl_name = 'entry';
                """;
            command.ExecuteNonQuery();
            command.CommandText = "SELECT group_concat('DROP TRIGGER ' || name, ';') FROM was";
            if (command.ExecuteScalar() is string drop)
            {
                command.CommandText = drop;
                command.ExecuteNonQuery();
            }

            command.CommandText =
                "UPDATE entry SET summary = 'x' || char(27) || ']52;c;AAAA' || char(7) || char(8238) || 'y'";
            Assert.True(command.ExecuteNonQuery() > 0);
        }

        var shown = room.Do("show", "journal");
        Assert.Contains(@"x\u001B]52;c;AAAA\u0007\u202Ey", shown, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001B', shown);
        var json = room.Do("show", "journal", "--json");
        Assert.DoesNotContain('\u202E', json);
        Assert.Contains("x\u001B]52;c;AAAA\u0007\u202Ey", Summary(json), StringComparison.Ordinal);

        var refused = room.Run("import", "items",
            room.Write("items.csv", "item,name,kind,format,pack\nnew1,New,film,\u001B[2J,25\n"));
        Assert.NotEqual(0, refused.Status);
        Assert.Contains(@"\u001B[2J", refused.Error, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001B', refused.Error);
    }

    [Fact]
    public void A_reason_that_steers_a_terminal_is_refused_with_its_place()
    {
        using var room = Darkroom.WithDemoYear();
        var ran = room.Run("record", "count", "fen80", "61", "--reason", "a\u001B]52;c;AAAA\u0007");
        Assert.Equal(3, ran.Status);
        Assert.Equal(
            "the reason holds a control character (U+001B) as its character 2; only text that can be seen is "
                + "kept\n", ran.Error);
    }

    private static string Summary(string json)
    {
        using var document = System.Text.Json.JsonDocument.Parse(json);
        return string.Concat(document.RootElement.GetProperty("entries").EnumerateArray()
            .Select(entry => entry.GetProperty("summary").GetString()));
    }

    private sealed class LostOutput(bool hasReaderLeft) : StringWriter
    {
        public override void Flush() => throw new OutputLostException("the output is gone", hasReaderLeft);
    }
}
