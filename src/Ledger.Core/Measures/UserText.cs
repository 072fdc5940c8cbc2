namespace Ledger.Core.Measures;

/// <summary>
/// Which characters a text may hold. Control characters (C0 and C1) steer a terminal or a printer, and bidirectional
/// overrides, embeddings and isolates (Unicode Standard Annex 9) show a text in another order than it was written in:
/// neither is taken into the ledger, and where an older file or a quoted cell holds one, it is shown by its number.
/// Left-to-right and right-to-left marks are harmless and stay.
/// </summary>
public static class UserText
{
    /// <summary>
    /// Whether a character is one that no text may hold. Tabs and line breaks are: what may hold them says so itself.
    /// </summary>
    public static bool IsRefused(char c) => char.IsControl(c) || IsDirection(c);

    /// <summary>The text as it is kept: tabs have become blanks, and line breaks are single.</summary>
    /// <param name="text">The text as it was written.</param>
    /// <param name="hasLines">Whether line breaks may stand in it.</param>
    /// <param name="problem">What cannot be kept and where it stands; null when everything can.</param>
    public static string Kept(string text, bool hasLines, out string? problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        problem = null;
        if (!text.Any(IsRefused))
            return text;
        var kept = text.Replace('\t', ' ');
        if (hasLines)
            kept = kept.Replace("\r\n", "\n", StringComparison.Ordinal);
        for (var i = 0; i < kept.Length && problem is null; i++)
            if (IsRefused(kept[i]) && !(hasLines && kept[i] == '\n'))
                problem = $"{What(kept[i])} as its character {(i + 1).ToString(CultureInfo.InvariantCulture)}";
        return kept;
    }

    /// <summary>
    /// The text as it can be shown anywhere: what could steer a terminal is written by its number, as \u001B. Tabs and
    /// line breaks stay.
    /// </summary>
    public static string Shown(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Any(IsEscaped)
            ? string.Concat(text.Select((c, i) => IsEscaped(c) && !IsLineEnd(text, i) ? Number(c) : c.ToString()))
            : text;
    }

    /// <summary>A character by its number in Unicode, as JSON writes it too.</summary>
    public static string Number(char c) => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}");

    private static bool IsEscaped(char c) => c is not ('\t' or '\n') && IsRefused(c);

    private static bool IsLineEnd(string text, int i) => text[i] == '\r' && i + 1 < text.Length && text[i + 1] == '\n';

    private static bool IsDirection(char c) => c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    private static string What(char c) =>
        c is '\n' or '\r' ? "a line break"
        : IsDirection(c) ? string.Create(CultureInfo.InvariantCulture,
            $"a character that turns the direction of writing (U+{(int)c:X4})")
        : string.Create(CultureInfo.InvariantCulture, $"a control character (U+{(int)c:X4})");
}
