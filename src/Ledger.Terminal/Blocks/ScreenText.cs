namespace Ledger.Terminal.Blocks;

/// <summary>Figures and dates in the words of the screens.</summary>
internal static class ScreenText
{
    /// <summary>"7.60 EUR".</summary>
    public static string Text(this Money money, Settings settings) =>
        $"{money.Text(settings.Style)} {settings.Currency}".TrimEnd();

    /// <summary>"2026-03-13 (life since mixing), 2 days ago".</summary>
    public static string? Text(this GoodUntil? good, LocalDate today) =>
        good is null ? null : $"{Dates.Text(good.Date)} ({good.Reason}), {Away(good.DaysLeft(today))}";

    /// <summary>"in 5 days", "today", "2 days ago".</summary>
    public static string Away(int days) => days switch
    {
        0 => "today",
        1 => "tomorrow",
        -1 => "yesterday",
        > 1 => $"in {days} days",
        _ => $"{-days} days ago",
    };

    /// <summary>
    /// The text with a capital, unless it begins with a name that is written small: one with a figure or a slash in it,
    /// such as fen80/7.
    /// </summary>
    public static string Capital(string text) => text.Length == 0 || text.Split(' ', 2)[0].Any(IsOfNames)
        ? text
        : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>The text with a capital and a full stop.</summary>
    public static string Sentence(string text) =>
        text.Length == 0 ? text : Capital(text) + (text[^1] == '.' ? "" : ".");

    private static bool IsOfNames(char sign) => sign == '/' || char.IsAsciiDigit(sign);
}
