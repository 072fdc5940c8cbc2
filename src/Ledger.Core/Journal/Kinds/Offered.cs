using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Kinds;

/// <summary>What the ledger can offer for a field, where several kinds offer the same.</summary>
internal static class Offered
{
    /// <summary>The baths in use, discarded ones left out.</summary>
    public static IEnumerable<string> Baths(FieldValues read, Holdings holdings) => holdings.Baths.Select(bath => bath.Code);

    /// <summary>The films that come in sheets.</summary>
    public static IEnumerable<string> SheetFilms(FieldValues read, Holdings holdings) =>
        holdings.Items.Where(item => item is { Kind: ItemKind.Film, Unit: Measures.Unit.Sheet }).Select(item => item.Code);

    /// <summary>All items.</summary>
    public static IEnumerable<string> Items(FieldValues read, Holdings holdings) => holdings.Items.Select(item => item.Code);

    /// <summary>The containers that hold something.</summary>
    public static IEnumerable<string> Containers(FieldValues read, Holdings holdings) => holdings.Containers.Select(one => one.Code);

    /// <summary>The waste jugs that are not handed over.</summary>
    public static IEnumerable<string> Jugs(FieldValues read, Holdings holdings) => holdings.Jugs.Select(jug => jug.Code);
}
