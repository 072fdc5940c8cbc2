namespace Ledger.App.Commands.Record;

/// <summary>
/// What a command does with the definition of something that is known already: what is not said stays as it is, and
/// "none" takes it away.
/// </summary>
internal static class Definition
{
    private const string None = "none";

    /// <summary>
    /// Fills in what is known of the thing that is defined again; nothing for other kinds of entries.
    /// </summary>
    public static void Complete(EntryKind kind, EntryText text, Holdings holdings, ReadingTerms terms)
    {
        if (kind.IsDated || kind.NamedBy is null)
            return;
        foreach (var field in kind.Fields)
            if (text[field].Length == 0)
                text[field] = field.Offer?.Invoke(EntryReading.Read(kind, text, terms).Values, holdings) ?? "";
        foreach (var field in kind.Fields.Where(field => !field.IsNeeded
            && text[field].Equals(None, StringComparison.OrdinalIgnoreCase)))
            text[field] = "";
    }
}
