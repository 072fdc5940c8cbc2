using System.Text.Json;

namespace Ledger.App.Output.Documents;

/// <summary>
/// What is shown of a thing, described once: its properties in order. Its JSON and the schema of that, its tables in files and for people,
/// and what can be sorted and looked for follow from it.
/// </summary>
/// <typeparam name="T">The thing.</typeparam>
internal sealed class Shape<T>
{
    private readonly List<Part<T>> _parts = [];
    private string? _leading;

    /// <summary>The cells of a row that is made of a thing. Of properties of one name, that which is there.</summary>
    public IEnumerable<Cell<T>> Cells => _parts.SelectMany(part => part.Cells).GroupBy(cell => cell.Name)
        .Select(same => same.Aggregate((one, other) => one with { Of = (thing, view) => one.Of(thing, view) ?? other.Of(thing, view) }));

    /// <summary>The tables in a thing, the leading one first. Of those of one name, that which is there.</summary>
    public IEnumerable<Table<T>> Tables => _parts.SelectMany(part => part.Tables).GroupBy(table => table.Path).Select(same => same.Aggregate(Joined))
        .OrderBy(table => table.Path != _leading);

    /// <summary>Two tables of one name, of which only one is there, with the columns of both.</summary>
    private static Table<T> Joined(Table<T> one, Table<T> other)
    {
        TableColumn[] columns = [.. one.Columns.Concat(other.Columns).DistinctBy(column => column.Name)];
        return new(one.Path, columns, (thing, view) => Placed(one, thing, view).Concat(Placed(other, thing, view)));

        IEnumerable<object?[]> Placed(Table<T> table, T thing, View view)
        {
            int[] places = [.. columns.Select(column => table.Columns.ToList().FindIndex(own => own.Name == column.Name))];
            return table.Rows(thing, view).Select(row => places.Select(place => place < 0 ? null : row[place]).ToArray());
        }
    }

    /// <summary>Writes the object.</summary>
    public void Write(T thing, View view, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        WriteFields(thing, view, json);
        json.WriteEndObject();
    }

    /// <summary>Writes the properties of the object.</summary>
    public void WriteFields(T thing, View view, Utf8JsonWriter json)
    {
        foreach (var part in _parts)
        {
            if (part.When is { } when && !when(thing, view))
                continue;
            json.WritePropertyName(part.Name);
            part.Write(thing, view, json);
        }
    }

