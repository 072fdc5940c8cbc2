using System.Buffers;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Exchange.Import.Rows;

/// <summary>Quantities and capacities in a row.</summary>
internal static class RowQuantities
{
    private static readonly SearchValues<char> NumberOrBlank = SearchValues.Create("0123456789.,+- ");

    /// <summary>A quantity in a known unit.</summary>
    public static Quantity? Quantity(this Row row, string column, Unit unit) =>
        row.Scaled(column, unit.BasePerUnit(), FineEnough(unit)) is { } units ? new(units, unit) : null;

    /// <summary>A quantity that names its unit: 30 g.</summary>
    public static Quantity? QuantityWithUnit(this Row row, string column)
    {
        var text = row.Text(column);
        if (text.Length == 0)
            return null;
        var letters = text.AsSpan().IndexOfAnyExcept(NumberOrBlank);
        if (letters > 0
            && Named(text[letters..]) is { } unit
            && RowNumbers.Parse(text[..letters].TrimEnd()) is { } number
            && Core.Measures.Scaled.ToBase(number, unit.BasePerUnit()) is { } units)
            return new(units, unit);
        row.Refuse(column, $"accepted is a number with its unit, such as 30 g; the units are {string.Join(", ", Units.Names)}");
        return null;
    }

    /// <summary>A capacity in square inches per litre with its basis, from a pair of columns.</summary>
    public static Capacity? Capacity(this Row row, string column, string basis)
    {
        if (row.Number(column) is { } squareInches)
            return new(Area.FromSquareInches(squareInches), row.Text(basis));
        if (row.Text(column).Length == 0 && row.Text(basis).Length > 0)
            row.Refuse(basis, $"accepted is a basis only where {column} gives the figure");
        return null;
    }

    private static Unit? Named(string name) => Units.Named(name) ?? (name.EndsWith('s') ? Units.Named(name[..^1]) : null);

    private static string FineEnough(Unit unit) => unit.BasePerUnit() == 1
        ? $"accepted is a whole number of {unit.Name()}s"
        : $"accepted are {unit.Name()} with at most three decimals";

    /// <summary>A density in grams per millilitre, or null when the column is empty.</summary>
    public static Density? Density(this Row row, string column)
    {
        if (row.Number(column) is not { } number)
            return null;
        if (Core.Measures.Density.Of(number) is { } density)
            return density;
        row.Refuse(column, "accepted is a density from 0.5 to 5 grams per millilitre, in thousandths");
        return null;
    }

    /// <summary>Capacities on other bases: "1600 maker's; 1000 strict".</summary>
    public static IReadOnlyList<Capacity> Capacities(this Row row, string column)
    {
        var capacities = new List<Capacity>();
        foreach (var part in row.Text(column).Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var words = part.Split(' ', 2, StringSplitOptions.TrimEntries);
            if (words.Length == 2 && RowNumbers.Parse(words[0]) is > 0 and < 10_000_000 and var perLitre)
                capacities.Add(new(Area.FromSquareInches(perLitre), words[1]));
            else
                row.Refuse(
                    column, "accepted are square inches per litre and their basis, with semicolons between: 1600 maker's; 1000 strict");
        }

        return capacities.Count == 0 ? [] : capacities;
    }
}
