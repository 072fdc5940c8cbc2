using Ledger.Storage.Upkeep;

namespace Ledger.Storage;

/// <summary>What was typed into forms and not saved yet.</summary>
public sealed partial class LedgerFile
{
    /// <inheritdoc/>
    public string? Draft(string form) => Read(snapshot => new Drafts(snapshot.Connection).Find(form));

    /// <inheritdoc/>
    public void Keep(string form, string? text) => Write(transaction =>
    {
        new Drafts(_connection).Keep(form, text);
        transaction.Commit();
        return true;
    });
}
