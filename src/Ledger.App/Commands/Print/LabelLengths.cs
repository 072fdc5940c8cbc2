namespace Ledger.App.Commands.Print;

/// <summary>Reads how a sheet of labels is divided; a failure's message says what is accepted.</summary>
internal static class LabelLengths
{
    private const int MostColumns = 10, MostRows = 40;

    private const decimal Inch = 25.4m, Most = 200;

    /// <summary>Columns by rows: 3x8.</summary>
    public static (int, int)? Grid(string text)
    {
        var parts = text.Trim().ToLowerInvariant().Split('x', StringSplitOptions.TrimEntries);
        return parts.Length == 2 && Whole(parts[0], MostColumns) is { } columns && Whole(parts[1], MostRows) is { } rows
            ? (columns, rows)
            : throw new FormatException(
                $"\"{text}\" is not a grid; write columns and rows as 3x8, at most {MostColumns}x{MostRows}");
    }

    /// <summary>Two lengths in millimetres, or one that stands for both: "13 8", "0.5in 0.16in", 10.</summary>
    public static (decimal, decimal)? Pair(string text)
    {
        var lengths = text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries).Select(Length).ToList();
        return lengths.All(length => length is not null) && lengths.Count is 1 or 2
            ? (lengths[0]!.Value, lengths[^1]!.Value)
            : throw new FormatException(
                $"\"{text}\" is not a pair of lengths; write millimetres as \"13 8.5\" "
                + $"or inches as \"0.5in 0.2in\", from 0 to {Most} mm");
    }

    private static int? Whole(string text, int most) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && number >= 1 && number <= most ? number : null;

    private static decimal? Length(string text)
    {
        var isInch = text.EndsWith("in", StringComparison.OrdinalIgnoreCase);
        var digits = isInch || text.EndsWith("mm", StringComparison.OrdinalIgnoreCase) ? text[..^2] : text;
        return decimal.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            && number <= Most && number * (isInch ? Inch : 1) is >= 0 and <= Most and var length ? length : null;
    }
}
