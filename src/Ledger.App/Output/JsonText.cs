using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Ledger.App.Output;

/// <summary>One JSON document on the standard output and nothing else.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions _options = new()
    {
        Indented = true,
        NewLine = "\n",

        // The document goes to a pipe or a file, never into a web page: N+1 may be written as it is.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static void Write(TextWriter output, Action<Utf8JsonWriter> fields)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, _options))
        {
            json.WriteStartObject();
            fields(json);
            json.WriteEndObject();
        }

        output.Write(Encoding.UTF8.GetString(bytes.GetBuffer(), 0, (int)bytes.Length));
        output.Write('\n');
    }
}
