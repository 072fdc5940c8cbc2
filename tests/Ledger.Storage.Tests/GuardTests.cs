namespace Ledger.Storage.Tests;

/// <summary>
/// Only the program changes a ledger; another program, or a shell, is refused whatever table it tries.
/// </summary>
public sealed class GuardTests : IDisposable
{
    private const string Function = "only_trayledger_writes_here";
    private readonly TemporaryLedger _file = new();

    public GuardTests()
    {
        Some.Stock(_file);
        _file.Accept(Some.Session());
        _file.Accept(Some.Delivery("pan"));
    }

    public void Dispose() => _file.Dispose();

    /// <summary>
    /// Rows are there in many tables, and every table is tried: what is empty now is refused as well.
    /// </summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void No_table_can_be_changed_from_outside(bool hasTheFunction)
    {
        using var shell = Shell(hasTheFunction);
        var tables = shell.Texts(
            "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%' AND name <> "
                + "'SchemaVersions'");
        Assert.True(tables.Count > 50);
        Assert.Contains("balance", tables);
        foreach (var table in tables)
        {
            var column = shell.Texts($"SELECT name FROM pragma_table_info('{table}') LIMIT 1")[0];
            var isEmpty = shell.Texts($"SELECT count(*) FROM \"{table}\"")[0] == "0";
            foreach (var sql in new[]
            {
                $"UPDATE \"{table}\" SET \"{column}\" = \"{column}\"", $"DELETE FROM \"{table}\"",
                $"INSERT OR REPLACE INTO \"{table}\" SELECT * FROM \"{table}\"",
                $"INSERT OR IGNORE INTO \"{table}\" SELECT * FROM \"{table}\"",
            })
                if (hasTheFunction && isEmpty)
                    shell.Run(sql);
                else
                    Assert.Contains(hasTheFunction ? $"only trayledger changes {table};" : Function,
                        Refusal(shell, sql), StringComparison.Ordinal);
        }

        Assert.Empty(_file.Ledger.Check(null, default).Problems);
    }

    /// <summary>The tables, not the guards: what the program itself may not write either.</summary>
    [Theory]
    [InlineData("UPDATE balance SET quantity = -1 WHERE place_id >= 100")]
    [InlineData("INSERT INTO movement (entry_id, lot_id, from_place, to_place, quantity, value) VALUES (1, 1, 100, 4, "
        + "1000000, 0)")]
    [InlineData(
        "INSERT INTO movement (entry_id, lot_id, from_place, to_place, quantity, value) VALUES (1, 1, 1, 100, 1.5, 0)")]
    [InlineData(
        "INSERT INTO entry (key, kind, date, recorded_at, summary, note) VALUES ('k', 'x', '2025-02-29', '', '', '')")]
    public void The_tables_refuse_what_cannot_be(string sql)
    {
        Assert.Throws<SqliteException>(() => _file.Run(sql));
        Assert.True(_file.Ledger.Check(null, default).Ok);
    }

