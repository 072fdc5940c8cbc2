using System.Text.Json;

namespace Ledger.App.Output.Documents;

/// <summary>
/// What is shown of a thing, described once: its properties in order. Its JSON and the schema of that, its tables in
/// files and for people, and what can be sorted and looked for follow from it.
/// </summary>
internal abstract class DocumentShape
{
    private readonly List<Part> _parts = [];

    /// <summary>The name of the table that is meant where none is named; null for the first.</summary>
    protected string? LeadingTable { get; set; }

    /// <summary>The properties in order.</summary>
    public IReadOnlyList<Part> Parts => _parts;

    /// <summary>The cells of a row that is made of a thing. Of properties of one name, that which is there.</summary>
    public IEnumerable<Cell> Cells => _parts.SelectMany(part => part.Cells).GroupBy(cell => cell.Name)
        .Select(
            same =>
                same.Aggregate((one,
                    other) => one with { Of = (thing, view) => one.Of(thing, view) ?? other.Of(thing, view) }));

    /// <summary>The tables in a thing, the leading one first. Of those of one name, that which is there.</summary>
    public IEnumerable<Table> Tables =>
        _parts.SelectMany(part => part.Tables).GroupBy(table => table.Path).Select(same => same.Aggregate(Joined))
            .OrderBy(table => table.Path != LeadingTable);

    /// <summary>Two tables of one name, of which only one is there, with the columns of both.</summary>
    private static Table Joined(Table one, Table other)
    {
        TableColumn[] columns = [.. one.Columns.Concat(other.Columns).DistinctBy(column => column.Name)];
        return new(one.Path, columns, (thing, view) => Placed(one, thing, view).Concat(Placed(other, thing, view)));

        IEnumerable<object?[]> Placed(Table table, object thing, View view)
        {
            int[] places =
                [.. columns.Select(column => table.Columns.ToList().FindIndex(own => own.Name == column.Name))];
            return table.Rows(thing,
                view).Select(row => places.Select(place => place < 0 ? null : row[place]).ToArray());
        }
    }

    /// <summary>Writes the object.</summary>
    public void Write(object thing, View view, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        WriteFields(thing, view, json);
        json.WriteEndObject();
    }

    /// <summary>Writes the properties of the object.</summary>
    public void WriteFields(object thing, View view, Utf8JsonWriter json)
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

    /// <summary>Adds a property.</summary>
    protected void Append(Part part) => _parts.Add(part);
}
