using System.Text;
using System.Text.Json;

namespace Ledger.Terminal.Forms;

/// <summary>
/// What stands in a form, as text that outlives it: each field with how its text came there, line by line, and the key
/// of the entry that it would write, so that saving it twice writes once.
/// </summary>
internal static class ParkedForm
{
    /// <summary>Writes it.</summary>
    /// <param name="key">The entry's key.</param>
    /// <param name="own">The fields beside the lines.</param>
    /// <param name="lines">The lines.</param>
    public static string Write(string key, FieldBoxes own, IEnumerable<FieldBoxes> lines)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteString("key", key);
            json.WritePropertyName("own");
            Write(own, json);
            json.WriteStartArray("lines");
            foreach (var line in lines)
                Write(line, json);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>
    /// Reads it into the fields. A field that it does not know stays empty; what another version knew beside is passed
    /// over.
    /// </summary>
    /// <param name="text">What was written.</param>
    /// <param name="own">The fields beside the lines.</param>
    /// <param name="addLine">Adds a line.</param>
    /// <returns>The entry's key.</returns>
    public static string Read(string text, FieldBoxes own, Func<FieldBoxes> addLine)
    {
        using var json = JsonDocument.Parse(text);
        Read(json.RootElement.GetProperty("own"), own);
        foreach (var line in json.RootElement.GetProperty("lines").EnumerateArray())
            Read(line, addLine());
        return json.RootElement.GetProperty("key").GetString()!;
    }

    private static void Write(FieldBoxes boxes, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        foreach (var (name, box) in boxes.Named)
        {
            json.WriteStartArray(name);
            json.WriteStringValue(box.Text);
            json.WriteStringValue(box.IsTouched ? Typed : box.IsGiven ? Given : Offered);
            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static void Read(JsonElement json, FieldBoxes boxes)
    {
        foreach (var (name, box) in boxes.Named)
        {
            var (text, how) = json.TryGetProperty(name, out var kept) && kept.GetArrayLength() == 2
                ? (kept[0].GetString() ?? "", kept[1].GetString()) : ("", Offered);
            box.Put(text, isTouched: how == Typed, isGiven: how == Given);
        }
    }

    private const string Typed = "typed", Given = "given", Offered = "offered";
}
