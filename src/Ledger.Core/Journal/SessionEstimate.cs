using Ledger.Core.Costing;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>
/// What a session would cost with the very lots that are reached for today, and the bath's share by area.
/// </summary>
/// <param name="Sheets">The sheets.</param>
/// <param name="Film">The film.</param>
/// <param name="Developer">The developer.</param>
/// <param name="OtherChemistry">The other one-shot chemistry.</param>
/// <param name="Baths">The part of the bath that the area uses up.</param>
/// <param name="Supplies">The supplies.</param>
public sealed record SessionEstimate(long Sheets, Money Film, Money Developer, Money OtherChemistry,
    Money Baths, Money Supplies)
{
    /// <summary>Whether all that would be used has a price.</summary>
    public bool IsComplete { get; init; } = true;

    /// <summary>All of it.</summary>
    public Money Total => Film + Developer + OtherChemistry + Baths + Supplies;

    /// <summary>The same for one sheet; null without sheets.</summary>
    public Money? PerSheet => Total.Per(Sheets);

    /// <summary>Reads what a posting would move.</summary>
    /// <param name="posting">The session, posted or only previewed.</param>
    /// <param name="holdings">What the ledger held before.</param>
    public static SessionEstimate Of(Posting posting, Holdings holdings)
    {
        var items = holdings.Containers.GroupBy(container => container.Lot.Id)
            .ToDictionary(group => group.Key, group => holdings.Item(group.First().Lot.Item));
        var priced = holdings.Containers.Select(container => container.Lot)
            .Concat(holdings.Film.Sheets.Select(sheet => sheet.Lot))
            .DistinctBy(lot => lot.Id).ToDictionary(lot => lot.Id, lot => lot.IsPriced);
        Money Sum(PlaceId to, Func<Item, bool> which) => new(posting.Movements
            .Where(movement => movement.To == to && items.GetValueOrDefault(movement.Lot) is { } item && which(item))
            .Sum(movement => movement.Value.Millionths));
        var film = posting.Movements.Where(movement => movement.To == Places.FiledNegatives
            || movement.To == Places.Rejects).ToList();
        return new(
            film.Sum(movement => movement.Quantity),
            new(film.Sum(movement => movement.Value.Millionths)),
            Sum(Places.UsedUp, item => item is { Kind: ItemKind.Chemical, Role: ItemRole.Developer }),
            Sum(Places.UsedUp, item => item.Kind == ItemKind.Chemical && item.Role != ItemRole.Developer),
            new(posting.Facts.OfType<BathWorked>().Where(worked => worked.IsFirst)
                .Sum(worked => PartOf(worked, holdings).Millionths)),
            Sum(Places.UsedUp, item => item.Kind == ItemKind.Supply))
        {
            IsComplete = posting.Movements.All(movement => priced.GetValueOrDefault(movement.Lot, true)),
        };
    }

    private static Money PartOf(BathWorked worked, Holdings holdings)
    {
        if (holdings.Bath(worked.Place) is not { TotalCapacity: { } capacity } bath)
            return Money.Zero;
        var share = new BathShare(bath.Code, bath.Value, capacity);
        return share.UsedUpBy(bath.WorkedWeighted + worked.Weighted) - share.UsedUpBy(bath.WorkedWeighted);
    }
}
