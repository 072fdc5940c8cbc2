using System.Buffers;
using System.Text;
using System.Text.Json;
using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// An entry as a JSON document: {"kind":"clearing-test","date":"2026-03-15","bath":"F4","film":"fen80","seconds":55}. Numbers and yes or no are
/// JSON's own; everything else is text as a column has it; lines are an array. A name that the kind does not know is refused.
/// </summary>
public static class EntryJson
{
    private static readonly JsonWriterOptions Options = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes an entry.</summary>
    public static string Write(Entry entry, ReadingTerms terms)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Options))
            Write(entry, terms, json);
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    /// <summary>Writes an entry as a value of a larger document.</summary>
    public static void Write(Entry entry, ReadingTerms terms, Utf8JsonWriter json)
    {
        var kind = EntryKinds.Of(entry);
        var text = EntryWriting.Write(kind, entry, terms);
        json.WriteStartObject();
        json.WriteString("kind", kind.Name);
        Fields(kind.AllFields, text, json);
        if (kind.Line is { } line)
        {
            json.WriteStartArray(line.Name);
            foreach (var one in text.Lines)
            {
                json.WriteStartObject();
                Fields(line.Fields, one, json);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    /// <summary>The texts of a document's fields, for <see cref="EntryReading"/> to read.</summary>
    /// <param name="kind">The kind of entry.</param>
    /// <param name="document">The document.</param>
    /// <param name="problems">What is no field of the kind, or not of a form that can be read.</param>
    public static EntryText Text(EntryKind kind, JsonElement document, ICollection<FieldProblem> problems)
    {
        if (document.ValueKind != JsonValueKind.Object)
        {
            problems.Add(new(null, 0, document.ValueKind.ToString(), $"an object with the fields {Names(kind.AllFields)}"));
            return new();
        }

        return Text(kind.AllFields, kind.Line, document, 0, problems);
    }

    private static EntryText Text(
        IReadOnlyList<Field> fields, LineKind? line, JsonElement document, int number, ICollection<FieldProblem> problems)
    {
        var text = new EntryText();
        foreach (var member in document.EnumerateObject())
            if (fields.FirstOrDefault(field => field.JsonName == member.Name) is { } field)
            {
                if (member.Value.ValueKind is JsonValueKind.Array or JsonValueKind.Object)
                    problems.Add(new(field, number, member.Value.GetRawText(), $"text as a column has it: {field.Help}"));
                else
                    text[field] = TextOf(member.Value);
            }
            else if (line is not null && member.Name == line.Name && member.Value.ValueKind == JsonValueKind.Array)
            {
                foreach (var one in member.Value.EnumerateArray())
                    text.Lines.Add(
                        one.ValueKind == JsonValueKind.Object ? Text(line.Fields, null, one, text.Lines.Count + 1, problems) : new());
            }
            else if (number > 0 || member.Name != "kind")
                problems.Add(new(null, number, member.Name, $"one of the fields {Names(fields)}{(line is null ? "" : $", {line.Name}")}"));
        return text;
    }

    private static string TextOf(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String => value.GetString()!,
        JsonValueKind.True => "yes",
        JsonValueKind.False => "no",
        JsonValueKind.Null => "",
        _ => value.GetRawText(),
    };

    private static void Fields(IReadOnlyList<Field> fields, EntryText text, Utf8JsonWriter json)
    {
        foreach (var field in fields)
            if (text[field] is { Length: > 0 } value)
            {
                json.WritePropertyName(field.JsonName);
                if (field.Notation.Shape == Shape.Tick)
                    json.WriteBooleanValue(value == "yes");
                else if (field.Notation.Shape == Shape.Number && decimal.TryParse(
                    value, System.Globalization.NumberStyles.AllowDecimalPoint | System.Globalization.NumberStyles.AllowLeadingSign,
                    System.Globalization.CultureInfo.InvariantCulture, out _))
                    json.WriteRawValue(value);
                else
                    json.WriteStringValue(value);
            }
    }

    private static string Names(IReadOnlyList<Field> fields) => string.Join(", ", fields.Select(field => field.JsonName));
}
