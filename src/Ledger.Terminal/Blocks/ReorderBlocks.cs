using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Blocks;

/// <summary>When to order an item, in a details pane.</summary>
internal static class ReorderBlocks
{
    /// <summary>As many moves as the chart's past can hold.</summary>
    public const int MovesRead = 500;

    private const int Weeks = 26;

    /// <summary>What to do and what it rests on.</summary>
    public static Block Facts(ReorderReading reading, Holdings holdings)
    {
        var style = holdings.Settings.Style;
        return Block.Facts($"{reading.Item.Code}: {Advice(reading)}", [
            ("Reason", reading.Basis),
            ("Usable", reading.Usable.ToText(style) + Cover(reading)),
            ("Enough for", EnoughFor.Text(reading.EnoughFor)),
            ("On order", reading.OnOrder.IsZero ? null : reading.OnOrder.ToText(style)),
            ("Planned", reading.Planned.IsZero ? null : reading.Planned.ToText(style)),
            ("Order at", reading.ReorderPoint.ToText(style)),
            ("Safety stock", Safety(reading)),
            ("Textbook", reading.NormalReorderPoint is { } point
                ? $"{point.ToText(style)} by the normal distribution"
                : null),
            ("Delivery", Delivery(reading)),
            ("Runs out", reading is { RunsOutOn: { } day, RunsOutText: { } text }
                ? $"{text}: {ScreenText.Away(Period.DaysBetween(reading.Today, day))}" : null),
            ("Price", reading.PriceRise is { } rise
                ? $"{rise.PercentText} more from {Dates.Text(rise.From)}{Before(reading)}"
                : null),
        ]);
    }

    /// <summary>The stock so far and as it is expected.</summary>
    public static Block Chart(ReorderReading reading, IReadOnlyList<ItemMove> moves) =>
        new("Stock by week", width => new StockChart(
            [.. Enumerable.Range(0, Weeks).Reverse().Select(ago => On(reading, moves, ago))],
            [.. Enumerable.Range(1, Weeks)
                .Select(week => Math.Max(0, (decimal)reading.Path.On(reading.Today.PlusWeeks(week))))],
            reading.ReorderPoint.Base,
            [.. reading.Lines.Select(
                found => (Period.DaysBetween(reading.Today, reading.ExpectedOn(found.Line)) - 1) / 7)],
            level => Whole(level, reading.Item).ToText(reading.Style)).Lines(width));

    /// <summary>A level on the axis, in whole millilitres, grams or pieces.</summary>
    private static Quantity Whole(decimal level, Item item) =>
        item.Of((long)Math.Round(level / item.Unit.BasePerUnit(), MidpointRounding.AwayFromZero)
            * item.Unit.BasePerUnit());

    /// <summary>The orders of which something is still to come.</summary>
    public static IEnumerable<Block> Orders(ReorderReading reading)
    {
        foreach (var (order, line) in reading.Lines)
            yield return Block.Facts($"Order {order.Code}", [
                ("Still to come", $"{line.Outstanding.ToText(reading.Style)} of {line.Ordered.ToText(reading.Style)}"),
                ("State", line.State(reading.Today) + (order.IsPrepaid ? ", prepaid" : "")),
                ("Placed",
                    $"{Dates.Text(order.PlacedOn)}{(order.Supplier.Length > 0 ? $" with {order.Supplier}" : "")}"),
                ("Expected", line.ExpectedOn is { } day ? Dates.Text(day) : null),
            ]);
    }

    private static string Advice(ReorderReading reading) => reading.Suggestion switch
    {
        null => "nothing to order",
        { OpensOn: { } opens } waiting =>
            $"order {Counted.Of(waiting.Packs, "pack")} when the window opens on {Dates.Text(opens)}",
        { IsNow: true } now => $"order {Counted.Of(now.Packs, "pack")} now{reading.LateText}",
        var later => $"order {Counted.Of(later.Packs, "pack")} by {Dates.Text(later.OrderBy)}",
    };

    /// <summary>The delivery time that counts, beside what was entered and what was seen.</summary>
    private static string Delivery(ReorderReading reading)
    {
        var (lead, seen) = (reading.LeadTime, reading.LeadTime.Observed);
        var range = seen.Count == 0
            ? ""
            : seen.Min() == seen.Max() ? Counted.Of(seen.Min(), "day") : $"{seen.Min()} to {seen.Max()} days";
        return lead.Source switch
        {
            LeadTimeSource.Observed =>
                $"{Counted.Of(lead.Days, "day")}, the mean of {seen.Count} deliveries that took {range}"
                    + (reading.Item.LeadTimeDays is { } entered ? $"; entered: {Counted.Of(entered, "day")}" : ""),
            _ => $"{Counted.Of(lead.Days, "day")}, {(lead.Source == LeadTimeSource.Entered ? "as entered" : "assumed")}"
                + (seen.Count == 0
                    ? ""
                    : $"; observed: {range}{(seen.Count == 1 ? "" : $" in {seen.Count} deliveries")}"),
        };
    }

    private static string Cover(ReorderReading reading) =>
        reading.CoverText is { } cover ? $", {cover} at the usual rate" : "";

    /// <summary>What is kept beyond the usual use, and how often the whole suffices.</summary>
    private static string? Safety(ReorderReading reading) =>
        reading is { SafetyStock: { } safety, ReachedLevel: { } reached }
            ? $"{Measured(safety, reading)} beyond the usual use; "
                + $"{Scaled.ToText(reached * 100, 1)} % of deliveries come in time"
            : null;

    private static string Measured(decimal amount, ReorderReading reading) =>
        reading.Item.Unit is Unit.Millilitre or Unit.Gram
            ? reading.Item.Of((long)(amount * reading.Item.Unit.BasePerUnit())).ToText(reading.Style)
            : $"{Scaled.ToText(amount, 1)} {reading.Item.Unit.Plural()}";

    private static string Before(ReorderReading reading) => reading.Suggestion is { PacksBeforeRise: > 0 and var packs }
        ? $"; {Counted.Of(packs, "pack")} before that carry you through the year after" : "";

    /// <summary>What was there so many weeks ago: what is there now, less what came and plus what went since.</summary>
    private static decimal? On(ReorderReading reading, IReadOnlyList<ItemMove> moves, int weeksAgo)
    {
        var day = reading.Today.PlusWeeks(-weeksAgo);
        if (moves.Count == MovesRead && moves[^1].Date > day)
            return null;
        return reading.OnHand.Base - moves.Where(move => move.Date > day).Sum(move => move.Change);
    }
}
