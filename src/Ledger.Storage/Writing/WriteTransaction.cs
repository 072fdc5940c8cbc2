using Ledger.Storage.Files;
using Microsoft.Data.Sqlite;

namespace Ledger.Storage.Writing;

/// <summary>
/// An immediate transaction: the only writer from its beginning on, so that what the rules were decided on cannot change under them.
/// It is plain SQL because Dapper's commands would each have to be handed a transaction object otherwise.
/// </summary>
internal sealed class WriteTransaction : IDisposable
{
    private readonly SqliteConnection _connection;
    private bool _isOpen = true;

    public WriteTransaction(SqliteConnection connection)
    {
        _connection = connection;
        FileOpener.LogAhead(connection);
        Run("BEGIN IMMEDIATE");
    }

    public void Commit()
    {
        Run("COMMIT");
        _isOpen = false;
        Checkpoint.AsFarAsReadersAllow(_connection);
    }

    /// <summary>Rolls back unless it was committed. A full disk may have rolled it back already.</summary>
    public void Dispose()
    {
        if (_isOpen && SQLitePCL.raw.sqlite3_get_autocommit(_connection.Handle!) == 0)
            Run("ROLLBACK");
    }

    private void Run(string sql)
    {
        using var command = _connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
