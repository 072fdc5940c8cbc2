using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Wiring;
using Ledger.Core.Journal;

namespace Ledger.App.Commands.Show;

/// <summary>show settings: the settings of the whole ledger and what they are set to.</summary>
internal sealed class ShowSettings(Workbench bench) : ShowCommand<Settings>(
    bench, "settings", "Shows the settings of the whole ledger.", """
    `trayledger record setting` changes one.
    Example: trayledger show settings
    """)
{
    protected override Settings Read(View view, ParseResult parse) => view.Holdings.Settings;

    protected override void WriteText(Settings settings, View view, TextWriter output)
    {
        foreach (var setting in Setting.All)
        {
            output.WriteLine($"{setting.Name}: {(setting.Text(settings) is { Length: > 0 } value ? value : "not set")}");
            output.WriteProse(setting.Purpose, view.Width, "    ");
        }
    }

    protected override void WriteJson(Settings settings, View view, Utf8JsonWriter json)
    {
        json.WriteStartArray("settings");
        foreach (var setting in Setting.All)
        {
            json.WriteStartObject();
            json.WriteString("setting", setting.Name);
            json.WriteString("value", setting.Text(settings));
            json.WriteString("purpose", setting.Purpose);
            json.WriteString("accepted", setting.Accepted);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
