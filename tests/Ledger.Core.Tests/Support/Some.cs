namespace Ledger.Core.Tests.Support;

/// <summary>
/// Valid things of the trade, so that a test shows only what matters to it. All products are invented.
/// </summary>
internal static class Some
{
    private static int _keys;

    public static LocalDate Today { get; } = new(2026, 3, 15);

    public static LocalDate Earlier { get; } = new(2026, 1, 10);

    public static string Key() => $"key-{Interlocked.Increment(ref _keys)}";

    public static Item Film(string code = "fen80", string format = "8x10", int weight = 1000) =>
        Products.Film(code, $"Corvane {code}", format) with { FixerFactorThousandths = weight };

    public static Item Syrup { get; } = Products.Developer("syrup", "Brackwater Syrup") with
    {
        Keeping = new(SealedDays: 730, OpenedFullDays: 540, OpenedPartDays: 180),
    };

    public static Item Fixer { get; } = Products.Fixer("fix", "Tarnbeck rapid fixer",
        "own") with { Keeping = new(WorkingFullDays: 60) };

    public static Item Stop { get; } = new()
    {
        Code = "stop",
        Name = "Tarnbeck citric stop",
        Kind = ItemKind.Chemical,
        Role = ItemRole.Stop,
        Unit = Unit.Gram,
        Pack = Quantity.Of(500, Unit.Gram),
    };

    public static Item Gloves { get; } = Products.Supply("gloves", "Pair of gloves", 50);

    /// <summary>
    /// Syrup 1+49 in 1250 ml for each batch, 30 g of stop for each session, a fixer that is used again, gloves.
    /// </summary>
    public static IReadOnlyList<ProcessStep> Steps { get; } =
    [
        new()
        {
            Number = 1, Role = ItemRole.Developer, Item = "syrup", WorkingVolume = Volume.FromMillilitres(1250),
            Per = StepPer.Batch,
        },
        new() { Number = 2, Role = ItemRole.Stop, Item = "stop", Amount = Quantity.Of(30, Unit.Gram) },
        new() { Number = 3, Role = ItemRole.Fixer, Item = "fix", Use = StepUse.Reused },
        new() { Number = 4, Role = ItemRole.Other },
        new() { Number = 5, Role = ItemRole.Other, Item = "gloves", Amount = Quantity.Of(1, Unit.Piece) },
    ];

    /// <summary>The same with so many millilitres in the developer tray.</summary>
    public static IReadOnlyList<ProcessStep> StepsIn(decimal millilitres) =>
        [Steps[0] with { WorkingVolume = Volume.FromMillilitres(millilitres) }, .. Steps.Skip(1)];

    public static ProcessDefinition Process(string name = "pm", IReadOnlyList<ProcessStep>? steps = null) =>
        new() { Key = Key(), Date = Earlier, Process = name, Steps = steps ?? Steps };

    public static ItemDefinition Definition(Item item) => new() { Key = Key(), Date = Earlier, Item = item };

    public static Lot Lot(long id = 1, string item = "syrup", decimal quantity = 1000, decimal cost = 42,
        LocalDate? received = null) =>
        new(new(id), item, received ?? Earlier, Quantity.Of(quantity, Unit.Millilitre), Money.Of(cost), "", null, "");

    /// <summary>A bottle of syrup.</summary>
    public static Container Bottle(
        long place = 100, Lot? lot = null, decimal held = 1000, decimal value = 42, LocalDate? opened = null) => new(
        new(place), $"syrup/{place - 99}", lot ?? Lot(), Quantity.Of(1000, Unit.Millilitre),
        Quantity.Of(held, Unit.Millilitre), Money.Of(value), opened);

    /// <summary>A litre and a half of fixer for 3000 sq in.</summary>
    public static Bath Bath(decimal workedSquareInches = 0, LocalDate? mixed = null) => new()
    {
        Place = new(200),
        Code = "F1",
        Item = "fix",
        Role = ItemRole.Fixer,
        Material = BathMaterial.Film,
        WorkingVolume = Volume.FromMillilitres(1500),
        Dilution = Dilution.Parse("1+4"),
        MixedOn = mixed ?? Earlier,
        Capacity = new(Area.FromSquareInches(2000), "own"),
        Keeping = KeepingLimits.None,
        Worked = Area.FromSquareInches(workedSquareInches),
        WorkedWeighted = Area.FromSquareInches(workedSquareInches),
    };
}
