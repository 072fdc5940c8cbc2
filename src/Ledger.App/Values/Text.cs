using System.Globalization;
using Ledger.Core.Measures;
using NodaTime;

namespace Ledger.App.Values;

/// <summary>Reads what is typed on a command line; a failure's message says what is accepted.</summary>
internal static class Text
{
    public static string NotEmpty(string text) => !string.IsNullOrWhiteSpace(text) ? text : throw new FormatException("the value is empty");

    public static LocalDate? Date(string text) => Dates.Parse(text)
        ?? throw new FormatException($"\"{text}\" is not a date; write it as 2026-03-15");

    public static int? Whole(string text) =>
        int.TryParse(text.Trim(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
            ? number
            : throw new FormatException($"\"{text}\" is not a whole number");

    /// <summary>One of a list of names, as its position.</summary>
    public static Func<string, T?> OneOf<T>(IReadOnlyList<string> names, string what) where T : struct, Enum => text =>
    {
        for (var i = 0; i < names.Count; i++)
            if (names[i].Equals(text.Trim(), StringComparison.OrdinalIgnoreCase))
                return Enum.GetValues<T>()[i];
        throw new FormatException($"\"{text}\" is not a {what}; write one of {string.Join(", ", names)}");
    };
}
