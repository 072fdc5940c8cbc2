using System.Globalization;
using Ledger.Core.Measures;
using NodaTime;

namespace Ledger.App.Values;

/// <summary>Reads what is typed on a command line; a failure's message says what is accepted.</summary>
internal static class Text
{
    /// <summary>A number with a decimal point and no separators between thousands, whatever the user's culture.</summary>
    public const NumberStyles Signed = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;

    public static string NotEmpty(string text) => !string.IsNullOrWhiteSpace(text) ? text : throw new FormatException("the value is empty");

    public static LocalDate? Date(string text) => Dates.Parse(text)
        ?? throw new FormatException($"\"{text}\" is not a date; write it as 2026-03-15");

    public static decimal? Number(string text) =>
        decimal.TryParse(text.Trim(), Signed, CultureInfo.InvariantCulture, out var number)
            ? number
            : throw new FormatException($"\"{text}\" is not a number; write it with a decimal point, such as 12.5");

    public static int? Whole(string text) =>
        int.TryParse(text.Trim(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
            ? number
            : throw new FormatException($"\"{text}\" is not a whole number");

    public static Money? Money(string text) => Scaled.ToBase(Number(text)!.Value, 1_000_000) is { } millionths
        ? new Money(millionths)
        : throw new FormatException($"\"{text}\" is not an amount of money; at most six decimals are kept");

    public static Dilution? Dilution(string text) => Core.Measures.Dilution.Parse(text);

    public static Volume? Volume(string text) => Amount.Parse(text).AsVolume(text);

    public static Area? SquareInches(string text) => Number(text) is > 0 and < 10_000_000 and var inches
        ? Area.FromSquareInches(inches)
        : throw new FormatException($"\"{text}\" is not an area in square inches");

    /// <summary>One of a list of names, as its position.</summary>
    public static Func<string, T?> OneOf<T>(IReadOnlyList<string> names, string what) where T : struct, Enum => text =>
    {
        for (var i = 0; i < names.Count; i++)
            if (names[i].Equals(text.Trim(), StringComparison.OrdinalIgnoreCase))
                return Enum.GetValues<T>()[i];
        throw new FormatException($"\"{text}\" is no {what}; write one of {string.Join(", ", names)}");
    };
}
