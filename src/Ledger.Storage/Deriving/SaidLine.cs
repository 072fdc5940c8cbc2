using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Ledger.Storage.Files;

namespace Ledger.Storage.Deriving;

/// <summary>
/// What was said, as a line of a file: the entry as a document, with its key, its place, when it was recorded, and the
/// names that it gave.
/// </summary>
internal static class SaidLine
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write(Said said, IReadOnlyList<GivenName> names)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteString("key", said.Key);
            json.WriteString("kind", said.Kind);
            if (said.About is not null)
                json.WriteString("about", said.About);
            if (said.Name is not null)
                json.WriteString("name", said.Name);
            json.WriteString("date", said.Date);
            json.WriteNumber("ord", said.Ord);
            json.WriteString("recordedAt", said.RecordedAt);
            json.WritePropertyName("entry");
            json.WriteRawValue(said.Json);
            json.WriteStartArray("names");
            foreach (var name in names)
            {
                json.WriteStartObject();
                json.WriteString("slot", name.Slot);
                json.WriteString("series", name.Series);
                json.WriteNumber("number", name.Number);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteString("digest", said.Digest);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    /// <exception cref="LedgerFileException">The line is not of that form.</exception>
    public static (Said Said, IReadOnlyList<GivenName> Names) Read(string line, int index)
    {
        try
        {
            using var document = JsonDocument.Parse(line);
            var root = document.RootElement;
            return (
                new(
                    Text(root, "key"), Text(root, "kind"), Maybe(root, "about"), Maybe(root, "name"),
                    Text(root, "date"), root.GetProperty("ord").GetInt64(), Text(root, "recordedAt"),
                    root.GetProperty("entry").GetRawText(), Text(root, "digest")),
                [
                    .. root.GetProperty("names").EnumerateArray().Select(name =>
                        new GivenName(Text(name, "slot"), Text(name, "series"), name.GetProperty("number").GetInt64())),
                ]);
        }
        catch (Exception wrong) when (wrong is JsonException or KeyNotFoundException or InvalidOperationException
            or FormatException)
        {
            throw new LedgerFileException(
                $"line {index + 1} of the journal cannot be read; accepted is what `trayledger export` writes into "
                    + "journal.jsonl", wrong);
        }
    }

    private static string Text(JsonElement element, string name) =>
        element.GetProperty(name).GetString() ?? throw new FormatException(name);

    private static string? Maybe(JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) ? value.GetString() : null;
}
