namespace Ledger.Core.Journal.Kinds;

/// <summary>The values of the fields of an entry, or of one of its lines, as far as they were said.</summary>
public sealed class FieldValues
{
    private readonly Dictionary<Field, object> _values = [];

    /// <summary>The lines of an entry that has lines; empty for others.</summary>
    public IReadOnlyList<object> Lines { get; internal set; } = [];

    /// <summary>The entry's key.</summary>
    public string Key => Find(CommonFields.Reference) ?? "";

    /// <summary>The day it happened.</summary>
    public LocalDate Date => Of(CommonFields.Date);

    /// <summary>The user's note; may be empty.</summary>
    public string Note => Find(CommonFields.Note) ?? "";

    /// <summary>Whether the field was said.</summary>
    public bool Has(Field field) => _values.ContainsKey(field);

    /// <summary>
    /// The field's value; the type's default when it was not said, which only a field that is not needed can be.
    /// </summary>
    public T Of<T>(Field<T> field)
        where T : notnull => _values.TryGetValue(field, out var value) ? (T)value : default!;

    /// <summary>The field's value, or null when it was not said.</summary>
    public T? Maybe<T>(Field<T> field)
        where T : struct => _values.TryGetValue(field, out var value) ? (T)value : null;

    /// <summary>The field's value, or null when it was not said.</summary>
    public T? Find<T>(Field<T> field)
        where T : class => _values.TryGetValue(field, out var value) ? (T)value : null;

    /// <summary>The lines, which are of this type.</summary>
    public IReadOnlyList<TLine> LinesOf<TLine>() => [.. Lines.Cast<TLine>()];

    /// <summary>What an entry, or a line, says in its fields.</summary>
    internal static FieldValues Of<T>(IEnumerable<FieldOf<T>> bound, T said)
    {
        var values = new FieldValues();
        foreach (var (field, get) in bound)
            values.Put(field, get(said));
        return values;
    }

    internal object? Boxed(Field field) => _values.GetValueOrDefault(field);

    internal void Put(Field field, object? value)
    {
        if (value is null)
            _values.Remove(field);
        else
            _values[field] = value;
    }
}
