using Ledger.Core.Baths;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>
/// What is different between two states of the same ledger: every bottle, box, bath and holder side, before and after.
/// </summary>
public static class HoldingsChange
{
    private const string Nothing = "-";

    /// <summary>The differences, each in the user's units.</summary>
    public static IReadOnlyList<Effect> Between(Holdings before, Holdings after)
    {
        var style = after.Settings.Style;
        return
        [
            .. Of(before.Containers, after.Containers, container => container.Code, Text),
            .. Of(before.Baths, after.Baths, bath => bath.Code, Worked),
            .. Of(Sides(before), Sides(after), side => side.Code, side => side.Text),
            .. Of(Boxes(before), Boxes(after), side => side.Code, side => side.Text),
            .. Of(before.Jugs, after.Jugs, jug => jug.Code, jug => jug.Held.ToText(style)),
        ];

        string Text(Container container) =>
            container.Held.ToText(style) + (container.OpenedOn is null ? ", sealed" : "");

        string Worked(Bath bath) => bath.WorkedWeighted.ToText(style)
            + (bath.TotalCapacity is { } capacity ? $" of {capacity.ToText(style)}" : "");
    }

    private static IEnumerable<Effect> Of<T>(IEnumerable<T> before, IEnumerable<T> after, Func<T, string> code,
        Func<T, string> text)
    {
        var was = before.ToDictionary(code, text);
        var isNow = after.ToDictionary(code, text);
        foreach (var (name, then) in was)
            if (isNow.GetValueOrDefault(name, Nothing) is var now && now != then)
                yield return new(name, then, now);
        foreach (var (name, now) in isNow.Where(pair => !was.ContainsKey(pair.Key)))
            yield return new(name, Nothing, now);
    }

    private static IEnumerable<(string Code, string Text)> Sides(Holdings holdings) =>
        holdings.Film.Holders.SelectMany(holder => holder.Sides)
            .Select(side => (side.Code, holdings.Film.In(side) switch
            {
                null => "empty",
                { Exposure: { } exposure } sheet => $"{sheet.Item}, exposed {exposure.Group}",
                var sheet => sheet.Item,
            }));

    private static IEnumerable<(string Code, string Text)> Boxes(Holdings holdings) =>
        holdings.Film.ExposedBoxes.Select(box => (box.Code, Counted.Of(holdings.Film.At(box.Place).Count(), "sheet")));
}
