namespace Ledger.Terminal.Tests.Fakes;

/// <summary>Small ledgers to look at.</summary>
internal static class Some
{
    public static readonly LocalDate Today = new(2026, 3, 15);
    private static readonly LocalDate Begin = new(2025, 9, 1);

    private static int _keys;

    /// <summary>Nothing was ever recorded.</summary>
    public static FakeLedger EmptyLedger() => new(Today);

    /// <summary>Film, developer and a pair of fixer baths; one session held; the first bath past its life.</summary>
    public static FakeLedger Ledger()
    {
        var ledger = new FakeLedger(Today);
        foreach (var item in new[] { Film, Developer, Fixer })
            ledger.Did(new ItemDefinition { Key = Key(), Date = Begin, Item = item });
        ledger.Did(new ProcessDefinition { Key = Key(), Date = Begin, Process = "tray", Steps = Steps });
        ledger.Did(Delivered("fen80", 2, 178) with { Currency = "EUR" });
        ledger.Did(Delivered("syrup", 0.089m, 42));
        ledger.Did(Delivered("tarnfix", 1, 15.90m));
        var first = new BathMixing
        {
            Key = Key(), Date = new(2025, 9, 14), Bath = "F4", Item = "tarnfix",
            WorkingVolume = Volume.FromMillilitres(1500),
        };
        ledger.Did(first);
        ledger.Did(first with { Key = Key(), Date = new(2026, 1, 25), Bath = "F5", PairedWith = "F4" });
        ledger.Did(new SessionLog
        {
            Key = Key(), Date = new(2026, 3, 8), Session = "S22", Process = "tray", Anyway = true,
            Lines = [new() { Item = "fen80", Sheets = 4, Group = "N" }],
        });
        return ledger;
    }

    /// <summary>Film alone, of which there is enough.</summary>
    public static FakeLedger QuietLedger()
    {
        var ledger = new FakeLedger(Today);
        ledger.Did(new ItemDefinition { Key = Key(), Date = Begin, Item = Film });
        ledger.Did(Delivered("fen80", 1, 178) with { Currency = "EUR" });
        return ledger;
    }

    private static Item Film { get; } = Products.Film("fen80", "Corvane Fen 80");

    private static Item Developer { get; } = Products.Developer("syrup", "Brackwater Syrup") with
    {
        MinimumOnHand = Quantity.Of(100, Unit.Millilitre),
    };

    private static Item Fixer { get; } = Products.Fixer("tarnfix", "Tarnbeck rapid fixer",
        "handbook") with { Keeping = new(WorkingFullDays: 180) };

    private static IReadOnlyList<ProcessStep> Steps { get; } =
    [
        new()
        {
            Number = 1, Role = ItemRole.Developer, Item = "syrup", Dilution = Dilution.Parse("1+49"),
            WorkingVolume = Volume.FromMillilitres(1250), Per = StepPer.Batch,
        },
        new() { Number = 2, Role = ItemRole.Fixer, Item = "tarnfix", Use = StepUse.Reused },
    ];

    private static Delivery Delivered(string item, decimal packs, decimal price) => new()
    {
        Key = Key(), Date = Begin,
        Lines = [new() { Item = item, Packs = packs, Price = Money.Of(price),
            Storage = item == "fen80" ? "shelf" : "" }],
    };

    public static string Key() => $"k{Interlocked.Increment(ref _keys)}";

    /// <summary>Posts what must be accepted.</summary>
    public static void Did(this FakeLedger ledger, Entry entry)
    {
        var outcome = ledger.Post(entry);
        Assert.True(outcome is Posted, (outcome as NotPosted)?.Refusal.Sentence);
    }

    /// <summary>Throws a sealed pack's worth of film away, so that the journal has one more entry.</summary>
    public static Discard ADiscard(string what, Quantity quantity) =>
        new() { Key = Key(), Date = Today, What = what, Quantity = quantity, Reason = "fogged" };
}
