using System.Text.Json;

namespace Ledger.App.Output.Documents;

/// <summary>A cell of a row that is made of a thing.</summary>
/// <param name="Name">Its column's name.</param>
/// <param name="Form">What sort of value it holds.</param>
/// <param name="Of">The value; null for none.</param>
internal sealed record Cell(string Name, Form Form, Func<object, View, object?> Of);

/// <summary>A table that is made of a thing.</summary>
/// <param name="Path">Its name, behind the names of the tables whose rows it belongs to.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Its rows: a value or null for each column.</param>
internal sealed record Table(
    string Path, IReadOnlyList<TableColumn> Columns, Func<object, View, IEnumerable<object?[]>> Rows)
{
    /// <summary>
    /// Keeps only some rows in the thing itself, in an order; null where the thing cannot be made without the others.
    /// </summary>
    public Func<object, View, RowChoice, object>? Keep { get; init; }
}

/// <summary>A column of a table.</summary>
/// <param name="Name">Its name, as in JSON.</param>
/// <param name="Form">What sort of value it holds.</param>
internal sealed record TableColumn(string Name, Form Form);

/// <summary>One property of an object in JSON.</summary>
internal abstract class Part(string name)
{
    /// <summary>Its name.</summary>
    public string Name => name;

    /// <summary>What it means, where its name does not say it; may be empty.</summary>
    public string Meaning { get; init; } = "";

    /// <summary>Whether it is there; null where it always is.</summary>
    public Func<object, View, bool>? When { get; init; }

    /// <summary>Its cells in a row of the thing.</summary>
    public virtual IEnumerable<Cell> Cells => [];

    /// <summary>The tables in it.</summary>
    public virtual IEnumerable<Table> Tables => [];

    /// <summary>Writes its value.</summary>
    public abstract void Write(object of, View view, Utf8JsonWriter json);

    /// <summary>Writes what a schema says of its value.</summary>
    public abstract void Describe(Utf8JsonWriter json);

    /// <summary>Writes an array of values.</summary>
    protected static void Array<TOne>(Utf8JsonWriter json, IEnumerable<TOne> values, Action<TOne> write)
    {
        json.WriteStartArray();
        foreach (var value in values)
            write(value);
        json.WriteEndArray();
    }

    /// <summary>
    /// Writes what a schema says of values that are alike: the items of an array, the properties of an object with any
    /// names.
    /// </summary>
    protected static void Alike(Utf8JsonWriter json, string type, string which, Action describe)
    {
        json.WriteString("type", type);
        json.WriteStartObject(which);
        describe();
        json.WriteEndObject();
    }
}

/// <summary>A single value.</summary>
internal sealed class FieldPart(string name, Form form, Func<object, View, object?> of, bool mayBeNull) : Part(name)
{
    public override IEnumerable<Cell> Cells => [new(Name, form, of)];

    public override void Write(object of1, View view, Utf8JsonWriter json)
    {
        if (of(of1, view) is { } value)
            form.Write(json, value, view);
        else
            json.WriteNullValue();
    }

    public override void Describe(Utf8JsonWriter json) => form.Schema(json, mayBeNull);
}

/// <summary>A list of texts or numbers.</summary>
internal sealed class ListPart(string name, Form form, Func<object, View, IEnumerable<object>> of) : Part(name)
{
    public override IEnumerable<Cell> Cells =>
        [new(Name, Form.Text,
            (thing, view) => string.Join(", ", of(thing, view).Select(one => form.Shown(one, view))))];

    public override void Write(object thing, View view, Utf8JsonWriter json) =>
        Array(json, of(thing, view), one => form.Write(json, one, view));

    public override void Describe(Utf8JsonWriter json) => Alike(json, "array", "items", () => form.Schema(json, false));
}

/// <summary>Whole numbers by name, such as sheets by format.</summary>
internal sealed class CountsPart(string name, Func<object, View, IEnumerable<KeyValuePair<string, long>>> of)
    : Part(name)
{
    public override IEnumerable<Cell> Cells =>
        [new(Name, Form.Text,
            (thing, view) => string.Join(", ",
                of(thing, view).Select(count => $"{count.Key} {Form.Whole.Shown(count.Value, view)}")))];

    public override void Write(object thing, View view, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        foreach (var (key, count) in of(thing, view))
            json.WriteNumber(key, count);
        json.WriteEndObject();
    }

    public override void Describe(Utf8JsonWriter json) =>
        Alike(json, "object", "additionalProperties", () => Form.Whole.Schema(json, false));
}

