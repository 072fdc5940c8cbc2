namespace Ledger.Storage.Tests.Support;

/// <summary>Valid entries in which a test sets only what it is about.</summary>
public static class Some
{
    private static int _keys;

    public static LocalDate Day(int month, int day) => new(2025, month, day);

    public static string Key() => $"key-{Interlocked.Increment(ref _keys)}";

    public static Item Film(string code = "pan", int weight = 1000) =>
        Products.Film(code, "Pan film") with { FixerFactorThousandths = weight };

    public static Item Syrup() =>
        Products.Developer("syrup", "Syrup developer") with { Keeping = new(OpenedFullDays: 540, OpenedPartDays: 180) };

    public static Item Fixer() =>
        Products.Fixer("fix", "Rapid fixer", "handbook") with { Keeping = new(WorkingFullDays: 180) };

    public static Item Gloves() => Products.Supply("gloves", "Gloves", 100);

    public static ItemDefinition Define(Item item) => new() { Key = Key(), Date = Day(1, 1), Item = item };

    public static ProcessDefinition Process() => new()
    {
        Key = Key(), Date = Day(1, 1), Process = "tray",
        Steps =
        [
            new() { Number = 1, Role = ItemRole.Developer, Item = "syrup", WorkingVolume = Volume.FromMillilitres(1250),
                Dilution = Dilution.Parse("1+49"), Per = StepPer.Batch },
            new() { Number = 2, Role = ItemRole.Fixer, Item = "fix", Use = StepUse.Reused,
                Minutes = 5.5m, Note = "both trays" },
            new() { Number = 3, Role = ItemRole.Other, Item = "gloves", Amount = new(1, Unit.Piece) },
        ],
    };

    public static Delivery Delivery(string item, decimal packs = 1, decimal price = 100, int month = 1,
        string? order = null) => new()
    {
        Key = Key(), Date = Day(month, 2), Currency = "EUR",
        Lines = [new() { Item = item, Packs = packs, Price = Money.Of(price), Order = order }],
    };

    public static BathMixing Bath(string bath = "F1", string? pairedWith = null, int month = 2) => new()
    {
        Key = Key(), Date = Day(month, 1), Bath = bath, Item = "fix", WorkingVolume = Volume.FromMillilitres(1500),
        PairedWith = pairedWith,
    };

    public static SessionLog Session(string session = "S01", int sheets = 4, Fate fate = Fate.Negative,
        string? bath = "F1", int month = 3) => new()
    {
        Key = Key(), Date = Day(month, 1), Session = session, Process = "tray", Bath = bath,
        Lines = [new() { Item = "pan", Sheets = sheets, Group = "N", Fate = fate,
            Developer = Volume.FromMillilitres(25), Note = "a line" }],
    };

    /// <summary>A ledger with film, developer, fixer and gloves on the shelf, and one bath.</summary>
    public static void Stock(TemporaryLedger ledger)
    {
        foreach (var item in new[] { Film(), Syrup(), Fixer(), Gloves() })
            ledger.Accept(Define(item));
        ledger.Accept(Process());
        ledger.Accept(Delivery("pan", 2, 162.50m));
        ledger.Accept(Delivery("syrup", 1, 42m));
        ledger.Accept(Delivery("fix", 1, 15.90m));
        ledger.Accept(Delivery("gloves", 1, 22m));
        ledger.Accept(Bath());
    }
}
