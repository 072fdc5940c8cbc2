using NodaTime.Text;

namespace Ledger.Core.Measures;

/// <summary>Dates as they are written everywhere: ISO 8601, 2026-03-15.</summary>
public static class Dates
{
    /// <summary>The date as text.</summary>
    public static string Text(LocalDate date) => LocalDatePattern.Iso.Format(date);

    /// <summary>A month and day as text: 10-01.</summary>
    public static string Text(AnnualDate day) => AnnualDatePattern.Iso.Format(day);

    /// <summary>The month and day that a text names, such as 10-01; null when it names none.</summary>
    public static AnnualDate? ParseAnnual(string text) =>
        AnnualDatePattern.Iso.Parse(text.Trim()).TryGetValue(default, out var day) ? day : null;

    /// <summary>The date that a text names, or null when it names none, such as 29 February of a common year.</summary>
    public static LocalDate? Parse(string text) =>
        LocalDatePattern.Iso.Parse(text.Trim()).TryGetValue(default, out var date) ? date : null;

    /// <summary>What <see cref="ParseTyped"/> accepts, as a refusal says it.</summary>
    public const string AcceptedTyped =
        "a date that exists, such as 2026-03-15; or today, yesterday, -7, mon, or 12 for a day of this month";

    /// <summary>
    /// A date as somebody types it: in full, or seen from a day: "today", "yesterday", "-7" (so many days before),
    /// "mon" (the last Monday before it), "12" (that day of its month). Null for anything else.
    /// </summary>
    public static LocalDate? ParseTyped(string text, LocalDate today)
    {
        var word = text.Trim().ToLowerInvariant();
        if (Parse(word) is { } date)
            return date;
        if (word is "today" or "yesterday")
            return word == "today" ? today : today.PlusDays(-1);
        if (word is ['-', .. { Length: > 0 and <= 5 } days] && days.All(char.IsAsciiDigit))
            return today.PlusDays(-int.Parse(days, System.Globalization.CultureInfo.InvariantCulture));
        if (word.Length is 1 or 2 && word.All(char.IsAsciiDigit))
            return int.Parse(word, System.Globalization.CultureInfo.InvariantCulture) is var day && day >= 1
                && day <= today.Calendar.GetDaysInMonth(today.Year, today.Month)
                    ? new(today.Year, today.Month, day)
                    : null;
        return word.Length >= 3
            && Weekdays.FirstOrDefault(name => name.Name.StartsWith(word,
                StringComparison.Ordinal)) is { Name: not null } found
            ? today.Previous(found.Day) : null;
    }

    private static readonly (string Name, IsoDayOfWeek Day)[] Weekdays =
    [
        ("monday", IsoDayOfWeek.Monday), ("tuesday", IsoDayOfWeek.Tuesday), ("wednesday", IsoDayOfWeek.Wednesday),
        ("thursday", IsoDayOfWeek.Thursday), ("friday", IsoDayOfWeek.Friday), ("saturday", IsoDayOfWeek.Saturday),
        ("sunday", IsoDayOfWeek.Sunday),
    ];
}
