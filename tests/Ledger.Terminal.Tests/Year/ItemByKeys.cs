using static Ledger.Terminal.Tests.Year.YearByKeys;

namespace Ledger.Terminal.Tests.Year;

/// <summary>The keys that write an item down.</summary>
internal static class ItemByKeys
{
    public static void Type(Item item, Typist typist) => typist.On("2n").Fill(
    [
        ("Kind", item.Kind.Name()), ("Item", item.Code), ("Name", item.Name), .. item.Kind switch
        {
            ItemKind.Film => Film(item),
            ItemKind.Chemical => Chemical(item),
            _ => [("Pack", Text(item.Pack.Value))],
        },
        ("Delivery days", Text(item.LeadTimeDays)), ("Service level", Text(item.ServiceLevel)),
        ("Minimum", Text(item.MinimumOnHand?.Value)), ("Cautions", item.Cautions),
    ]);

    private static (string, string)[] Film(Item item) =>
    [
        ("Format", item.Format!.Code), ("Role", item.Role.Name()), ("Pack", Text(item.Pack.Value)),
        ("Fixer factor", item.FixerFactorThousandths == 1000 ? "" : Text(item.FixerFactorThousandths / 1000m)),
        ("Days sealed", Text(item.Keeping.SealedDays)), ("Formula", item.Formula),
    ];

    private static (string, string)[] Chemical(Item item) =>
    [
        ("Role", item.Role.Name()), ("Pack", Text(item.Pack.Value)), ("Unit", item.Unit.Name()),
        ("Dilution", item.Dilution?.Text ?? ""), ("Least ml", Text(item.MinimumPer80SquareInches?.Millilitres)),
        ("Capacity, sq in/litre", Text(item.Capacity?.PerLitre.SquareInches)), ("Basis", item.Capacity?.Basis ?? ""),
        ("Other bases", string.Join("; ",
            item.OtherCapacities.Select(other => $"{Text(other.PerLitre.SquareInches)} {other.Basis}"))),
        ("Density", Text(item.Density?.GramsPerMillilitre)), ("Not drawn", Text(item.DeadVolume?.Value)),
        ("Indicator", item.Indicator ?? ""), ("Replenisher", Text(item.ReplenisherPer80SquareInches?.Millilitres)),
        ("Ceiling %", Text(item.ReplenisherCeilingPercent)), ("Mixed from", item.StockOf ?? ""),
        .. Keeping(item.Keeping), ("Formula", item.Formula),
    ];

    private static (string, string)[] Keeping(KeepingLimits limits) =>
    [
        ("Days sealed", Text(limits.SealedDays)), ("Opened", Text(limits.OpenedFullDays)),
        ("Below half", Text(limits.OpenedPartDays)), ("Days mixed", Text(limits.WorkingFullDays)),
        ("Part-full", Text(limits.WorkingPartDays)), ("Days, lid", Text(limits.FloatingLidDays)),
        ("Hours in a tray", Text(limits.TrayHours)),
    ];
}
