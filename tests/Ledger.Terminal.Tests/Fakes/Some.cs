using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;
using NodaTime;

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
        ledger.Did(new Delivery
        {
            Key = Key(), Date = Begin, Currency = "EUR",
            Lines = [new() { Item = "fen80", Packs = 2, Price = Money.Of(178), Storage = "freezer" }],
        });
        ledger.Did(new Delivery { Key = Key(), Date = Begin, Lines = [new() { Item = "syrup", Packs = 0.089m, Price = Money.Of(42) }] });
        ledger.Did(new Delivery { Key = Key(), Date = Begin, Lines = [new() { Item = "tarnfix", Packs = 1, Price = Money.Of(15.90m) }] });
        ledger.Did(new BathMixing
        {
            Key = Key(), Date = new(2025, 9, 14), Bath = "F4", Item = "tarnfix", WorkingVolume = Volume.FromMillilitres(1500),
        });
        ledger.Did(new BathMixing
        {
            Key = Key(), Date = new(2026, 1, 25), Bath = "F5", Item = "tarnfix", WorkingVolume = Volume.FromMillilitres(1500),
            PairedWith = "F4",
        });
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
        ledger.Did(new Delivery { Key = Key(), Date = Begin, Currency = "EUR", Lines = [new() { Item = "fen80", Packs = 1, Price = Money.Of(178) }] });
        return ledger;
    }

    private static Item Film { get; } = new()
    {
        Code = "fen80", Name = "Corvane Fen 80", Kind = ItemKind.Film, Format = Format.Parse("8x10"), Unit = Unit.Sheet,
        Pack = new(25, Unit.Sheet),
    };

    private static Item Developer { get; } = new()
    {
        Code = "syrup", Name = "Brackwater Syrup", Kind = ItemKind.Chemical, Role = ItemRole.Developer, Unit = Unit.Millilitre,
        Pack = Quantity.Of(1000, Unit.Millilitre), Dilution = Dilution.Parse("1+49"),
        MinimumPer80SquareInches = Volume.FromMillilitres(6), MinimumOnHand = Quantity.Of(100, Unit.Millilitre),
    };

    private static Item Fixer { get; } = new()
    {
        Code = "tarnfix", Name = "Tarnbeck rapid fixer", Kind = ItemKind.Chemical, Role = ItemRole.Fixer, Unit = Unit.Millilitre,
        Pack = Quantity.Of(1000, Unit.Millilitre), Dilution = Dilution.Parse("1+4"),
        Capacity = new(Area.FromSquareInches(2000), "handbook"), Keeping = new(WorkingFullDays: 180),
    };

    private static IReadOnlyList<ProcessStep> Steps { get; } =
    [
        new()
        {
            Number = 1, Role = ItemRole.Developer, Item = "syrup", Dilution = Dilution.Parse("1+49"),
            WorkingVolume = Volume.FromMillilitres(1250), Per = StepPer.Batch,
        },
        new() { Number = 2, Role = ItemRole.Fixer, Item = "tarnfix", Use = StepUse.Reused },
    ];

    public static string Key() => $"k{Interlocked.Increment(ref _keys)}";

    /// <summary>Posts what must be accepted.</summary>
    public static void Did(this FakeLedger ledger, Entry entry)
    {
        var outcome = ledger.Post(entry);
        Assert.True(outcome is Posted, outcome is NotPosted refused ? refused.Refusal.Sentence : "");
    }

    /// <summary>Throws a sealed pack's worth of film away, so that the journal has one more entry.</summary>
    public static Discard ADiscard(string what, Quantity quantity) =>
        new() { Key = Key(), Date = Today, What = what, Quantity = quantity, Reason = "fogged" };
}
