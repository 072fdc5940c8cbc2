using Ledger.Core.Costing;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// What is likely a slip of the hand: each is asked about in a sentence before anything is written, by whatever way it
/// comes, and recorded when the user says that it is so. The limits are this project's choice.
/// </summary>
internal static class Slips
{
    private const int PriceTimes = 5, MostNamed = 6;
    private static readonly Volume LeastBath = Volume.FromMicrolitres(100_000);
    private static readonly Quantity LeastBottle = Quantity.Of(Volume.FromMicrolitres(10_000));

    /// <summary>What is doubtful about an entry, and what it would write.</summary>
    /// <param name="draft">The entry with what it would write.</param>
    /// <param name="today">The day of recording.</param>
    public static IEnumerable<string> In(Draft draft, LocalDate today) =>
    [
        .. LongAgo(draft.Entry, today), .. Tiny(draft), .. OverFull(draft), .. Arrivals(draft),
        .. Places(draft), .. Waiting(draft),
    ];

    /// <summary>An old date in a file is what files are for; one that somebody typed is mostly a wrong year.</summary>
    private static IEnumerable<string> LongAgo(Entry entry, LocalDate today)
    {
        if (entry.IsTyped && entry.Date < today.PlusYears(-1))
            yield return $"{Dates.Text(entry.Date)} is more than a year ago";
    }

    /// <summary>Litres that were typed where millilitres are read.</summary>
    private static IEnumerable<string> Tiny(Draft draft)
    {
        foreach (var bath in draft.Facts.OfType<BathMixed>().Select(mixed => mixed.Bath)
            .Where(bath => bath.WorkingVolume < LeastBath))
            yield return $"bath {bath.Code} would be of {bath.WorkingVolume.ToText(draft.Style)}, which covers no "
                + "sheet in a tray";
        foreach (var bottle in draft.Facts.OfType<ContainerArrived>()
            .Where(one => one.Size.Unit == Unit.Millilitre && one.Size < LeastBottle))
            yield return $"{bottle.Code} would be a bottle of {bottle.Size.ToText(draft.Style)}";
    }

    private static IEnumerable<string> OverFull(Draft draft)
    {
        if (draft.Entry is StockCount count && draft.Holdings.Container(count.What) is { } container
            && count.Found > container.Size)
            yield return $"{container.Code} holds {container.Size.ToText(draft.Style)} when it is full, and "
                + $"{count.Found.ToText(draft.Style)} were counted";
    }

    private static IEnumerable<string> Arrivals(Draft draft)
    {
        if (draft.Entry is not Delivery delivery)
            yield break;
        foreach (var lot in draft.Facts.OfType<LotReceived>().Select(received => received.Lot))
        {
            if (lot.ExpiresOn is { } expires && expires < delivery.Date)
                yield return $"{lot.Item} had expired on {Dates.Text(expires)} when it came";
            if (lot.Cost > Money.Zero && draft.Past.LastPrice(lot.Item, delivery.Date) is { } last
                && (lot.UnitCost.Millionths > PriceTimes * last.PerUnit.Millionths
                    || PriceTimes * lot.UnitCost.Millionths < last.PerUnit.Millionths))
                yield return $"a {lot.Quantity.Unit.Name()} of {lot.Item} would cost {Each(lot, draft)}, and it cost "
                    + $"{last.PerUnitText(draft.Style)} on {Dates.Text(last.Date)}";
        }
    }

    private static string Each(Lot lot, Draft draft) =>
        new LotPrice(lot.Item, lot.ReceivedOn, lot.Id, lot.Quantity, lot.Cost, null).PerUnitText(draft.Style);

    /// <summary>A name of a place that nearly is another is a second freezer that nobody has.</summary>
    private static IEnumerable<string> Places(Draft draft)
    {
        var names = (draft.Entry switch
        {
            Delivery delivery => delivery.Lines.Select(line => line.Storage.Trim()),
            StorageMove move => [move.To.Trim()],
            _ => [],
        }).Where(name => name.Length > 0 && !ColdPlaces.Usual.Contains(name, StringComparer.OrdinalIgnoreCase))
            .ToList();
        if (names.Count == 0)
            yield break;
        var known = draft.Holdings.Containers.SelectMany(container => container.Places).Select(place => place.Name)
            .Concat(ColdPlaces.Usual).Where(name => name.Length > 0)
            .Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        foreach (var name in names)
            if (!known.Contains(name, StringComparer.OrdinalIgnoreCase)
                && known.Find(one => Spelling.IsNear(name, one)) is { } meant)
                yield return $"nothing is kept in \"{name}\" so far, but in \"{meant}\"";
    }

    /// <summary>
    /// Sheets out of the box of a film and group of which exposed ones are waiting: the exposed ones were taken from
    /// the box when they were loaded, so they would be counted twice.
    /// </summary>
    private static IEnumerable<string> Waiting(Draft draft)
    {
        if (draft.Entry is not SessionLog session)
            yield break;
        foreach (var fresh in session.Lines.Where(line => line.From is null && line.Fate != Sessions.Fate.Dummy)
            .GroupBy(line => (Item: line.Item.ToUpperInvariant(), Group: line.Group.Trim().ToUpperInvariant()))
            .Select(same => same.First()))
        {
            var waiting = draft.Film.Waiting(fresh.Item, fresh.Group.Trim()).ToList();
            if (waiting.Count > 0)
                yield return $"{waiting.Count} exposed {Counted.Noun(waiting.Count, "sheet")} of {fresh.Item} "
                    + $"{fresh.Group} {(waiting.Count == 1 ? "is" : "are")} waiting, and {fresh.Sheets} would be taken "
                    + "out of a box of fresh film instead; "
                    + "name the waiting ones: \"from "
                    + $"{string.Join(", ", waiting.Select(draft.Film.Whereabouts).Distinct().Take(MostNamed))}\""
                    + (waiting.Count > MostNamed ? " and so on" : "");
        }
    }
}
