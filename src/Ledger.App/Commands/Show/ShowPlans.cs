using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Wiring;
using Ledger.Core.Measures;
using Ledger.Core.Planning;
using Ledger.Core.Sessions;

namespace Ledger.App.Commands.Show;

/// <summary>show plans: the sessions and trips that are planned, and what they will use.</summary>
internal sealed class ShowPlans(Workbench bench)
    : ShowCommand<IReadOnlyList<OpenPlan>>(
        bench, "plans", "Shows the planned sessions and trips, the next one first, and what each will use.", "Example: trayledger show plans")
{
    protected override IReadOnlyList<OpenPlan> Read(View view, ParseResult parse) => [.. view.Holdings.Plans];

    protected override void WriteText(IReadOnlyList<OpenPlan> plans, View view, TextWriter output)
    {
        if (plans.Count == 0)
            output.WriteLine("Nothing is planned: keep a plan with `trayledger record plan`.");
        var demand = PlannedDemand.Of(view.Holdings).ToLookup(known => known.Plan);
        var table = new TextTable(
            Column.Left("plan"), Column.Left("for"), Column.Left("what"), Column.Left("sheets"), Column.Left("will use"));
        foreach (var plan in plans)
            table.Add(
                plan.Name, Dates.Text(plan.On), plan.IsTrip ? "trip" : plan.Request.Process,
                string.Join(", ", plan.Request.Sheets.Select(line => $"{line.Count} {line.Film} {line.Group}".TrimEnd())),
                string.Join(", ", demand[plan.Name].Select(known => $"{known.Quantity.ToText(view.Style)} {known.Item}")));
        table.WriteTo(output, view.Width);
    }

    protected override void WriteJson(IReadOnlyList<OpenPlan> plans, View view, Utf8JsonWriter json)
    {
        var demand = PlannedDemand.Of(view.Holdings).ToLookup(known => known.Plan);
        json.WriteDate("asOf", view.AsOf);
        json.WriteStartArray("plans");
        foreach (var plan in plans)
        {
            json.WriteStartObject();
            json.WriteString("plan", plan.Name);
            json.WriteDate("on", plan.On);
            json.WriteBoolean("trip", plan.IsTrip);
            json.WriteString("process", plan.Request.Process);
            json.WriteString("minutes", plan.Request.Times.Text);
            json.WriteString("bath", plan.Request.Bath);
            json.WriteDate("madeOn", plan.MadeOn);
            json.WriteString("note", plan.Note);
            WriteSheets(plan, json);
            WriteDemand(demand[plan.Name], json);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteSheets(OpenPlan plan, Utf8JsonWriter json)
    {
        json.WriteStartArray("sheets");
        foreach (var line in plan.Request.Sheets)
        {
            json.WriteStartObject();
            json.WriteString("item", line.Film);
            json.WriteNumber("sheets", line.Count);
            json.WriteString("group", line.Group);
            json.WriteString("subject", line.Subject);
            json.WriteString("holder", line.Holder);
            json.WriteString("from", line.From);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteDemand(IEnumerable<PlannedDemand> demand, Utf8JsonWriter json)
    {
        json.WriteStartArray("demand");
        foreach (var known in demand)
        {
            json.WriteStartObject();
            json.WriteString("item", known.Item);
            json.WriteDate("on", known.On);
            json.WriteQuantity("quantity", known.Quantity);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
