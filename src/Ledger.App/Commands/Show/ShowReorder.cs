namespace Ledger.App.Commands.Show;

/// <summary>show reorder: what to order, when, how much, and why; and what is on order.</summary>
internal sealed class ShowReorder(Workbench bench)
    : ShowCommand<IReadOnlyList<ReorderReading>>(bench, "reorder",
        "Shows what to order, when, how much and why; and what is on order.", """
        Use is counted by the week (setting demand-days), from what sessions and baths
        used; tests, practice, what was discarded and counts are left out. The reorder
        point is the least stock that lasts until a delivery as often as the item's
        service level asks, worked out from the item's own past weeks; your minimum
        decides where it is higher or the past is too short.
        Example: trayledger show reorder
        """, ReorderShape.Of)
{
    protected override IReadOnlyList<ReorderReading> Read(View view, ParseResult parse) =>
    [
        .. ReorderReading.Of(view.Ledger, view.Holdings)
            .OrderBy(reading => reading.Suggestion?.OrderBy ?? NodaTime.LocalDate.MaxIsoValue)
            .ThenBy(reading => reading.Item.Code, StringComparer.OrdinalIgnoreCase),
    ];

    protected override void WriteText(IReadOnlyList<ReorderReading> readings, View view, TextWriter output)
    {
        if (readings.Count == 0)
        {
            output.WriteLine("There is no item yet: record one and its delivery, or import them.");
            return;
        }

        var table = new TextTable(
            Column.Left("item"), Column.Right("usable"), Column.Right("on order"), Column.Right("planned"),
            Column.Right("reorder at"), Column.Left("runs out"), Column.Left("order"));
        foreach (var reading in readings)
            table.Add(
                reading.Item.Code, reading.Usable.ToText(view.Style), NoneAsDash(reading.OnOrder, view),
                    NoneAsDash(reading.Planned, view),
                NoneAsDash(reading.ReorderPoint, view), reading.RunsOutOn is { } day ? Dates.Text(day) : "-",
                Order(reading));
        table.WriteTo(output, view.Width);
        foreach (var reading in readings)
        {
            output.WriteLine();
            output.WriteProse($"{reading.Item.Code}: {reading.Basis}{Cover(reading, view)}", view.Width);
        }

        WriteOrders(view, output);
    }

    private static string Order(ReorderReading reading) => reading.Suggestion switch
    {
        null => "-",
        { OpensOn: { } opens } waiting => $"{Counted.Of(waiting.Packs, "pack")} in the window from {Dates.Text(opens)}",
        { IsNow: true } now => $"{Counted.Of(now.Packs, "pack")} NOW{reading.LateText}",
        var later => $"{Counted.Of(later.Packs, "pack")} by {Dates.Text(later.OrderBy)}",
    };

    private static string Cover(ReorderReading reading, View view) => reading.CoverText is not { } cover ? ""
        : $" {reading.Usable.ToText(view.Style)} last {cover} at this use"
            + $"{(EnoughFor.Text(reading.EnoughFor) is { Length: > 0 } enough
                ? $", and are enough for {enough}" : "")}.";

    private static string NoneAsDash(Quantity quantity, View view) =>
        quantity.IsZero ? "-" : quantity.ToText(view.Style);

    private static void WriteOrders(View view, TextWriter output)
    {
        var orders = new TextTable(
            Column.Left("order"), Column.Left("placed"), Column.Left("item"), Column.Right("still to come"),
            Column.Left("expected"),
                Column.Left("state"));
        foreach (var order in view.Holdings.Orders.Open)
            foreach (var line in order.OpenLines)
                orders.Add(
                    order.Code, Dates.Text(order.PlacedOn), line.Item, line.Outstanding.ToText(view.Style),
                    line.ExpectedOn is { } day ? Dates.Text(day) : "-",
                    line.State(view.AsOf) + (order.IsPrepaid ? ", prepaid" : ""));
        if (orders.IsEmpty)
            return;
        output.WriteLine();
        output.WriteLine("On order");
        orders.WriteTo(output, view.Width);
    }
}
