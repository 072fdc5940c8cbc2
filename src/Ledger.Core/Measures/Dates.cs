using NodaTime;
using NodaTime.Text;

namespace Ledger.Core.Measures;

/// <summary>Dates as they are written everywhere: ISO 8601, 2026-03-15.</summary>
public static class Dates
{
    /// <summary>The date as text.</summary>
    public static string Text(LocalDate date) => LocalDatePattern.Iso.Format(date);

    /// <summary>The date that a text names, or null when it names none, such as 29 February of a common year.</summary>
    public static LocalDate? Parse(string text) =>
        LocalDatePattern.Iso.Parse(text.Trim()).TryGetValue(default, out var date) ? date : null;
}
