namespace Ledger.Core.Journal;

/// <summary>
/// The ledger cannot be read or written now. The message is a sentence that says what, where and what to do.
/// </summary>
public class LedgerUnavailableException : Exception
{
    /// <summary>A ledger that cannot be used.</summary>
    /// <param name="message">The sentence.</param>
    /// <param name="cause">What went wrong underneath.</param>
    public LedgerUnavailableException(string message, Exception? cause = null)
        : base(message, cause)
    {
    }
}
