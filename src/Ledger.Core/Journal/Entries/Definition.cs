namespace Ledger.Core.Journal.Entries;

/// <summary>Something is defined: a setting, a format, an item, a process, a holder.</summary>
public abstract record Definition : Entry
{
    /// <summary>
    /// Whether it has effect for all time, in place of what was defined before it was recorded; otherwise it has effect
    /// from <see cref="Entry.Date"/> on.
    /// </summary>
    public bool IsForAlways { get; init; }
}
