using Ledger.Core.Journal.Entries;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>A count posts the difference between what is there and what the book says.</summary>
internal static class CountRules
{
    public static void Post(StockCount count, Draft draft)
    {
        var reason = Require.Reason(count.Reason);
        Require.That(count.Found.Base >= 0, "a count cannot be negative");
        var item = draft.Holdings.Item(count.What);
        var containers = item is not null ? draft.ContainersOf(item).ToList() : [draft.Container(count.What)];
        item ??= draft.Item(containers[0].Lot.Item);
        Require.Unit(item, count.Found);
        var book = item.Of(containers.Sum(container => container.Held.Base));
        var style = draft.Style;
        var difference = count.Found - book;
        Require.That(!difference.IsZero, $"{count.What} holds {book.ToText(style)} in the book too; there is nothing to post");

        if (difference.Base < 0)
            draft.Take(item, item.Of(-difference.Base), ContainerName(item, count), Places.LostOrGained, booksDifference: false);
        else
        {
            Require.That(containers.Count > 0, $"no container of {item.Code} holds anything; record a receipt instead");
            draft.Find(containers[0], difference);
        }

        var sign = difference.Base > 0 ? "+" : "";
        draft.Summary = $"counted {count.What}: {count.Found.ToText(style)}, {sign}{difference.ToText(style)}, {reason}";
    }

    private static string? ContainerName(Item item, StockCount count) =>
        item.Code.Equals(count.What.Trim(), StringComparison.OrdinalIgnoreCase) ? null : count.What;
}
