using System.Text.Json;

namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// What a JSON Schema (draft 2020-12) says of an entry as <see cref="EntryJson"/> writes and reads it, from the
/// description of its kind.
/// </summary>
public static class EntrySchema
{
    /// <summary>Writes the keywords of the schema into an open object.</summary>
    public static void Write(EntryKind kind, Utf8JsonWriter json)
    {
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        if (EntryJson.NamesItself(kind))
        {
            json.WriteStartObject("kind");
            json.WriteString("const", kind.Name);
            json.WriteEndObject();
        }

        Properties(kind.AllFields, json);
        if (kind.Line is { } line)
            Lines(line, json);
        json.WriteEndObject();
        Closed(kind.AllFields, kind.Line is { IsNeeded: true } needed ? needed.Name : null, json);
    }

    private static void Lines(LineKind line, Utf8JsonWriter json)
    {
        json.WriteStartObject(line.Name);
        json.WriteString("description", line.Help);
        json.WriteString("type", "array");
        if (line.IsNeeded)
            json.WriteNumber("minItems", 1);
        json.WriteStartObject("items");
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        Properties(line.Fields, json);
        json.WriteEndObject();
        Closed(line.Fields, null, json);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Properties(IReadOnlyList<Field> fields, Utf8JsonWriter json)
    {
        foreach (var field in fields)
        {
            json.WriteStartObject(field.JsonName);
            json.WriteString("description", field.Help);
            Value(field.Notation, json);
            json.WriteEndObject();
        }
    }

    /// <summary>A number may have a unit behind it, and is a text then.</summary>
    private static void Value(Notation notation, Utf8JsonWriter json)
    {
        switch (notation)
        {
            case { Shape: Shape.Tick }:
                json.WriteString("type", "boolean");
                break;
            case { Shape: Shape.Number }:
                Words("type", ["number", "string"], json);
                break;
            case { Words.Count: > 0, Divider: null }:
                Words("enum", notation.Words, json);
                break;
            default:
                json.WriteString("type", "string");
                if (notation.Shape == Shape.Date)
                    json.WriteString("format", "date");
                break;
        }
    }

    private static void Closed(IReadOnlyList<Field> fields, string? lines, Utf8JsonWriter json)
    {
        Words("required", [.. fields.Where(field => field.IsNeeded).Select(field => field.JsonName),
            .. lines is null ? [] : new[] { lines }], json);
        json.WriteBoolean("additionalProperties", false);
    }

    private static void Words(string name, IReadOnlyList<string> words, Utf8JsonWriter json)
    {
        json.WriteStartArray(name);
        foreach (var word in words)
            json.WriteStringValue(word);
        json.WriteEndArray();
    }
}
