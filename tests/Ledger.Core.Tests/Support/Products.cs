namespace Ledger.Core.Tests.Support;

/// <summary>
/// Invented products of the usual sorts, in their usual packs; what a test needs besides it says itself.
/// </summary>
internal static class Products
{
    public static Item Film(string code, string name, string format = "8x10")
    {
        var size = Format.Parse(format);
        return new() { Code = code, Name = name, Kind = ItemKind.Film, Format = size, Unit = size.Unit,
            Pack = Quantity.Of(25, size.Unit) };
    }

    /// <summary>A litre of concentrate, used 1+49 and at least 6 ml for each 80 square inches.</summary>
    public static Item Developer(string code, string name) => Liquid(code, name, ItemRole.Developer, "1+49") with
    {
        MinimumPer80SquareInches = Volume.FromMillilitres(6),
    };

    /// <summary>A litre of concentrate, used 1+4, of which a litre fixes 2000 square inches.</summary>
    public static Item Fixer(string code, string name, string basis) => Liquid(code, name, ItemRole.Fixer, "1+4") with
    {
        Capacity = new(Area.FromSquareInches(2000), basis),
    };

    public static Item Supply(string code, string name, decimal pieces) => new()
    {
        Code = code, Name = name, Kind = ItemKind.Supply, Unit = Unit.Piece, Pack = Quantity.Of(pieces, Unit.Piece),
    };

    private static Item Liquid(string code, string name, ItemRole role, string dilution) => new()
    {
        Code = code, Name = name, Kind = ItemKind.Chemical, Role = role, Unit = Unit.Millilitre,
        Pack = Quantity.Of(1000, Unit.Millilitre), Dilution = Dilution.Parse(dilution),
    };
}
