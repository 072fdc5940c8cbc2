namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// What a form makes of a field: whether Up and Down turn through choices, days or figures, or it is ticked.
/// </summary>
public enum Shape
{
    /// <summary>Any text.</summary>
    Text,

    /// <summary>One of several words.</summary>
    Choice,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A day.</summary>
    Date,

    /// <summary>Yes or no.</summary>
    Tick,
}

/// <summary>Reads a text, seeing the fields that were read before it.</summary>
public delegate Parsed<T> Reader<T>(string text, FieldValues read, ReadingTerms terms);

/// <summary>How one sort of value is read and written, by every door alike.</summary>
public abstract class Notation
{
    /// <summary>What a form makes of it.</summary>
    public Shape Shape { get; init; }

    /// <summary>What stands for a value in the help of a command: DATE, ML.</summary>
    public required string Placeholder { get; init; }

    /// <summary>The words that are accepted; empty where anything can be written.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>Whether a unit may stand behind its number.</summary>
    public bool HasUnit { get; init; }

    /// <summary>What stands between the names of a list; null where the value is no list.</summary>
    public string? Divider { get; init; }

    /// <summary>Reads a value into a box, or says what is accepted.</summary>
    internal abstract Parsed<object> ReadBoxed(string text, FieldValues read, ReadingTerms terms);

    /// <summary>Writes a boxed value.</summary>
    internal abstract string WriteBoxed(object value, ReadingTerms terms);
}

/// <summary>How values of a type are read and written.</summary>
/// <typeparam name="T">The type.</typeparam>
/// <param name="read">Reads one.</param>
/// <param name="write">Writes one so that it is read as the same value.</param>
public sealed class Notation<T>(Reader<T> read, Func<T, ReadingTerms, string> write) : Notation
    where T : notnull
{
    /// <summary>Reads a value, or says what is accepted.</summary>
    public Parsed<T> Read(string text, FieldValues before, ReadingTerms terms) => read(text, before, terms);

    /// <summary>Writes a value.</summary>
    public string Write(T value, ReadingTerms terms) => write(value, terms);

    internal override Parsed<object> ReadBoxed(string text, FieldValues before, ReadingTerms terms)
    {
        var parsed = read(text, before, terms);
        return new(parsed.IsRead, parsed.Value!, parsed.Accepted);
    }

    internal override string WriteBoxed(object value, ReadingTerms terms) => write((T)value, terms);
}
