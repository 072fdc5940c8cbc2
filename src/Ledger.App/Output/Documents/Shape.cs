using System.Text.Json;

namespace Ledger.App.Output.Documents;

/// <summary>
/// The description of things of one type. The type is for those who describe only: below, each thing is an object, so
/// that the native binary does not hold the same code and types again for each of the many things.
/// </summary>
/// <typeparam name="T">The thing.</typeparam>
internal sealed class Shape<T> : DocumentShape
    where T : notnull
{
    /// <summary>A text that is always there.</summary>
    public Shape<T> Text(string name, Func<T, string> of, string meaning = "") =>
        Value(name, Form.Text, (thing, _) => of((T)thing), false, meaning);

    /// <summary>A text that may be missing.</summary>
    public Shape<T> Word(string name, Func<T, string?> of, string meaning = "") =>
        Value(name, Form.Text, (thing, _) => of((T)thing), true, meaning);

    public Shape<T> Text(string name, Func<T, View, string> of, string meaning = "") =>
        Field(name, Form.Text, of, false, meaning);

    public Shape<T> Date(string name, Func<T, LocalDate> of, string meaning = "") =>
        Value(name, Form.Date, (thing, _) => of((T)thing), false, meaning);

    public Shape<T> Date(string name, Func<T, LocalDate?> of, string meaning = "") =>
        Value(name, Form.Date, (thing, _) => of((T)thing), true, meaning);

    /// <summary>The day that is looked at.</summary>
    public Shape<T> AsOf() => Value("asOf", Form.Date, (_, view) => view.AsOf, false, "the day that is looked at");

    public Shape<T> Whole(string name, Func<T, long> of, string meaning = "") =>
        Value(name, Form.Whole, (thing, _) => of((T)thing), false, meaning);

    public Shape<T> Whole(string name, Func<T, long?> of, string meaning = "") =>
        Value(name, Form.Whole, (thing, _) => of((T)thing), true, meaning);

    public Shape<T> Figure(string name, Func<T, decimal> of, string meaning = "") =>
        Value(name, Form.Figure, (thing, _) => of((T)thing), false, meaning);

    public Shape<T> Figure(string name, Func<T, decimal?> of, string meaning = "") =>
        Value(name, Form.Figure, (thing, _) => of((T)thing), true, meaning);

    public Shape<T> Chance(string name, Func<T, double?> of, string meaning = "") =>
        Value(name, Form.Chance, (thing, _) => of((T)thing), true, meaning);

    /// <summary>An area in square inches.</summary>
    public Shape<T> Area(string name, Func<T, Area> of, string meaning = "") =>
        Value(name, Form.Figure, (thing, _) => of((T)thing).SquareInches, false, meaning);

    /// <summary>An area in square inches that may be unknown.</summary>
    public Shape<T> Area(string name, Func<T, Area?> of, string meaning = "") =>
        Value(name, Form.Figure, (thing, _) => of((T)thing)?.SquareInches, true, meaning);

    public Shape<T> Flag(string name, Func<T, bool> of, string meaning = "") =>
        Value(name, Form.Flag, (thing, _) => of((T)thing), false, meaning);

    public Shape<T> Flag(string name, Func<T, bool?> of, string meaning = "") =>
        Value(name, Form.Flag, (thing, _) => of((T)thing), true, meaning);

    public Shape<T> Flag(string name, Func<T, View, bool> of, string meaning = "") =>
        Value(name, Form.Flag, (thing, view) => of((T)thing, view), false, meaning);

    public Shape<T> Quantity(string name, Func<T, Quantity> of, string meaning = "") =>
        Value(name, Form.Quantity, (thing, _) => Amount.Of(of((T)thing)), false, meaning);

    public Shape<T> Quantity(string name, Func<T, Quantity?> of, string meaning = "") =>
        Value(name, Form.Quantity, (thing, _) => Amount.Of(of((T)thing)), true, meaning);

    public Shape<T> Volume(string name, Func<T, Volume?> of, string meaning = "") =>
        Value(name, Form.Quantity, (thing, _) => Amount.Of(of((T)thing)), true, meaning);

    public Shape<T> Volume(string name, Func<T, Volume> of, string meaning = "") =>
        Value(name, Form.Quantity, (thing, _) => Amount.Of(of((T)thing)), false, meaning);

    /// <summary>A quantity that is an average and may be a part of a sheet.</summary>
    public Shape<T> Average(string name, Func<T, decimal?> of, Func<T, Unit> unit, string meaning = "") =>
        Value(name, Form.Quantity,
            (thing, _) => of((T)thing) is { } value ? new Amount(value, unit((T)thing), null) : null, true, meaning);

    public Shape<T> Money(string name, Func<T, Money> of, string meaning = "") =>
        Value(name, Form.Money, (thing, _) => of((T)thing), false, meaning);

    public Shape<T> Money(string name, Func<T, Money?> of, string meaning = "") =>
        Value(name, Form.Money, (thing, _) => of((T)thing), true, meaning);

    public Shape<T> Texts(string name, Func<T, IEnumerable<string>> of, string meaning = "") =>
        Add(new ListPart(name, Form.Text, (thing, _) => of((T)thing)) { Meaning = meaning });

    public Shape<T> Numbers(string name, Func<T, IEnumerable<int>> of, string meaning = "") =>
        Add(new ListPart(name, Form.Whole,
            (thing, _) => of((T)thing).Select(number => (object)(long)number)) { Meaning = meaning });

    public Shape<T> Counts(string name, Func<T, View, IEnumerable<KeyValuePair<string, long>>> of,
        string meaning = "") =>
        Add(new CountsPart(name, (thing, view) => of((T)thing, view)) { Meaning = meaning });

    /// <summary>An object, or nothing.</summary>
    public Shape<T> Object<TInner>(string name, Func<T, View, TInner?> of, Shape<TInner> shape,
        string meaning = "") where TInner : class =>
        Add(new ObjectPart(name, (thing, view) => of((T)thing, view), shape) { Meaning = meaning });

    /// <summary>An object that another description writes.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="write">Writes the object.</param>
    /// <param name="describe">Writes what a schema says of it.</param>
    /// <param name="meaning">What it means.</param>
    public Shape<T> Raw(string name, Action<T, Utf8JsonWriter> write, Action<Utf8JsonWriter> describe,
        string meaning) =>
        Add(new RawPart(name, (thing, json) => write((T)thing, json), describe) { Meaning = meaning });

    /// <summary>A table.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="of">Its rows.</param>
    /// <param name="shape">A row.</param>
    /// <param name="put">The thing with other rows in their place, where it can be made.</param>
    /// <param name="when">Whether the table is there; null where it always is.</param>
    public Shape<T> Table<TRow>(
        string name, Func<T, View, IEnumerable<TRow>> of, Shape<TRow> shape,
        Func<T, IReadOnlyList<TRow>, T>? put = null, Func<T, View, bool>? when = null)
        where TRow : notnull =>
        Add(new TablePart(
            name, (thing, view) => of((T)thing, view) is var rows && rows is IEnumerable<object> all
                ? all
                : rows.Cast<object>(), shape,
            put is null ? null : (thing, rows) => put((T)thing, [.. rows.Cast<TRow>()])) { When = Untyped(when) });

    /// <summary>The table that is meant where none is named, wherever it stands in the document.</summary>
    public Shape<T> Leading(string table)
    {
        LeadingTable = table;
        return this;
    }

    /// <summary>The properties of something that belongs to the thing, among its own.</summary>
    /// <param name="of">What belongs to it.</param>
    /// <param name="shape">Its properties.</param>
    /// <param name="when">Whether they are there; null where they always are.</param>
    public Shape<T> With<TInner>(Func<T, View, TInner> of, Shape<TInner> shape, Func<T, View, bool>? when = null)
        where TInner : notnull
    {
        foreach (var part in shape.Parts)
            Add(new InnerPart(part, (thing, view) => of((T)thing, view))
            {
                Meaning = part.Meaning,
                When = Untyped(when)
                    ?? (part.When is { } inner ? (thing, view) => inner(of((T)thing, view), view) : null),
            });
        return this;
    }

    /// <summary>A property that is there only sometimes.</summary>
    /// <param name="when">When it is.</param>
    /// <param name="shape">It alone.</param>
    public Shape<T> If(Func<T, View, bool> when, Shape<T> shape) => With((thing, _) => thing, shape, when);

    /// <summary>A value of a form.</summary>
    public Shape<T> Field(string name, Form form, Func<T, View, object?> of, bool mayBeNull = false,
        string meaning = "") =>
        Value(name, form, (thing, view) => of((T)thing, view), mayBeNull, meaning);

    private static Func<object, View, bool>? Untyped(Func<T, View, bool>? when) =>
        when is null ? null : (thing, view) => when((T)thing, view);

    private Shape<T> Value(string name, Form form, Func<object, View, object?> of, bool mayBeNull, string meaning) =>
        Add(new FieldPart(name, form, of, mayBeNull) { Meaning = meaning });

    private Shape<T> Add(Part part)
    {
        Append(part);
        return this;
    }
}
