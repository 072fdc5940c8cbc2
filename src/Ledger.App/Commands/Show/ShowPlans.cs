namespace Ledger.App.Commands.Show;

/// <summary>show plans: the sessions and trips that are planned, and what they will use.</summary>
internal sealed class ShowPlans(Workbench bench)
    : ShowCommand<IReadOnlyList<OpenPlan>>(
        bench, "plans", "Shows the planned sessions and trips, the next one first, and what each will use.",
        "Example: trayledger show plans", _shape)
{
    private static readonly Shape<IReadOnlyList<OpenPlan>> _shape = new Shape<IReadOnlyList<OpenPlan>>()
        .AsOf()
        .Table("plans", Rows, new Shape<(OpenPlan Plan, IEnumerable<PlannedDemand> Demand)>()
            .Text("plan", row => row.Plan.Name)
            .Date("on", row => row.Plan.On)
            .Flag("trip", row => row.Plan.IsTrip)
            .Text("process", row => row.Plan.Request.Process)
            .Text("minutes", row => row.Plan.Request.Times.Text)
            .Word("bath", row => row.Plan.Request.Bath)
            .Date("madeOn", row => row.Plan.MadeOn)
            .Text("note", row => row.Plan.Note)
            .Table("sheets", (row, _) => row.Plan.Request.Sheets, new Shape<RequestedSheets>()
                .Text("item", line => line.Film)
                .Whole("sheets", line => line.Count)
                .Text("group", line => line.Group)
                .Word("subject", line => line.Subject)
                .Word("holder", line => line.Holder)
                .Word("from", line => line.From))
            .Table("demand", (row, _) => row.Demand, new Shape<PlannedDemand>()
                .Text("item", known => known.Item)
                .Date("on", known => known.On)
                .Quantity("quantity", known => known.Quantity)),
            (_, rows) => [.. rows.Select(row => row.Plan)]);

    protected override IReadOnlyList<OpenPlan> Read(View view, ParseResult parse) => [.. view.Holdings.Plans];

    protected override void WriteText(IReadOnlyList<OpenPlan> plans, View view, TextWriter output)
    {
        if (plans.Count == 0)
            output.WriteLine("Nothing is planned: keep a plan with `trayledger record plan`.");
        var demand = PlannedDemand.Of(view.Holdings).ToLookup(known => known.Plan);
        var table = new TextTable(
            Column.Left("plan"), Column.Left("for"), Column.Left("what"), Column.Left("sheets"),
            Column.Left("will use"));
        foreach (var plan in plans)
            table.Add(
                plan.Name, Dates.Text(plan.On), plan.IsTrip ? "trip" : plan.Request.Process,
                string.Join(", ",
                    plan.Request.Sheets.Select(line => $"{line.Count} {line.Film} {line.Group}".TrimEnd())),
                string.Join(", ",
                    demand[plan.Name].Select(known => $"{known.Quantity.ToText(view.Style)} {known.Item}")));
        table.WriteTo(output, view.Width);
    }

    private static IEnumerable<(OpenPlan Plan, IEnumerable<PlannedDemand> Demand)> Rows(IReadOnlyList<OpenPlan> plans,
        View view)
    {
        var demand = PlannedDemand.Of(view.Holdings).ToLookup(known => known.Plan);
        return plans.Select(plan => (plan, demand[plan.Name]));
    }
}
