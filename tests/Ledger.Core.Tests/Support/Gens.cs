using CsCheck;

namespace Ledger.Core.Tests.Support;

/// <summary>Arbitrary valid values for properties.</summary>
internal static class Gens
{
    public static Gen<LocalDate> Date { get; } = Gen.Int[0,
        73_000].Select(days => new LocalDate(1950, 1, 1).PlusDays(days));

    public static Gen<Volume> Volume { get; } = Gen.Long[0,
        100_000_000_000].Select(Core.Measures.Volume.FromMicrolitres);

    public static Gen<Area> Area { get; } = Gen.Long[0, 1_000_000_000_000].Select(Core.Measures.Area.FromHundredths);

    public static Gen<Money> Money { get; } = Gen.Long[-1_000_000_000_000_000,
        1_000_000_000_000_000].Select(amount => new Money(amount));

    public static Gen<Unit> Unit { get; } = Gen.Enum<Unit>();

    public static Gen<Quantity> Quantity { get; } =
        Gen.Select(Gen.Long[-1_000_000_000_000, 1_000_000_000_000], Unit, (amount, unit) => new Quantity(amount, unit));

    /// <summary>Two or three parts with up to six decimals; the first is never nothing.</summary>
    public static Gen<Dilution> Dilution { get; } = Gen.Select(
        Part(1), Gen.OneOf(Part(0).Array[1], Part(0).Array[2]),
        (first, others) => Core.Measures.Dilution.Parse(string.Join('+', [first, .. others])));

    public static Gen<Format> Format { get; } = Gen.Select(
        Gen.Decimal[0.1m, 30m].Select(side => Math.Round(side, 2)),
        Gen.Decimal[0.1m, 30m].Select(side => Math.Round(side, 2)),
        Gen.OneOf(Gen.Const(""), Gen.Const("in"), Gen.Const("cm")),
        (width, height,
            unit) => Core.Measures.Format.Parse($"{Scaled.ToText(width, 2)}x{Scaled.ToText(height, 2)}{unit}"));

    public static Gen<KeepingLimits> Limits { get; } = Gen.Select(
        Days, Days, Days, Days, (sealedFor, full, part, mixed) => new KeepingLimits(sealedFor, full, part, mixed));

    public static Gen<LocalDate?> MaybeDate { get; } = Gen.Select(Gen.Bool, Date,
        (isThere, date) => isThere ? date : (LocalDate?)null);

    private static Gen<int?> Days =>
        Gen.Select(Gen.Bool, Gen.Int[1, 2000], (isThere, days) => isThere ? days : (int?)null);

    private static Gen<string> Part(long least) => Gen.OneOf(
        Gen.Long[least, 100_000].Select(whole => whole.ToString(System.Globalization.CultureInfo.InvariantCulture)),
        Gen.Long[least, 100_000_000].Select(millionths => Scaled.ToText(millionths / 1_000_000m, 6)));
}
