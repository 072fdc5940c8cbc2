using Ledger.Storage.Files;
using SQLitePCL;

namespace Ledger.Storage.Reading;

/// <summary>
/// One state of the file, whatever others write meanwhile: a deferred read transaction, started by the first look and
/// held until the end. Readers are given this and no connection, so none can read outside it.
/// </summary>
internal sealed class Snapshot(SqliteConnection connection) : IDisposable
{
    private bool _isOwn;
    private long? _version;

    /// <summary>The connection, with a transaction open on it: its own, or the writer's that it reads within.</summary>
    public SqliteConnection Connection
    {
        get
        {
            if (_version is null)
                Begin();
            return connection;
        }
    }

    /// <summary>A number that changes when another connection has written to the file.</summary>
    public long Version
    {
        get
        {
            if (_version is null)
                Begin();
            return _version!.Value;
        }
    }

    /// <summary>What tells one state of the file from another, what this connection has written included.</summary>
    public (long Version, long Changes) State => (Version, raw.sqlite3_total_changes(Connection.Handle));

    /// <summary>
    /// Lets the state go, so that the connection can write; what is read afterwards is the state of then.
    /// </summary>
    public void LetGo()
    {
        if (_isOwn && raw.sqlite3_get_autocommit(connection.Handle) == 0)
            connection.Run("ROLLBACK");
        (_isOwn, _version) = (false, null);
    }

    public void Dispose() => LetGo();

    /// <summary>It is the first look at the file that holds its state, not the word BEGIN.</summary>
    private void Begin()
    {
        if (raw.sqlite3_get_autocommit(connection.Handle) != 0)
        {
            connection.Run("BEGIN DEFERRED");
            _isOwn = true;
        }

        _version = connection.Number("PRAGMA data_version");
    }
}