    /// <summary>Writes what a schema says of the object.</summary>
    public void Describe(Utf8JsonWriter json)
    {
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        foreach (var part in _parts.DistinctBy(part => part.Name))
        {
            json.WriteStartObject(part.Name);
            if (part.Meaning.Length > 0)
                json.WriteString("description", part.Meaning);
            part.Describe(json);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteStartArray("required");
        foreach (var part in _parts.Where(part => part.When is null))
            json.WriteStringValue(part.Name);
        json.WriteEndArray();
        json.WriteBoolean("additionalProperties", false);
    }

    /// <summary>A text that is always there.</summary>
    public Shape<T> Text(string name, Func<T, string> of, string meaning = "") => Field(name, Form.Text, (thing, _) => of(thing), false, meaning);

    /// <summary>A text that may be missing.</summary>
    public Shape<T> Word(string name, Func<T, string?> of, string meaning = "") => Field(name, Form.Text, (thing, _) => of(thing), true, meaning);

    public Shape<T> Text(string name, Func<T, View, string> of, string meaning = "") => Field(name, Form.Text, of, false, meaning);

    public Shape<T> Date(string name, Func<T, LocalDate> of, string meaning = "") => Field(name, Form.Date, (thing, _) => of(thing), false, meaning);

    public Shape<T> Date(string name, Func<T, LocalDate?> of, string meaning = "") => Field(name, Form.Date, (thing, _) => of(thing), true, meaning);

    /// <summary>The day that is looked at.</summary>
    public Shape<T> AsOf() => Field("asOf", Form.Date, (_, view) => view.AsOf, false, "the day that is looked at");

    public Shape<T> Whole(string name, Func<T, long> of, string meaning = "") => Field(name, Form.Whole, (thing, _) => of(thing), false, meaning);

    public Shape<T> Whole(string name, Func<T, long?> of, string meaning = "") => Field(name, Form.Whole, (thing, _) => of(thing), true, meaning);

    public Shape<T> Figure(string name, Func<T, decimal> of, string meaning = "") => Field(name, Form.Figure, (thing, _) => of(thing), false, meaning);

    public Shape<T> Figure(string name, Func<T, decimal?> of, string meaning = "") => Field(name, Form.Figure, (thing, _) => of(thing), true, meaning);

    public Shape<T> Chance(string name, Func<T, double?> of, string meaning = "") => Field(name, Form.Chance, (thing, _) => of(thing), true, meaning);

    /// <summary>An area in square inches.</summary>
    public Shape<T> Area(string name, Func<T, Area> of, string meaning = "") =>
        Field(name, Form.Figure, (thing, _) => of(thing).SquareInches, false, meaning);

    /// <summary>An area in square inches that may be unknown.</summary>
    public Shape<T> Area(string name, Func<T, Area?> of, string meaning = "") =>
        Field(name, Form.Figure, (thing, _) => of(thing)?.SquareInches, true, meaning);

    public Shape<T> Flag(string name, Func<T, bool> of, string meaning = "") => Field(name, Form.Flag, (thing, _) => of(thing), false, meaning);

    public Shape<T> Flag(string name, Func<T, bool?> of, string meaning = "") => Field(name, Form.Flag, (thing, _) => of(thing), true, meaning);

    public Shape<T> Flag(string name, Func<T, View, bool> of, string meaning = "") => Field(name, Form.Flag, (thing, view) => of(thing, view), false, meaning);

    public Shape<T> Quantity(string name, Func<T, Quantity> of, string meaning = "") =>
        Field(name, Form.Quantity, (thing, _) => Amount.Of(of(thing)), false, meaning);

    public Shape<T> Quantity(string name, Func<T, Quantity?> of, string meaning = "") =>
        Field(name, Form.Quantity, (thing, _) => Amount.Of(of(thing)), true, meaning);

    public Shape<T> Volume(string name, Func<T, Volume?> of, string meaning = "") =>
        Field(name, Form.Quantity, (thing, _) => Amount.Of(of(thing)), true, meaning);

    public Shape<T> Volume(string name, Func<T, Volume> of, string meaning = "") =>
        Field(name, Form.Quantity, (thing, _) => Amount.Of(of(thing)), false, meaning);

    /// <summary>A quantity that is an average and may be a part of a sheet.</summary>
    public Shape<T> Average(string name, Func<T, decimal?> of, Func<T, Unit> unit, string meaning = "") =>
        Field(name, Form.Quantity, (thing, _) => of(thing) is { } value ? new Amount(value, unit(thing), null) : null, true, meaning);

    public Shape<T> Money(string name, Func<T, Money> of, string meaning = "") => Field(name, Form.Money, (thing, _) => of(thing), false, meaning);

    public Shape<T> Money(string name, Func<T, Money?> of, string meaning = "") => Field(name, Form.Money, (thing, _) => of(thing), true, meaning);

    public Shape<T> Texts(string name, Func<T, IEnumerable<string>> of, string meaning = "") =>
        Add(new ListPart<T>(name, Form.Text, (thing, _) => of(thing)) { Meaning = meaning });

    public Shape<T> Numbers(string name, Func<T, IEnumerable<int>> of, string meaning = "") =>
        Add(new ListPart<T>(name, Form.Whole, (thing, _) => of(thing).Select(number => (object)(long)number)) { Meaning = meaning });

    public Shape<T> Counts(string name, Func<T, View, IEnumerable<KeyValuePair<string, long>>> of, string meaning = "") =>
        Add(new CountsPart<T>(name, of) { Meaning = meaning });

    /// <summary>An object, or nothing.</summary>
    public Shape<T> Object<TInner>(string name, Func<T, View, TInner?> of, Shape<TInner> shape, string meaning = "") where TInner : class =>
        Add(new ObjectPart<T, TInner>(name, of, shape) { Meaning = meaning });

    /// <summary>An object that another description writes.</summary>
    public Shape<T> Raw(string name, Action<T, Utf8JsonWriter> write, string meaning) => Add(new RawPart<T>(name, write) { Meaning = meaning });

    /// <summary>A table.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="of">Its rows.</param>
    /// <param name="shape">A row.</param>
    /// <param name="put">The thing with other rows in their place, where it can be made.</param>
    /// <param name="when">Whether the table is there; null where it always is.</param>
    public Shape<T> Table<TRow>(
        string name, Func<T, View, IEnumerable<TRow>> of, Shape<TRow> shape, Func<T, IReadOnlyList<TRow>, T>? put = null, Func<T, View, bool>? when = null) =>
        Add(new TablePart<T, TRow>(name, of, shape, put) { When = when });

    /// <summary>The table that is meant where none is named, wherever it stands in the document.</summary>
    public Shape<T> Leading(string table)
    {
        _leading = table;
        return this;
    }

    /// <summary>The properties of something that belongs to the thing, among its own.</summary>
    /// <param name="of">What belongs to it.</param>
    /// <param name="shape">Its properties.</param>
    /// <param name="when">Whether they are there; null where they always are.</param>
    public Shape<T> With<TInner>(Func<T, View, TInner> of, Shape<TInner> shape, Func<T, View, bool>? when = null)
    {
        foreach (var part in shape._parts)
            Add(new InnerPart<T, TInner>(part, of)
            {
                Meaning = part.Meaning, When = when ?? (part.When is { } inner ? (thing, view) => inner(of(thing, view), view) : null),
            });
        return this;
    }

    /// <summary>A property that is there only sometimes.</summary>
    /// <param name="when">When it is.</param>
    /// <param name="shape">It alone.</param>
    public Shape<T> If(Func<T, View, bool> when, Shape<T> shape) => With((thing, _) => thing, shape, when);

    /// <summary>A value of a form.</summary>
    public Shape<T> Field(string name, Form form, Func<T, View, object?> of, bool mayBeNull = false, string meaning = "") =>
        Add(new FieldPart<T>(name, form, of, mayBeNull) { Meaning = meaning });

    private Shape<T> Add(Part<T> part)
    {
        _parts.Add(part);
        return this;
    }
}
