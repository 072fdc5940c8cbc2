namespace Ledger.App.Commands.Show;

/// <summary>Reorder readings and the open orders in their document.</summary>
internal static class ReorderShape
{
    private static readonly Shape<ReorderReading> _rise = new Shape<ReorderReading>()
        .Date("from", reading => reading.PriceRise!.From)
        .Figure("percent", reading => reading.PriceRise!.Thousandths / 10m)
        .Whole("packsBefore", reading => reading.Suggestion?.PacksBeforeRise ?? 0)
        .Money("saved", reading => reading.Suggestion?.Saved);

    private static readonly Shape<ReorderReading> _reading = new Shape<ReorderReading>()
        .Text("item", reading => reading.Item.Code)
        .Text("name", reading => reading.Item.Name)
        .Word("pattern", reading => reading.Pattern?.Name(), "smooth, intermittent, erratic or lumpy")
        .Text("method", reading => reading.Forecast?.Method.Name() ?? "minimum")
        .Whole("periodDays", reading => reading.History.PeriodDays)
        .Whole("periods", reading => reading.History.Periods)
        .Whole("periodsWithUse", reading => reading.History.PeriodsWithUse)
        .Average("demandPerWeek", reading => reading.PerWeek, reading => reading.Item.Unit)
        .Whole("leadTimeDays", reading => reading.LeadTime.Days)
        .Text("leadTimeSource", reading => reading.LeadTime.Source switch
        {
            LeadTimeSource.Entered => "entered",
            LeadTimeSource.Observed => "observed",
            _ => "assumed",
        })
        .Whole("enteredLeadTimeDays", reading => reading.Item.LeadTimeDays)
        .Numbers("observedLeadTimes", reading => reading.LeadTime.Observed)
        .Figure("serviceLevel", reading => reading.ServiceLevel)
        .Average("leadTimeDemand", reading => reading.LeadTimeDemand, reading => reading.Item.Unit)
        .Figure("reachedLevel", reading => reading.ReachedLevel)
        .Average("safetyStock", reading => reading.SafetyStock, reading => reading.Item.Unit)
        .Quantity("reorderPoint", reading => reading.ReorderPoint)
        .Quantity("normalReorderPoint", reading => reading.NormalReorderPoint,
            "by the normal approximation, for comparison")
        .Quantity("onHand", reading => reading.OnHand)
        .Quantity("usable", reading => reading.Usable)
        .Figure("monthsOfCover", reading => reading.MonthsOfCover)
        .Quantity("onOrder", reading => reading.OnOrder)
        .Quantity("planned", reading => reading.Planned)
        .Date("runsOutOn", reading => reading.RunsOutOn)
        .Table("enoughFor", (reading, _) => reading.EnoughFor, new Shape<EnoughFor>()
            .Text("process", enough => enough.Process)
            .Whole("freshBaths", enough => enough.Baths)
            .Whole("batches", enough => enough.Batches)
            .Whole("sessions", enough => enough.Sessions)
            .Word("like", enough => enough.Like))
        .Flag("orderNow", reading => reading.Suggestion is { IsNow: true })
        .Date("orderBy", reading => reading.Suggestion?.OrderBy)
        .Whole("orderPacks", reading => reading.Suggestion?.Packs ?? 0)
        .Date("windowOpens", reading => reading.Suggestion?.OpensOn)
        .Object("priceRise", (reading, _) => reading.PriceRise is null ? null : reading, _rise)
        .Text("basis", reading => reading.Basis);

    private static readonly Shape<OrderLine> _line = new Shape<OrderLine>()
        .Text("item", line => line.Item)
        .Whole("packs", line => line.Packs)
        .Money("price", line => line.Price)
        .Quantity("ordered", line => line.Ordered)
        .Quantity("delivered", line => line.Delivered)
        .Quantity("outstanding", line => line.Outstanding)
        .Date("expectedOn", line => line.ExpectedOn)
        .Flag("isBackOrdered", line => line.IsBackOrdered)
        .Flag("isLate", (line, view) => line.IsLate(view.AsOf))
        .Text("state", (line, view) => line.State(view.AsOf));

    public static Shape<IReadOnlyList<ReorderReading>> Of { get; } = new Shape<IReadOnlyList<ReorderReading>>()
        .AsOf()
        .Table("items", (readings, _) => readings, _reading, (_, rows) => rows)
        .Table("orders", (_, view) => view.Holdings.Orders.Open, new Shape<Order>()
            .Text("order", order => order.Code)
            .Date("placedOn", order => order.PlacedOn)
            .Text("supplier", order => order.Supplier)
            .Flag("isPrepaid", order => order.IsPrepaid)
            .Table("lines", (order, _) => order.Lines, _line));
}
