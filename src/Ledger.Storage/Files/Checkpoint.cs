namespace Ledger.Storage.Files;

/// <summary>
/// Brings what stands in the log into the file itself, so that a plain copy of the file holds everything. Readers of an
/// earlier state are not waited for; what they hold back is brought over after a later entry or when the file is
/// closed.
/// </summary>
internal static class Checkpoint
{
    /// <summary>
    /// After a commit. What was committed stands in the log whatever happens here, so that a full disk is no failure of
    /// the entry.
    /// </summary>
    public static void AsFarAsReadersAllow(SqliteConnection connection)
    {
        try
        {
            connection.Run("PRAGMA wal_checkpoint(PASSIVE)");
        }
        catch (SqliteException)
        {
            // The entry is kept all the same; the next one tries again.
        }
    }
}
