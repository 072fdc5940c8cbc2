using NodaTime;
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
}
