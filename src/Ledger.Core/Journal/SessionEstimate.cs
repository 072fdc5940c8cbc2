using Ledger.Core.Costing;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;
using NodaTime;

namespace Ledger.Core.Journal;

/// <summary>What a session would cost with the very lots that are reached for today, and the bath's share by area.</summary>
/// <param name="Sheets">The sheets.</param>
/// <param name="Film">The film.</param>
/// <param name="Developer">The developer.</param>
/// <param name="OtherChemistry">The other one-shot chemistry.</param>
/// <param name="Baths">The part of the bath that the area uses up.</param>
/// <param name="Supplies">The supplies.</param>
public sealed record SessionEstimate(long Sheets, Money Film, Money Developer, Money OtherChemistry, Money Baths, Money Supplies)
{
    /// <summary>All of it.</summary>
    public Money Total => Film + Developer + OtherChemistry + Baths + Supplies;

    /// <summary>The same for one sheet; null without sheets.</summary>
    public Money? PerSheet => Total.Per(Sheets);

    /// <summary>Another session like one that was held: the same films and groups, each a batch of its own.</summary>
    public static SessionLog Another(SessionRecord last, LocalDate date) => new()
    {
        Key = $"estimate after {last.Session}",
        Date = date,
        Session = $"after {last.Session}",
        Process = last.Process,
        Anyway = true,
        Lines =
        [
            .. last.Lines.Where(line => line.Fate != Fate.Dummy).GroupBy(line => (line.Item, line.Group))
                .Select(group => new SessionLine
                {
                    Item = group.Key.Item, Group = group.Key.Group, Sheets = (int)group.Sum(line => line.Sheets),
                }),
        ],
    };

    /// <summary>Reads what a posting would move.</summary>
    /// <param name="posting">The session, posted or only previewed.</param>
    /// <param name="holdings">What the ledger held before.</param>
    public static SessionEstimate Of(Posting posting, Holdings holdings)
    {
        var items = holdings.Containers.GroupBy(container => container.Lot.Id)
            .ToDictionary(group => group.Key, group => holdings.Item(group.First().Lot.Item));
        Money Sum(PlaceId to, Func<Item, bool> which) => new(posting.Movements
            .Where(movement => movement.To == to && items.GetValueOrDefault(movement.Lot) is { } item && which(item))
            .Sum(movement => movement.Value.Millionths));
        var film = posting.Movements.Where(movement => movement.To == Places.FiledNegatives || movement.To == Places.Rejects).ToList();
        return new(
            film.Sum(movement => movement.Quantity),
            new(film.Sum(movement => movement.Value.Millionths)),
            Sum(Places.UsedUp, item => item is { Kind: ItemKind.Chemical, Role: ItemRole.Developer }),
            Sum(Places.UsedUp, item => item.Kind == ItemKind.Chemical && item.Role != ItemRole.Developer),
            new(posting.Facts.OfType<BathWorked>().Where(worked => worked.IsFirst).Sum(worked => PartOf(worked, holdings).Millionths)),
            Sum(Places.UsedUp, item => item.Kind == ItemKind.Supply));
    }

    private static Money PartOf(BathWorked worked, Holdings holdings)
    {
        if (holdings.Bath(worked.Place) is not { TotalCapacity: { } capacity } bath)
            return Money.Zero;
        var share = new BathShare(bath.Code, bath.Value, capacity);
        return share.UsedUpBy(bath.WorkedWeighted + worked.Weighted) - share.UsedUpBy(bath.WorkedWeighted);
    }
}
