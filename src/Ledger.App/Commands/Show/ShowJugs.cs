using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Wiring;
using Ledger.Core.Baths;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Show;

/// <summary>show jugs: what waits in waste jugs, and what was handed over.</summary>
internal sealed class ShowJugs(Workbench bench) : ShowCommand<IReadOnlyList<WasteJug>>(
    bench, "jugs", "Shows the waste jugs: what is in each, since when, and where it went.", "Example: trayledger show jugs")
{
    protected override IReadOnlyList<WasteJug> Read(View view, ParseResult parse) => view.Ledger.JugsOn(view.AsOf);

    protected override void WriteText(IReadOnlyList<WasteJug> jugs, View view, TextWriter output)
    {
        if (jugs.Count == 0)
            output.WriteLine("There is no jug: start one with `trayledger record jug-start`.");
        foreach (var jug in jugs)
        {
            output.WriteProse(
                $"{jug.Code}: {jug.Contents}, {jug.Held.ToText(view.Style)} of {jug.Size.ToText(view.Style)}, "
                + $"started {Dates.Text(jug.StartedOn)}",
                view.Width);
            var table = new TextTable(Column.Left(""), Column.Right(""), Column.Left(""));
            foreach (var fill in jug.Fills)
                table.Add("  " + Dates.Text(fill.Date), fill.Volume.ToText(view.Style), fill.What);
            table.WriteTo(output, view.Width);
            if (jug.HandedOverOn is { } day)
                output.WriteProse($"  handed over {Dates.Text(day)}: {jug.HandedTo}", view.Width);
        }

        if (jugs.Count > 0)
            output.WriteProse(
                "The maker's safety data sheet and local rules say where it may go; used fixer holds silver.",
                view.Width);
    }

    protected override void WriteJson(IReadOnlyList<WasteJug> jugs, View view, Utf8JsonWriter json)
    {
        json.WriteDate("asOf", view.AsOf);
        json.WriteStartArray("jugs");
        foreach (var jug in jugs)
        {
            json.WriteStartObject();
            json.WriteString("jug", jug.Code);
            json.WriteString("contents", jug.Contents);
            json.WriteString("wasteKind", jug.Waste.Name());
            json.WriteQuantity("size", jug.Size);
            json.WriteQuantity("held", jug.Held);
            json.WriteDate("startedOn", jug.StartedOn);
            json.WriteDate("handedOverOn", jug.HandedOverOn);
            json.WriteString("handedTo", jug.HandedTo);
            json.WriteStartArray("fills");
            foreach (var fill in jug.Fills)
            {
                json.WriteStartObject();
                json.WriteDate("date", fill.Date);
                json.WriteQuantity("volume", fill.Volume);
                json.WriteString("what", fill.What);
                json.WriteString("material", fill.Material?.Name());
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
