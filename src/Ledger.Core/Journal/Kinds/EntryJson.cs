using System.Buffers;
using System.Text;
using System.Text.Json;
using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// An entry as a JSON document: {"kind":"clearing-test","date":"2026-03-15","bath":"F4","film":"fen80","seconds":55}.
/// Numbers and yes or no are JSON's own; everything else is text as a column has it; lines are an array. A name that
/// the kind does not know is refused.
/// </summary>
public static class EntryJson
{
    private const string KindName = "kind";

    private static readonly JsonWriterOptions Options =
        new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

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
        if (NamesItself(kind))
            json.WriteString(KindName, kind.Name);
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
            problems.Add(new(null, 0, document.ValueKind.ToString(),
                $"an object with the fields {Names(kind.AllFields)}"));
            return new();
        }

        if (NamesItself(kind) && document.TryGetProperty(KindName, out var other)
            && !(other.ValueKind == JsonValueKind.String && other.GetString() == kind.Name))
            problems.Add(new(null, 0, other.ToString(), $"the kind {kind.Name}, or no kind"));
        return Text(kind.AllFields, kind.Line, document, 0, problems);
    }

    /// <summary>
    /// Whether its documents say what kind they are of; not where it has a field of that name, as an item has: names
    /// stand there once.
    /// </summary>
    internal static bool NamesItself(EntryKind kind) => kind.AllFields.All(field => field.JsonName != KindName);

    private static EntryText Text(
        IReadOnlyList<Field> fields, LineKind? line, JsonElement document, int number,
        ICollection<FieldProblem> problems)
    {
        var text = new EntryText();
        foreach (var member in document.EnumerateObject())
            if (fields.FirstOrDefault(field => field.JsonName == member.Name) is { } field)
            {
                if (member.Value.ValueKind is JsonValueKind.Array or JsonValueKind.Object)
                    problems.Add(new(field, number, member.Value.GetRawText(),
                        $"text as a column has it: {field.Help}"));
                else
                    text[field] = TextOf(member.Value);
            }
            else if (line is not null && member.Name == line.Name)
                Lines(line, member.Value, text, problems);
            else if (number > 0 || member.Name != KindName)
                problems.Add(new(null, number, member.Name,
                    $"one of the fields {Names(fields)}{(line is null ? "" : $", {line.Name}")}"));
        return text;
    }

    private static void Lines(LineKind line, JsonElement value, EntryText text, ICollection<FieldProblem> problems)
    {
        if (value.ValueKind != JsonValueKind.Array
            || value.EnumerateArray().Any(one => one.ValueKind != JsonValueKind.Object))
            problems.Add(new(null, 0, value.GetRawText(),
                $"a list of objects with the fields {Names(line.Fields)}") { Lines = line });
        else
            foreach (var one in value.EnumerateArray())
                text.Lines.Add(Text(line.Fields, null, one, text.Lines.Count + 1, problems));
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
                    value,
                    System.Globalization.NumberStyles.AllowDecimalPoint
                        | System.Globalization.NumberStyles.AllowLeadingSign,
                            System.Globalization.CultureInfo.InvariantCulture, out _))
                    json.WriteRawValue(value);
                else
                    json.WriteStringValue(value);
            }
    }

    private static string Names(IReadOnlyList<Field> fields) =>
        string.Join(", ", fields.Select(field => field.JsonName));
}
