using Ledger.Storage.Files;
using Ledger.Storage.Reading;

namespace Ledger.Storage.Writing;

/// <summary>
/// An immediate transaction: the only writer from its beginning on, so that what the rules were decided on cannot
/// change under them. It is plain SQL because Dapper's commands would each have to be handed a transaction object
/// otherwise.
/// </summary>
internal sealed class WriteTransaction : IDisposable
{
    private readonly SqliteConnection _connection;
    private bool _isOpen = true;

    public WriteTransaction(SqliteConnection connection)
    {
        _connection = connection;
        FileOpener.LogAhead(connection);
        _connection.Run("BEGIN IMMEDIATE");
        Inside = new(connection);
    }

    /// <summary>The file as it is inside the transaction.</summary>
    public Snapshot Inside { get; }

    /// <summary>Keeps what was written.</summary>
    public void Commit()
    {
        _connection.Run("COMMIT");
        _isOpen = false;
        Checkpoint.AsFarAsReadersAllow(_connection);
    }

    /// <summary>Rolls back unless it was committed. A full disk may have rolled it back already.</summary>
    public void Dispose()
    {
        Inside.Dispose();
        if (_isOpen && SQLitePCL.raw.sqlite3_get_autocommit(_connection.Handle!) == 0)
            _connection.Run("ROLLBACK");
    }
}
