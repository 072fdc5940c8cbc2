using System.Text.Json;

namespace Ledger.App.Output.Documents;

/// <summary>What a command did: a sentence for people, or one JSON document where --json asks for it.</summary>
/// <param name="shape">What stands in the document.</param>
internal sealed class Told<T>(Shape<T> shape)
    where T : notnull
{
    /// <summary>--json.</summary>
    public Option<bool> Option { get; } = new("--json") { Description = "write what was done as one JSON document" };

    /// <summary>The output holds one thing: a file that is sent there, or what was done.</summary>
    /// <exception cref="FormatException">Both are asked for.</exception>
    public void RequireOutput(ParseResult parse, bool isTaken)
    {
        if (isTaken && parse.GetValue(Option))
            throw new FormatException(
                "--json and - do not go together: both write to the standard output; name a file");
    }

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
