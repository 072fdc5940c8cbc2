namespace Ledger.Storage.Tests;

/// <summary>A statement that is kept compiled answers as one that is compiled for each run.</summary>
public sealed class ReusingConnectionTests : IDisposable
{
    private const string Count = "SELECT n FROM t WHERE n >= @from ORDER BY n";
    private readonly string _folder = Directory.CreateTempSubdirectory("trayledger-").FullName;
    private readonly ReusingConnection _connection;

    public ReusingConnectionTests()
    {
        _connection = new($"Data Source={Path.Combine(_folder, "t.db")};Pooling=False");
        _connection.Open();
        PlainSql.Run(_connection, "PRAGMA journal_mode = WAL");
        PlainSql.Run(_connection, "CREATE TABLE t (n INTEGER NOT NULL); INSERT INTO t VALUES (1), (2), (3)");
    }

    [Fact]
    public void Each_run_has_its_own_values()
    {
        for (var from = 1; from <= 4; from++)
            Assert.Equal(Enumerable.Range(from, 4 - from), Numbers(from));
    }

    [Fact]
    public void A_text_may_be_run_while_its_rows_are_still_being_read()
    {
        Numbers(1);
        Numbers(1);
        using var outer = Reader(1);
        Assert.True(outer.Read());
        Assert.Equal([2, 3], Numbers(2));
        Assert.True(outer.Read());
        Assert.Equal(2, outer.GetInt32(0));
    }

    [Fact]
    public void A_change_of_the_schema_is_seen()
    {
        for (var i = 0; i < 3; i++)
            Assert.Equal(1, Columns());
        PlainSql.Run(_connection, "ALTER TABLE t ADD COLUMN m INTEGER");
        Assert.Equal(2, Columns());
    }

    [Fact]
    public void What_is_kept_does_not_hold_the_file()
    {
        for (var i = 0; i < 3; i++)
            PlainSql.Run(_connection, "INSERT INTO t VALUES (7)");
        _connection.Dispose();
        Assert.Equal(["t.db"], Directory.EnumerateFiles(_folder).Select(Path.GetFileName));
    }

    public void Dispose()
    {
        _connection.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private Microsoft.Data.Sqlite.SqliteDataReader Reader(int from)
    {
        var command = _connection.CreateCommand();
        command.CommandText = Count;
        command.Parameters.AddWithValue("@from", from);
        return command.ExecuteReader();
    }

    private List<int> Numbers(int from)
    {
        using var reader = Reader(from);
        var numbers = new List<int>();
        while (reader.Read())
            numbers.Add(reader.GetInt32(0));
        return numbers;
    }

    private int Columns()
    {
        using var command = _connection.CreateCommand();
        command.CommandText = "SELECT * FROM t";
        using var reader = command.ExecuteReader();
        return reader.FieldCount;
    }
}
