namespace Ledger.Core.Tests.Support;

/// <summary>Ledgers with something on the shelf.</summary>
internal static class Shelves
{
    /// <summary>Items and a process, and nothing bought.</summary>
    public static InMemoryLedger Empty()
    {
        var ledger = new InMemoryLedger();
        foreach (var item in new[] { Some.Film(), Some.Film("reed400", "4x5", 1500), Some.Syrup,
            Some.Fixer, Some.Stop, Some.Gloves })
            ledger.Post(Some.Definition(item));
        ledger.Post(Some.Process());
        return ledger;
    }

    /// <summary>
    /// Two boxes of fen80, a box of reed400, two bottles of syrup, one of fixer, stop and gloves; all from 10 January.
    /// </summary>
    public static InMemoryLedger Stocked()
    {
        var ledger = Empty();
        ledger.Post("delivery item=fen80 packs=2 price=162 shipping=14.50 date=2026-01-10");
        ledger.Post("delivery item=reed400 price=78 date=2026-01-10");
        ledger.Post("delivery item=syrup packs=2 price=42 date=2026-01-10");
        ledger.Post("delivery item=fix price=15.90 date=2026-01-10");
        ledger.Post("delivery item=stop price=9 date=2026-01-10");
        ledger.Post("delivery item=gloves price=11 date=2026-01-10");
        return ledger;
    }

    /// <summary>The same, with the fixer bath F1 of 1500 ml in use since 1 February.</summary>
    public static InMemoryLedger WithBath()
    {
        var ledger = Stocked();
        ledger.Post("bath bath=F1 date=2026-02-01");
        return ledger;
    }
}
