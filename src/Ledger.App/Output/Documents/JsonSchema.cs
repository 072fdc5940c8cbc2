using System.Text.Json;

namespace Ledger.App.Output.Documents;

/// <summary>The schema of a document in the language of json-schema.org, draft 2020-12.</summary>
internal static class JsonSchema
{
    /// <summary>Writes the schema.</summary>
    /// <param name="output">Where it goes.</param>
    /// <param name="name">The command that writes the document.</param>
    /// <param name="summary">What it is for.</param>
    /// <param name="described">What stands in the document.</param>
    public static void Write(TextWriter output, string name, string summary, IDescribed described) =>
        JsonText.Write(output, json =>
        {
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", $"trayledger {name} --json");
            json.WriteString("description", summary);
            described.Describe(json);
            json.WriteStartObject("$defs");
            Pair(json, "money", "An amount, exact to the millionth, as text, and its currency.",
                "amount", "currency", isNumber: false);
            Pair(json, "quantity", "How much, and in which unit: ml, g, sheet, roll or piece.",
                "value", "unit", isNumber: true);
            json.WriteEndObject();
        });

    private static void Pair(Utf8JsonWriter json, string name, string meaning, string first,
        string second, bool isNumber)
    {
        json.WriteStartObject(name);
        json.WriteString("description", meaning);
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        Property(json, first, isNumber ? "number" : "string");
        Property(json, second, "string");
        json.WriteEndObject();
        json.WriteStartArray("required");
        json.WriteStringValue(first);
        json.WriteStringValue(second);
        json.WriteEndArray();
        json.WriteBoolean("additionalProperties", false);
        json.WriteEndObject();
    }

    private static void Property(Utf8JsonWriter json, string name, string type)
    {
        json.WriteStartObject(name);
        json.WriteString("type", type);
        json.WriteEndObject();
    }
}
