namespace Ledger.Storage.Files;

/// <summary>
/// The file cannot be used. The message is a sentence that says what is wrong, with which file, and what to do.
/// </summary>
public sealed class LedgerFileException : Core.Journal.LedgerUnavailableException
{
    /// <summary>A file that cannot be used.</summary>
    /// <param name="message">The sentence.</param>
    /// <param name="cause">What went wrong underneath.</param>
    public LedgerFileException(string message, Exception? cause = null)
        : base(message, cause)
    {
    }
}
