namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// What a door was given for an entry: a text by field, as it was typed or stands in its cell. Absent and empty are the
/// same.
/// </summary>
public sealed class EntryText
{
    private readonly Dictionary<string, string> _texts = [];

    /// <summary>The lines of an entry that has lines, each by field.</summary>
    public IList<EntryText> Lines { get; } = [];

    /// <summary>The entry's key; where the door sets none, the reference is it.</summary>
    public string Key { get; set; } = "";

    /// <summary>The text of a field; empty when nothing was given.</summary>
    public string this[Field field]
    {
        get => _texts.GetValueOrDefault(field.Name, "");
        set => _texts[field.Name] = value;
    }

    /// <summary>The text of a field by its name.</summary>
    public string this[string name]
    {
        get => _texts.GetValueOrDefault(name, "");
        set => _texts[name] = value;
    }
}
