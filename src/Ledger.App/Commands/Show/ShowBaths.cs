using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Wiring;
using Ledger.Core.Baths;

namespace Ledger.App.Commands.Show;

/// <summary>show baths: all working solutions in use.</summary>
internal sealed class ShowBaths(Workbench bench)
    : ShowCommand<IReadOnlyList<BathReading>>(bench, "baths",
        "Shows the baths in use: what went through each, the capacity left, and what ends it.", "Example: trayledger show baths")
{
    protected override IReadOnlyList<BathReading> Read(View view, ParseResult parse) =>
        [.. view.Holdings.Baths.Select(bath => new BathReading(bath, view.AsOf))];

    protected override void WriteText(IReadOnlyList<BathReading> baths, View view, TextWriter output)
    {
        if (baths.Count == 0)
            output.WriteLine("No bath is in use: record one with `trayledger record bath`.");
        for (var i = 0; i < baths.Count; i++)
        {
            if (i > 0)
                output.WriteLine();
            BathText.Write(output, baths[i], view);
        }
    }

    protected override void WriteJson(IReadOnlyList<BathReading> baths, View view, Utf8JsonWriter json)
    {
        json.WriteDate("asOf", view.AsOf);
        json.WriteStartArray("baths");
        foreach (var bath in baths)
        {
            json.WriteStartObject();
            BathJson.Write(json, bath, view);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
