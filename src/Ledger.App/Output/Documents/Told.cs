using System.Text.Json;

namespace Ledger.App.Output.Documents;

/// <summary>What a command did: a sentence for people, or one JSON document where --json asks for it.</summary>
/// <param name="shape">What stands in the document.</param>
internal sealed class Told<T>(Shape<T> shape)
{
    /// <summary>--json.</summary>
    public Option<bool> Option { get; } = new("--json") { Description = "write what was done as one JSON document" };

    /// <summary>Writes the document, if it is asked for.</summary>
    /// <returns>Whether it was.</returns>
    public bool Write(ParseResult parse, TextWriter output, T done)
    {
        if (!parse.GetValue(Option))
            return false;
        JsonText.Write(output, json => shape.WriteFields(done, View.OfNone, json));
        return true;
    }

    /// <summary>Writes what a schema says of the document.</summary>
    public void Describe(Utf8JsonWriter json) => shape.Describe(json);
}
