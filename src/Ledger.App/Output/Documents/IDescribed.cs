using System.Text.Json;

namespace Ledger.App.Output.Documents;

/// <summary>A command that writes a JSON document, and can say what stands in one.</summary>
internal interface IDescribed
{
    /// <summary>Writes what a schema says of the document.</summary>
    void Describe(Utf8JsonWriter json);
}
