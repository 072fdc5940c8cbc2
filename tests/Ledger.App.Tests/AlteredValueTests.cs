using Ledger.Storage.Files;
using Microsoft.Data.Sqlite;

namespace Ledger.App.Tests;

/// <summary>
/// A value that was altered behind the program's back, and can still be read, is the file's fault: whatever asks for it
/// answers, or ends with 4 and a sentence; never with a fault of the program, and never with a complaint about the
/// command line.
/// </summary>
public sealed class AlteredValueTests 
{
    private static readonly string[] _readings = ["today", "costs", "reorder", "baths"];
    private static readonly object[] _numbers = [long.MaxValue, -5L, 4_000_000_000_000_000L, long.MinValue];
    private static readonly object[] _texts = ["xyz", "", "9999-12-31", "99999999999999999999"];

    private static readonly Lazy<byte[]> _unguarded = new(MakeUnguarded);

    /// <summary>A third of the columns, each with the next of the values.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void No_altered_value_ends_a_reading_as_a_fault_or_as_a_wrong_command_line(int third)
    {
        var columns = Columns().Where((_, i) => i % 3 == third).ToList();
        Assert.True(columns.Count > 50, $"only {columns.Count} columns were found");
        foreach (var ((table, column, isNumber), i) in columns.Select((column, i) => (column, i)))
        {
            var value = (isNumber ? _numbers : _texts)[i % 4];
            using var room = Unguarded();
            foreach (var reading in Alter(room, table, column, value) ? _readings : [])
            {
                var ran = room.Run("show", reading, "--json");
                Assert.True(
                    ran.Status is not (ExitStatus.Fault or ExitStatus.WrongCommandLine),
                    $"{table}.{column} = {value}: show {reading} ended with {ran.Status}: {ran.Error}");
            }
        }
    }

    [Fact]
    public void What_the_file_holds_and_gives_no_figure_is_said_of_the_file_and_what_the_user_typed_is_not()
    {
        using var room = Darkroom.WithDemoYear();
        using var ledger = LedgerFile.Open(room.Ledger, room.Clock);
        foreach (var fault in new Exception[] { new OverflowException(), new ArgumentOutOfRangeException(),
            new KeyNotFoundException() })
        {
            var said = Assert.Throws<LedgerFileException>(() => ledger.Read<int>(() => throw fault));
            Assert.Contains(room.Ledger, said.Message, StringComparison.Ordinal);
            Assert.Contains("trayledger check", said.Message, StringComparison.Ordinal);
            Assert.Same(fault, said.InnerException);
        }

        Assert.Throws<FormatException>(() => ledger.Read<int>(() => throw new FormatException("typed")));
    }

    private static List<(string Table, string Column, bool IsNumber)> Columns()
    {
        using var room = Darkroom.WithDemoYear();
        using var connection = Open(room);
        using var command = connection.CreateCommand();
        command.CommandText = """
            SELECT m.name, c.name, c.type LIKE '%INT%' FROM sqlite_schema m, pragma_table_info(m.name) c
            WHERE m.type = 'table' AND m.name NOT LIKE 'sqlite%' ORDER BY m.name, c.cid
            """;
        using var rows = command.ExecuteReader();
        var found = new List<(string, string, bool)>();
        while (rows.Read())
            found.Add((rows.GetString(0), rows.GetString(1), rows.GetBoolean(2)));
        return found;
    }

    /// <summary>Alters the last row, past every check; false where there is none or its key forbids it.</summary>
    private static bool Alter(Darkroom room, string table, string column, object value)
    {
        using var connection = Open(room);
        Run(connection, "PRAGMA ignore_check_constraints = ON");
        try
        {
            return Run(connection,
                $"UPDATE \"{table}\" SET \"{column}\" = $value WHERE rowid = (SELECT max(rowid) FROM \""
                    + $"{table}\")", value) == 1;
        }
        catch (SqliteException)
        {
            return false;
        }
    }

    /// <summary>The demo year without the guards of its tables.</summary>
    private static Darkroom Unguarded()
    {
        var room = Darkroom.WithDemoYear();
        File.WriteAllBytes(room.Ledger, _unguarded.Value);
        return room;
    }

    private static byte[] MakeUnguarded()
    {
        using var room = Darkroom.WithDemoYear();
        using (var connection = Open(room))
        {
            Run(connection, "BEGIN");
            foreach (var guard in Texts(connection, "SELECT name FROM sqlite_schema WHERE type = 'trigger'"))
                Run(connection, $"DROP TRIGGER \"{guard}\"");
            Run(connection, "COMMIT");
        }

        return File.ReadAllBytes(room.Ledger);
    }

    private static SqliteConnection Open(Darkroom room)
    {
        var connection = new SqliteConnection($"Data Source={room.Ledger};Pooling=False;Foreign Keys=False");
        connection.Open();
        return connection;
    }

    private static List<string> Texts(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // names that the file itself holds
        command.CommandText = sql;
#pragma warning restore CA2100
        using var rows = command.ExecuteReader();
        var found = new List<string>();
        while (rows.Read())
            found.Add(rows.GetString(0));
        return found;
    }

    private static int Run(SqliteConnection connection, string sql, object? value = null)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // names that the file itself holds
        command.CommandText = sql;
#pragma warning restore CA2100
        if (value is not null)
            command.Parameters.AddWithValue("$value", value);
        return command.ExecuteNonQuery();
    }
}
