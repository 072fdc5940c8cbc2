using Ledger.Core.Stock;
using static Ledger.Terminal.Tests.Year.YearByKeys;

namespace Ledger.Terminal.Tests.Year;

/// <summary>The keys that write an item down.</summary>
internal static class ItemByKeys
{
    public static void Type(Item item, Typist typist) => typist.On("2n").Fill(
        ("Item", item.Code), ("name", item.Name), ("Kind", item.Kind.Name()), ("does", item.Role == default ? "" : item.Role.Name()),
        ("format", item.Format?.Code ?? ""), ("Pack", Text(item.Pack.Value)), ("counted in", Core.Measures.Units.Name(item.Unit)),
        ("dilution", item.Dilution?.Text ?? ""), ("Capacity", Text(item.Capacity?.PerLitre.SquareInches)), ("basis", item.Capacity?.Basis ?? ""),
        ("others", string.Join("; ", item.OtherCapacities.Select(other => $"{Text(other.PerLitre.SquareInches)} {other.Basis}"))),
        ("Least ml", Text(item.MinimumPer80SquareInches?.Millilitres)), ("replenisher ml", Text(item.ReplenisherPer80SquareInches?.Millilitres)),
        ("loads a fixer", item.FixerWeightThousandths == 1000 ? "" : Text(item.FixerWeightThousandths / 1000m)),
        ("Days", Text(item.Keeping.SealedDays)), ("opened", Text(item.Keeping.OpenedFullDays)), ("half full", Text(item.Keeping.OpenedPartDays)),
        ("Mixed", Text(item.Keeping.WorkingFullDays)), ("part full", Text(item.Keeping.WorkingPartDays)), ("lid", Text(item.Keeping.FloatingLidDays)),
        ("tray hours", Text(item.Keeping.TrayHours)), ("Delivery", Text(item.LeadTimeDays)), ("service", Text(item.ServiceLevel)),
        ("at least", Text(item.MinimumOnHand?.Value)), ("g per ml", Text(item.Density?.GramsPerMillilitre)), ("not drawn", Text(item.DeadVolume?.Value)),
        ("stock of", item.StockOf ?? ""), ("Formula", item.Formula), ("Cautions", item.Cautions));
}
