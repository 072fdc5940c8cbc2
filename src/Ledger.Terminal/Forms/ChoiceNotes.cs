using Ledger.Terminal.Blocks;

namespace Ledger.Terminal.Forms;

/// <summary>
/// What a person needs to know of a name to choose it: what is left of a bath, what is in a box and until when it is
/// good.
/// </summary>
internal static class ChoiceNotes
{
    /// <summary>The note beside a name; empty where there is nothing to say.</summary>
    public static string Of(string name, Holdings holdings)
    {
        var style = holdings.Settings.Style;
        if (holdings.Bath(name) is { } bath)
        {
            var reading = new BathReading(bath, holdings.AsOf);
            return Joined(
                BathBlocks.State(reading, holdings), reading.Remaining is { } left ? $"{left.ToText(style)} left" : "",
                Good(reading.GoodUntil?.Date));
        }

        if (holdings.Container(name) is { } box)
            return Joined(
                box.Held.ToText(style), box.IsSealed ? "sealed" : "open",
                Good(box.GoodUntil(holdings.Item(box.Lot.Item)!.Keeping)?.Date), box.Storage);
        if (holdings.Item(name) is { } item)
            return item.Name;
        if (holdings.Jug(name) is { } jug)
            return Joined(jug.Contents, $"{jug.Contents}, {jug.Room.ToText(style)} fit in");
        if (holdings.Film.Side(name) is { } side)
            return holdings.Film.In(side) is { } sheet
                ? Joined(sheet.Item, sheet.Exposure is { } exposed ? $"exposed {exposed.Group}" : "loaded")
                : "empty";
        if (holdings.Film.ExposedBox(name) is { } exposedBox)
            return Counted.Of(holdings.Film.At(exposedBox.Place).Count(), "exposed sheet");
        if (holdings.Film.Holder(name) is { } holder)
            return holder.Format.Code;
        if (holdings.Orders.Order(name) is { } order)
            return Joined($"placed {Dates.Text(order.PlacedOn)}", order.Supplier);
        if (holdings.Process(name) is { } process)
            return Counted.Of(process.Steps.Count, "step");
        return holdings.Plans.FirstOrDefault(plan => plan.Name == name) is { } planned
            ? $"for {Dates.Text(planned.On)}"
            : "";
    }

    private static string Good(NodaTime.LocalDate? until) => until is { } day ? $"good until {Dates.Text(day)}" : "";

    private static string Joined(params IEnumerable<string> parts) =>
        string.Join(", ", parts.Where(part => part.Length > 0));
}
