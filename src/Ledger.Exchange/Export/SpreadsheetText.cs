namespace Ledger.Exchange.Export;

/// <summary>
/// Text that a spreadsheet would run as a formula, made harmless by an apostrophe in front, and back again. Text that
/// looks like the result gets one more apostrophe, so that nothing changes on the way out and in.
/// </summary>
internal static class SpreadsheetText
{
    /// <summary>The text as it goes into a cell.</summary>
    public static string Harmless(string text) =>
        (StartsFormula(text) && !IsNumber(text)) || IsHarmless(text) ? "'" + text : text;

    /// <summary>The text that a cell stands for.</summary>
    public static string Plain(string cell) => IsHarmless(cell) ? cell[1..] : cell;

    private static bool StartsFormula(ReadOnlySpan<char> text) =>
        text is ['=' or '+' or '-' or '@' or '\t' or '\r', ..];

    private static bool IsHarmless(ReadOnlySpan<char> text) =>
        text is ['\'', ..] && StartsFormula(text.TrimStart('\''));

    /// <summary>A negative number such as -11 or -0.5 stays one.</summary>
    private static bool IsNumber(ReadOnlySpan<char> text)
    {
        var digits = text[1..];
        var point = digits.IndexOf('.');
        return text[0] == '-'
            && (point < 0 ? AreDigits(digits) : AreDigits(digits[..point]) && AreDigits(digits[(point + 1)..]));
    }

    private static bool AreDigits(ReadOnlySpan<char> text) =>
        text.Length > 0 && !text.ContainsAnyExceptInRange('0', '9');
}
