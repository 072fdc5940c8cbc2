using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Reordering;
using Ledger.Core.Stock;

namespace Ledger.Core.Notices;

/// <summary>What needs the user on a day, most pressing first.</summary>
public static class TodayReading
{
    private static readonly Comparer<Notice> _byUrgency = Comparer<Notice>.Create((one, other) =>
        one.Severity != other.Severity ? one.Severity.CompareTo(other.Severity)
        : one.Kind != other.Kind ? one.Kind.CompareTo(other.Kind)
        : Nullable.Compare(one.By, other.By) is not 0 and var byDay ? byDay
        : StringComparer.OrdinalIgnoreCase.Compare(one.About, other.About));

    /// <summary>The notices for what the ledger holds, on the day it stands for.</summary>
    public static IReadOnlyList<Notice> Of(Holdings holdings) => Of(holdings, []);

    /// <summary>The same with what is to be ordered.</summary>
    public static IReadOnlyList<Notice> Of(Holdings holdings, IReadOnlyCollection<ReorderReading> reorder) =>
        [.. All(holdings, reorder).Where(notice => SnoozeOf(notice, holdings) is null)];

    /// <summary>The notices that are quiet on the day, each with until when and why.</summary>
    public static IReadOnlyList<(Notice Notice, Snooze Snooze)> Snoozed(Holdings holdings,
        IReadOnlyCollection<ReorderReading> reorder) =>
        !holdings.HasSnoozes ? [] :
    [
        .. All(holdings, reorder).Select(notice => (Notice: notice, Snooze: SnoozeOf(notice, holdings)))
            .Where(one => one.Snooze is not null).Select(one => (one.Notice, one.Snooze!)),
    ];

    private static Snooze? SnoozeOf(Notice notice, Holdings holdings) => holdings.SnoozeOf(notice.Kind, notice.About);

    private static IEnumerable<Notice> All(Holdings holdings, IReadOnlyCollection<ReorderReading> reorder) =>
    [
        .. BathNotices.Of(holdings).Concat(JugNotices.Of(holdings)).Concat(Containers(holdings))
            .Concat(Minimums(holdings, reorder))
            .Concat(FilmNotices.Of(holdings)).Concat(SuspicionNotices.Of(holdings))
            .Concat(BuyingNotices.LateOrders(holdings))
            .Concat(BuyingNotices.OrdersToPlace(holdings, reorder))
            .Concat(BuyingNotices.PriceRises(holdings, reorder))
            .Order(_byUrgency),
    ];

    /// <summary>The announced price rises only, with what buying before them would save.</summary>
    public static IReadOnlyList<Notice> PriceRises(ILedger ledger, Holdings holdings) =>
        holdings.Orders.PriceRises.Any()
            ? [.. BuyingNotices.PriceRises(holdings, ReorderReading.InUse(ledger, holdings))]
            : [];

    private static IEnumerable<Notice> Containers(Holdings holdings)
    {
        foreach (var container in holdings.Containers)
        {
            var item = holdings.Item(container.Lot.Item)!;
            if (container.GoodUntil(item.Keeping) is not { } good)
                continue;
            var days = good.DaysLeft(holdings.AsOf);
            if (days > holdings.Settings.WarnDays)
                continue;
            var held = container.Held.ToText(holdings.Settings.Style);
            var because = $"{held} left; good until {Dates.Text(good.Date)} (limited by {good.Reason})";
            yield return days < 0
                ? new(NoticeKind.Expired, item.Kind == ItemKind.Chemical ? Severity.Now : Severity.Soon, container.Code,
                    $"{container.Code} expired {Counted.Of(-days, "day")} "
                        + "ago", because, "discard it, or use it for tests only", good.Date)
                : new(NoticeKind.ExpiresSoon, Severity.Soon, container.Code,
                    days == 0 ? $"{container.Code} is good until today"
                        : $"{container.Code} expires in {Counted.Of(days, "day")}",
                    because, "use it first", good.Date);
        }
    }

    private static IEnumerable<Notice> Minimums(Holdings holdings, IReadOnlyCollection<ReorderReading> reorder)
    {
        foreach (var item in holdings.ItemsInUse.Where(item => item.MinimumOnHand is not null))
        {
            var reading = new ShelfReading(item, holdings.ContainersOf(item.Code), holdings.AsOf);
            var order = reorder.FirstOrDefault(one => one.Item.Code == item.Code);
            if (reading.IsBelowMinimum)
                yield return new(
                    NoticeKind.BelowMinimum, reading.Usable.IsZero ? Severity.Now : Severity.Soon, item.Code,
                    $"{item.Code}: {reading.Usable.ToText(holdings.Settings.Style)} usable, below your minimum",
                    $"your minimum is {item.MinimumOnHand!.Value.ToText(holdings.Settings.Style)}",
                    order is not null ? BuyingNotices.Step(order)
                        : $"order {item.Name}{(item.LeadTimeDays is { } lead
                            ? $"; it takes {Counted.Of(lead, "day")}" : "")}", null);
        }
    }
}