/// <summary>An object, or nothing; its values are cells of the row too.</summary>
internal sealed class ObjectPart(string name, Func<object, View, object?> of, DocumentShape shape) : Part(name)
{
    public override IEnumerable<Cell> Cells => shape.Cells.Select(cell =>
        new Cell($"{Name}.{cell.Name}", cell.Form,
            (thing, view) => of(thing, view) is { } inner ? cell.Of(inner, view) : null));

    public override IEnumerable<Table> Tables => shape.Tables.Select(table => new Table(
        $"{Name}.{table.Path}", table.Columns,
        (thing, view) => of(thing, view) is { } inner ? table.Rows(inner, view) : []));

    public override void Write(object thing, View view, Utf8JsonWriter json)
    {
        if (of(thing, view) is { } inner)
            shape.Write(inner, view, json);
        else
            json.WriteNullValue();
    }

    public override void Describe(Utf8JsonWriter json)
    {
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        shape.Describe(json);
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("type", "null");
        json.WriteEndObject();
        json.WriteEndArray();
    }
}

/// <summary>A list of objects: a table.</summary>
internal sealed class TablePart(
    string name, Func<object, View, IEnumerable<object>> of, DocumentShape shape,
    Func<object, IReadOnlyList<object>, object>? put) : Part(name)
{
    public override IEnumerable<Table> Tables
    {
        get
        {
            var cells = shape.Cells.ToArray();
            TableColumn[] columns = [.. cells.Select(cell => new TableColumn(cell.Name, cell.Form))];
            yield return new(Name, columns, (thing, view) => of(thing, view).Select(row => Values(row, cells, view)))
            {
                Keep = put is null ? null : (thing, view, choice) =>
                    put(thing, choice.Of(of(thing, view), row => Values(row, cells, view))),
            };
            if (cells.Length == 0)
                yield break;
            var key = cells[0];
            foreach (var inner in shape.Tables)
                yield return new(
                    $"{Name}.{inner.Path}", [new(Key(inner), key.Form), .. inner.Columns],
                    (thing,
                        view) => of(thing,
                            view).SelectMany(row => inner.Rows(row,
                                view).Select(values => (object?[])[key.Of(row, view), .. values])));

            string Key(Table inner) => inner.Columns.All(column => column.Name != key.Name)
                ? key.Name
                : $"{Name}.{key.Name}";
        }
    }

    public override void Write(object thing, View view, Utf8JsonWriter json) =>
        Array(json, of(thing, view), row => shape.Write(row, view, json));

    public override void Describe(Utf8JsonWriter json) => Alike(json, "array", "items", () => shape.Describe(json));

    private static object?[] Values(object row, Cell[] cells, View view) =>
        [.. cells.Select(cell => cell.Of(row, view))];
}

/// <summary>A part of something that belongs to the thing, standing among its own.</summary>
internal sealed class InnerPart(Part part, Func<object, View, object> of) : Part(part.Name)
{
    public override IEnumerable<Cell> Cells => part.Cells.Select(cell =>
        new Cell(cell.Name, cell.Form, (thing, view) => IsThere(thing, view) ? cell.Of(of(thing, view), view) : null));

    public override IEnumerable<Table> Tables => part.Tables.Select(table =>
        new Table(table.Path, table.Columns,
            (thing, view) => IsThere(thing, view) ? table.Rows(of(thing, view), view) : []));

    public override void Write(object thing, View view, Utf8JsonWriter json) => part.Write(of(thing, view), view, json);

    public override void Describe(Utf8JsonWriter json) => part.Describe(json);

    private bool IsThere(object thing, View view) => When is not { } when || when(thing, view);
}

/// <summary>An object that is written by a description of its own.</summary>
internal sealed class RawPart(string name, Action<object, Utf8JsonWriter> write,
    Action<Utf8JsonWriter> describe) : Part(name)
{
    public override void Write(object of, View view, Utf8JsonWriter json) => write(of, json);

    public override void Describe(Utf8JsonWriter json) => describe(json);
}
