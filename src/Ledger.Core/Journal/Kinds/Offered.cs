using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Kinds;

/// <summary>What the ledger can offer for a field, where several kinds offer the same.</summary>
internal static class Offered
{
    /// <summary>The baths in use, discarded ones left out.</summary>
    public static IEnumerable<string> Baths(FieldValues read, Holdings holdings) =>
        holdings.Baths.Select(bath => bath.Code);

    /// <summary>The films that come in sheets.</summary>
    public static IEnumerable<string> SheetFilms(FieldValues read, Holdings holdings) =>
        holdings.ItemsOf(ItemKind.Film).Where(item => item.Unit == Measures.Unit.Sheet).Select(item => item.Code);

    /// <summary>All items.</summary>
    public static IEnumerable<string> Items(FieldValues read, Holdings holdings) => holdings.ItemCodes;

    /// <summary>The containers that hold something.</summary>
    public static IEnumerable<string> Containers(FieldValues read, Holdings holdings) =>
        holdings.Containers.Select(one => one.Code);

    /// <summary>The containers that may be drawn from: those under suspicion are left out.</summary>
    public static IEnumerable<string> Clear(FieldValues read, Holdings holdings) =>
        holdings.Containers.Where(one => one.Suspicion is null).Select(one => one.Code);

    /// <summary>The boxes of film, or of paper, that may be drawn from.</summary>
    public static IEnumerable<string> ClearBoxes(FieldValues read, Holdings holdings) => holdings.Containers
        .Where(box => box.Suspicion is null && holdings.Item(box.Lot.Item)?.Kind == ItemKind.Film)
            .Select(box => box.Code);

    /// <summary>The numbers that the makers gave what is left of deliveries.</summary>
    public static IEnumerable<string> Numbers(Holdings holdings) => holdings.Containers.Select(one => one.Lot)
        .Concat(holdings.Film.Sheets.Select(sheet => sheet.Lot)).Select(lot => lot.Batch)
            .Where(number => number.Length > 0)
        .Distinct(StringComparer.OrdinalIgnoreCase);

    /// <summary>The waste jugs that are not handed over.</summary>
    public static IEnumerable<string> Jugs(FieldValues read, Holdings holdings) =>
        holdings.Jugs.Select(jug => jug.Code);

    /// <summary>The films, in sheets or rolls.</summary>
    public static IEnumerable<string> Films(FieldValues read, Holdings holdings) =>
        holdings.ItemsOf(ItemKind.Film).Where(item => !item.IsPaper).Select(item => item.Code);

    /// <summary>The papers.</summary>
    public static IEnumerable<string> Papers(FieldValues read, Holdings holdings) =>
        holdings.ItemsOf(ItemKind.Film).Where(item => item.IsPaper).Select(item => item.Code);

    /// <summary>The chemicals.</summary>
    public static IEnumerable<string> Chemicals(FieldValues read, Holdings holdings) =>
        holdings.ItemsOf(ItemKind.Chemical).Select(item => item.Code);

    /// <summary>The boxes of film, or of paper, that hold something.</summary>
    public static IEnumerable<string> Boxes(FieldValues read, Holdings holdings) =>
        holdings.Containers.Where(box => holdings.Item(box.Lot.Item)?.Kind == ItemKind.Film).Select(box => box.Code);

    /// <summary>The processes.</summary>
    public static IEnumerable<string> Processes(FieldValues read, Holdings holdings) =>
        holdings.Processes.Select(process => process.Name);

    /// <summary>The open orders.</summary>
    public static IEnumerable<string> Orders(FieldValues read, Holdings holdings) =>
        holdings.Orders.Open.Select(order => order.Code);

    /// <summary>The formats that are known.</summary>
    public static IEnumerable<string> Formats(FieldValues read, Holdings holdings) =>
        holdings.Formats.All.Select(format => format.Code);

    /// <summary>The usual groups of development.</summary>
    public static IEnumerable<string> Groups(FieldValues read, Holdings holdings) => ["N", "N-1", "N-2", "N+1", "N+2"];

    /// <summary>The usual places to keep things.</summary>
    public static IEnumerable<string> Storages(FieldValues read, Holdings holdings) => Keeping.ColdPlaces.Usual;

    /// <summary>
    /// Boxes of exposed sheets, and the loaded sides that were exposed, of a film and a group; of all without them.
    /// </summary>
    public static IEnumerable<string> Exposed(Holdings holdings, string? film, string? group)
    {
        return
        [
            .. holdings.Film.ExposedBoxes.Where(box => Is(box.Item, film) && Is(box.Group, group))
                .Select(box => box.Code),
            .. holdings.Film.HoldersInUse.SelectMany(holder => holder.Sides)
                .Where(side => holdings.Film.In(side) is { Exposure: { } exposure } sheet && Is(sheet.Item, film)
                    && Is(exposure.Group, group))
                .Select(side => side.Code),
        ];

        static bool Is(string name, string? wanted) =>
            wanted is not { Length: > 0 } || name.Equals(wanted, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Where film lies outside its boxes: boxes of exposed sheets, and loaded sides.</summary>
    public static IEnumerable<string> FilmPlaces(FieldValues read, Holdings holdings) =>
    [
        .. holdings.Film.ExposedBoxes.Select(box => box.Code),
        .. holdings.Film.Sheets.Select(sheet => holdings.Film.Side(sheet.At)?.Code).OfType<string>(),
    ];
}
