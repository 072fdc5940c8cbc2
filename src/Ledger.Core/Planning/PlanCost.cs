using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Planning;

/// <summary>What a session will cost: the very lots that are drawn, and the baths' share by area.</summary>
/// <param name="Film">The film.</param>
/// <param name="Developer">The developer.</param>
/// <param name="OtherChemistry">The other one-shot chemistry.</param>
/// <param name="Baths">The share of the bath that the area uses up.</param>
/// <param name="Supplies">The supplies.</param>
/// <param name="Sheets">The sheets it is shared by.</param>
/// <param name="IsComplete">Whether everything has a price: what is short has none yet.</param>
public sealed record PlanCost(Money Film, Money Developer, Money OtherChemistry, Money Baths, Money Supplies, int Sheets, bool IsComplete)
{
    /// <summary>All of it.</summary>
    public Money Total => Film + Developer + OtherChemistry + Baths + Supplies;

    /// <summary>The same for one sheet.</summary>
    public Money PerSheet => Total.Per(Sheets) ?? Money.Zero;

    /// <summary>Adds up the uses of a session.</summary>
    public static PlanCost Of(
        IReadOnlyList<PlannedUse> uses, IEnumerable<BathOutlook> baths, IReadOnlyList<PlannedBatch> batches, int sheets)
    {
        var known = batches.SelectMany(batch => batch.Sheets).Sum(sheet => sheet.Known?.Cost.Millionths ?? 0);
        Money Sum(Func<Item, bool> which) => new(uses.Where(use => which(use.Item)).Sum(use => use.Cost.Millionths));
        var outlooks = baths.Where(bath => bath.IsFirst).ToList();
        return new(
            Sum(item => item.Kind == ItemKind.Film) + new Money(known),
            Sum(item => item is { Kind: ItemKind.Chemical, Role: ItemRole.Developer }),
            Sum(item => item.Kind == ItemKind.Chemical && item.Role != ItemRole.Developer),
            new(outlooks.Sum(bath => bath.Share.Millionths)),
            Sum(item => item.Kind == ItemKind.Supply),
            sheets,
            uses.All(use => use.IsEnough) && outlooks.All(bath => bath.Bath is not null));
    }
}
