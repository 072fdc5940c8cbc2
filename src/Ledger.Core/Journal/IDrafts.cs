namespace Ledger.Core.Journal;

/// <summary>
/// What was typed into forms and not saved yet. It is kept beside the journal, and no reading sees it.
/// </summary>
public interface IDrafts
{
    /// <summary>What is kept of a form; null for nothing.</summary>
    /// <param name="form">The form and what it is about.</param>
    string? Draft(string form);

    /// <summary>Keeps what stands in a form, in place of what was kept of it.</summary>
    /// <param name="form">The form and what it is about.</param>
    /// <param name="text">What stands in it, as JSON; null when nothing is to be kept any more.</param>
    /// <exception cref="LedgerUnavailableException">The ledger cannot be written to.</exception>
    void Keep(string form, string? text);
}
