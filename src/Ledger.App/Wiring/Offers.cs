namespace Ledger.App.Wiring;

/// <summary>The names in the ledger that commands accept, for completion.</summary>
internal static class Offers
{
    private const int Latest = 200;

    public static IEnumerable<string> Items(ILedger ledger, Holdings holdings, ParseResult line) => holdings.ItemCodes;

    public static IEnumerable<string> Films(ILedger ledger, Holdings holdings, ParseResult line) =>
        holdings.ItemsOf(ItemKind.Film).Select(item => item.Code);

    /// <summary>Films, and the boxes of them.</summary>
    public static IEnumerable<string> FilmBoxes(ILedger ledger, Holdings holdings, ParseResult line) =>
        Films(ledger, holdings,
            line).SelectMany(film => holdings.ContainersOf(film).Select(box => box.Code).Prepend(film));

    public static IEnumerable<string> Baths(ILedger ledger, Holdings holdings, ParseResult line) =>
        holdings.Baths.Select(bath => bath.Code);

    public static IEnumerable<string> Containers(ILedger ledger, Holdings holdings, ParseResult line) =>
        holdings.Containers.Select(one => one.Code);

    public static IEnumerable<string> Jugs(ILedger ledger, Holdings holdings, ParseResult line) =>
        holdings.Jugs.Select(jug => jug.Code);

    public static IEnumerable<string> Plans(ILedger ledger, Holdings holdings, ParseResult line) =>
        holdings.Plans.Select(plan => plan.Name);

    public static IEnumerable<string> Processes(ILedger ledger, Holdings holdings, ParseResult line) =>
        holdings.Processes.Select(process => process.Name);

    public static IEnumerable<string> Groups(ILedger ledger, Holdings holdings, ParseResult line) =>
        holdings.Film.Sheets.Select(sheet => sheet.Exposure?.Group ?? "").Where(group => group.Length > 0)
            .Concat(["N", "N-1", "N+1"]);

    public static IEnumerable<string> Sides(ILedger ledger, Holdings holdings, ParseResult line) =>
        holdings.Film.Holders.SelectMany(holder => holder.Sides).Select(side => side.Code);

    public static IEnumerable<string> Holders(ILedger ledger, Holdings holdings, ParseResult line) =>
        holdings.Film.Names.Select(holder => holder.Code).Concat(Sides(ledger, holdings, line));

    public static IEnumerable<string> Sessions(ILedger ledger, Holdings holdings, ParseResult line) =>
        ledger.Sessions(holdings.AsOf, null, Latest).Select(session => session.Session);

    public static IEnumerable<string> EmulsionNumbers(ILedger ledger, Holdings holdings, ParseResult line) =>
        ledger.Cards(new SheetSearch(), holdings.AsOf).Select(card => card.Emulsion);

    /// <summary>Negatives, and holder sides with a sheet in them.</summary>
    public static IEnumerable<string> Sheets(ILedger ledger, Holdings holdings, ParseResult line) =>
        ledger.Cards(new SheetSearch(), holdings.AsOf).Select(card => card.Name).Concat(Sides(ledger, holdings, line));

    /// <summary>Bottles, baths and jugs, and the items whose bottles are meant.</summary>
    public static IEnumerable<string> Bottles(ILedger ledger, Holdings holdings, ParseResult line) =>
        [.. Containers(ledger, holdings, line), .. Baths(ledger, holdings, line), .. Jugs(ledger, holdings, line),
            .. Items(ledger, holdings, line)];

    /// <summary>All that can be traced.</summary>
    public static IEnumerable<string> Traceable(ILedger ledger, Holdings holdings, ParseResult line) =>
    [
        .. Sheets(ledger, holdings, line), .. Containers(ledger, holdings, line), .. Baths(ledger, holdings, line),
        .. Holders(ledger, holdings, line), .. Sessions(ledger, holdings, line), .. Plans(ledger, holdings, line),
        .. EmulsionNumbers(ledger, holdings, line),
    ];
}
