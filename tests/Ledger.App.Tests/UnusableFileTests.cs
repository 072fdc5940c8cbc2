using Microsoft.Data.Sqlite;

namespace Ledger.App.Tests;

/// <summary>A file that cannot be used ends every command with 4 and a sentence about that file.</summary>
public class UnusableFileTests
{
    private static readonly string[] _delivery = ["record", "delivery", "syrup", "1", "--price", "44"];

    [Fact]
    public void A_file_that_is_no_database()
    {
        using var room = new Darkroom();
        room.Write("ledger.db", string.Concat(Enumerable.Repeat("a letter to a friend\n", 200)));
        AssertUnusable(room, "show", "today");
        AssertUnusable(room, _delivery);
    }

    [Fact]
    public void A_database_of_another_program()
    {
        using var room = new Darkroom();
        Sql(room.Ledger, "CREATE TABLE recipe (name TEXT)");
        AssertUnusable(room, "show", "shelf");
    }

    [Fact]
    public void A_damaged_ledger()
    {
        using var room = Darkroom.WithDemoYear();
        var bytes = File.ReadAllBytes(room.Ledger);
        bytes.AsSpan(4096, bytes.Length - 4096 * 2).Fill(0x5A);
        File.WriteAllBytes(room.Ledger, bytes);
        AssertUnusable(room, "show", "shelf");
        AssertUnusable(room, "check");
    }

    [Fact]
    public void A_ledger_of_a_newer_version()
    {
        using var room = Darkroom.WithDemoYear();
        Sql(room.Ledger,
            "INSERT INTO SchemaVersions (ScriptName, Applied) VALUES ('migrations/9999_later.sql', '2030-01-01')");
        AssertUnusable(room, "show", "today");
    }

    [Fact]
    public void A_ledger_that_another_program_is_writing_to()
    {
        using var room = Darkroom.WithDemoYear();
        using var other = Open(room.Ledger);
        using var command = other.CreateCommand();
        command.CommandText = "BEGIN IMMEDIATE";
        command.ExecuteNonQuery();
        Assert.Contains("locked by another program", AssertUnusable(room, _delivery), StringComparison.Ordinal);
        Assert.Equal(0, room.Run("show", "today").Status);
    }

    [Fact]
    public void A_ledger_that_may_only_be_read()
    {
        using var room = Darkroom.WithDemoYear();
        File.SetAttributes(room.Ledger, FileAttributes.ReadOnly);
        AssertUnusable(room, _delivery);
        AssertUnusable(room, "import", "items",
            room.Write("items.csv", "item,name,kind,format,pack\nnew1,New film,film,8x10,25\n"));
    }

    [Fact]
    public void A_folder_in_the_place_of_the_ledger()
    {
        using var room = new Darkroom();
        Directory.CreateDirectory(room.Ledger);
        AssertUnusable(room, "show", "today");
    }

    [Fact]
    public void A_restore_from_no_backup()
    {
        using var room = Darkroom.WithDemoYear();
        AssertUnusable(room, "backup", "--restore", room.PathOf("nowhere.db"));
        AssertUnusable(room, "backup", "--restore", room.Write("letter.db", "a letter to a friend"));
        Assert.Equal(0, room.Run("check").Status);
    }

    private static string AssertUnusable(Darkroom room, params string[] args)
    {
        var ran = room.Run(args);
        Assert.True(ran.Status == 4, $"ended with {ran.Status}: {ran.Out}{ran.Error}");
        Assert.Contains(room.PathOf(""), ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
        Assert.Single(ran.Error.TrimEnd().Split('\n'));
        return ran.Error;
    }

    private static void Sql(string path, string sql)
    {
        using var connection = Open(path);
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    private static SqliteConnection Open(string path)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path,
            Pooling = false }.ToString());
        connection.Open();
        return connection;
    }
}
