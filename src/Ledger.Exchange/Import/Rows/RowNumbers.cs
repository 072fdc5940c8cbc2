using System.Globalization;
using Ledger.Core.Measures;

namespace Ledger.Exchange.Import.Rows;

/// <summary>Numbers in a row: decimal point, never negative, never rounded.</summary>
internal static class RowNumbers
{
    private const decimal Largest = 1_000_000_000;
    private const string Accepted = "accepted is a number from 0 to 1000000000 with a decimal point, such as 12.5";

    /// <summary>The number in a column that may be empty.</summary>
    public static decimal? Number(this Row row, string column)
    {
        var text = row.Text(column);
        if (text.Length == 0)
            return null;
        if (Parse(text) is { } number)
            return number;
        row.Refuse(column, Accepted);
        return null;
    }

    /// <summary>The whole number in a column that may be empty.</summary>
    public static int? Whole(this Row row, string column)
    {
        var text = row.Text(column);
        if (text.Length == 0)
            return null;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= Largest)
            return number;
        row.Refuse(column, "accepted is a whole number from 0 to 1000000000");
        return null;
    }

    /// <summary>A number that must be there: zero, and a problem, when it is not.</summary>
    public static T Needed<T>(this Row row, string column, T? number)
        where T : struct
    {
        if (number is null && row.Text(column).Length == 0)
            row.Refuse(column, Accepted);
        return number ?? default;
    }

    /// <summary>An amount of money; nothing when the column is empty.</summary>
    public static Money Money(this Row row, string column) => new(row.Scaled(column, 1_000_000, "accepted are at most six decimals") ?? 0);

    /// <summary>A volume in millilitres.</summary>
    public static Volume? Volume(this Row row, string column) =>
        row.Scaled(column, 1000, "accepted are millilitres with at most three decimals") is { } microlitres
            ? Core.Measures.Volume.FromMicrolitres(microlitres) : null;

    /// <summary>A number in thousandths.</summary>
    public static int? Thousandths(this Row row, string column) =>
        (int?)Math.Min(row.Scaled(column, 1000, "accepted are at most three decimals") ?? -1, int.MaxValue) is >= 0 and var thousandths
            ? thousandths : null;

    /// <summary>A number as whole units of a finer measure.</summary>
    /// <param name="row">The row.</param>
    /// <param name="column">The column.</param>
    /// <param name="perUnit">How many of the finer units one of the number is.</param>
    /// <param name="accepted">What is accepted, should the number be finer still.</param>
    public static long? Scaled(this Row row, string column, long perUnit, string accepted)
    {
        if (row.Number(column) is not { } number)
            return null;
        if (Core.Measures.Scaled.ToBase(number, perUnit) is { } scaled)
            return scaled;
        row.Refuse(column, accepted);
        return null;
    }

    /// <summary>The number that a text is, or null when it is none.</summary>
    public static decimal? Parse(string text) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number <= Largest
            ? number : null;
}