    [Theory]
    [InlineData("DROP TRIGGER guard_lot_update",
        "the guard guard_lot_update, which keeps other programs from changing what the table lot holds, is missing")]
    [InlineData("DROP TRIGGER movement_moves", "the trigger movement_moves of the table movement is missing")]
    [InlineData("DROP INDEX lot_by_item", "the index lot_by_item of the table lot is missing")]
    [InlineData("CREATE INDEX mine ON lot (batch)",
        "the index mine of the table lot is not of a ledger: another program put it there")]
    [InlineData(
        "CREATE TRIGGER mine AFTER INSERT ON lot BEGIN SELECT 1; END",
        "the trigger mine of the table lot is not of a ledger: another program put it there")]
    [InlineData(
        "DROP TRIGGER movement_moves; CREATE TRIGGER movement_moves AFTER INSERT ON movement BEGIN SELECT 1; END",
        "the trigger movement_moves of the table movement was changed: it is not as this version makes it")]
    [InlineData("UPDATE balance SET quantity = quantity + 1 WHERE place_id = 100",
        "container pan/1 holds 22 sheets, its movements give 21 sheets")]
    [InlineData("UPDATE balance SET value = value + 1 WHERE place_id = 100",
        "container pan/1 is worth 136.500001, its movements give 136.500000")]
    [InlineData("DELETE FROM balance WHERE place_id = 1 AND lot_id = 2",
        "the total of \"supplier\" for syrup is 0 ml, its movements give -1000 ml")]
    [InlineData("UPDATE bath_total SET area = area + 6451600", "bath F1 counts ")]
    [InlineData("UPDATE bath_total SET weighted = 0", "bath F1 counts ")]
    [InlineData("UPDATE stock_month SET change = 0 WHERE month = '2025-03'",
        "the stock's value is kept as changed by 0.000000 in 2025-03, its movements give ")]
    public void WhatFollowsFromWhatWasRecordedIsNamedAndMended(string sql, string problem)
    {
        _file.Run(sql);
        var report = _file.Ledger.Check(null, default);
        Assert.StartsWith(problem, Assert.Single(report.Problems), StringComparison.Ordinal);
        Assert.Equal(report.Problems, report.Mendable);

        var mended = _file.Ledger.Mend(null, default);
        Assert.Equal(report.Problems, mended.Mended);
        Assert.True(mended.After.Ok);
        Assert.True(_file.Ledger.Check(null, default).Ok);
        using (var copy = new SqliteConnection($"Data Source={mended.Copy};Pooling=False"))
        {
            copy.Open();
            Assert.Equal("ok", copy.Texts("PRAGMA integrity_check")[0]);
        }

        _file.Accept(Some.Session("S02"));
        Assert.True(_file.Ledger.Check(null, default).Ok);
    }

    [Theory]
    [InlineData("CREATE TABLE mine (x)", "the table mine is not of a ledger")]
    [InlineData("ALTER TABLE lot ADD COLUMN mine TEXT", "the table lot was changed")]
    [InlineData("UPDATE lot SET price = price + 1 WHERE id = 1",
        "lot 1 of pan cost 325.000000, its price, discount, shipping and duty give 325.000002")]
    [InlineData("UPDATE lot SET packs = '3' WHERE id = 1",
        "lot 1 of pan cost 325.000000, its price, discount, shipping and duty give 487.500000")]
    [InlineData("UPDATE container SET item_id = 2 WHERE place_id = 100",
        "container pan/1 is kept as syrup, its lot is of pan")]
    [InlineData("UPDATE process_step SET minutes = '9' WHERE number = 2",
        "the steps of process tray are not those of its version 1")]
    public void What_was_recorded_is_named_and_not_mended(string sql, string problem)
    {
        _file.Run(sql);
        var report = _file.Ledger.Check(null, default);
        Assert.Contains(report.Problems, found => found.StartsWith(problem, StringComparison.Ordinal));
        Assert.Empty(report.Mendable);
        var mended = _file.Ledger.Mend(null, default);
        Assert.Null(mended.Copy);
        Assert.Equal(report.Problems, mended.After.Problems);
    }

    [Fact]
    public void What_cannot_be_derived_is_left_as_it_was()
    {
        _file.Run(
            "INSERT INTO movement (entry_id, lot_id, from_place, to_place, quantity, value) VALUES (1, 1, 4, 101, 5, "
                + "0)");
        _file.Run("UPDATE movement SET quantity = 1000 WHERE from_place = 100");
        var report = _file.Ledger.Check(null, default);
        Assert.NotEmpty(report.Mendable);
        Assert.NotEmpty(_file.Ledger.Mend(null, default).After.Problems);
        Assert.Equal(report.Problems, _file.Ledger.Check(null, default).Problems);
    }

    private SqliteConnection Shell(bool hasTheFunction)
    {
        var connection = new SqliteConnection($"Data Source={_file.FilePath};Pooling=False;Foreign Keys=True");
        connection.Open();
        if (hasTheFunction)
            connection.CreateFunction(Function, () => 0L);
        return connection;
    }

    private static string Refusal(SqliteConnection shell, string sql) =>
        Assert.Throws<SqliteException>(() => shell.Run(sql)).Message;
}
