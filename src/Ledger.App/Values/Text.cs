namespace Ledger.App.Values;

/// <summary>Reads what is typed on a command line; a failure's message says what is accepted.</summary>
internal static class Text
{
    public static string NotEmpty(string text) =>
        !string.IsNullOrWhiteSpace(text) ? text : throw new FormatException("the value is empty");

    /// <summary>The name of a ledger, which is a file of its own and no stream.</summary>
    public static string FileName(string text) => text.Trim() != "-" ? NotEmpty(text)
        : throw new FormatException(
            "a ledger is a file; - stands for the standard input or output, which none can be kept in");

    public static LocalDate? Date(string text) => Dates.Parse(text)
        ?? throw new FormatException($"\"{text}\" is not a date; write it as 2026-03-15");

    public static int? Whole(string text) =>
        int.TryParse(text.Trim(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
            ? number
            : throw new FormatException($"\"{text}\" is not a whole number");

    /// <summary>One of a list of words in any case, as its position.</summary>
    public static Func<string, T?> OneOf<T>(IReadOnlyList<string> words, string what) where T : struct, Enum =>
        text => Enum.GetValues<T>()[Position(text, words, what)];

    /// <summary>One of a list of words in any case, as the list has it.</summary>
    public static Func<string, string> OneOf(IReadOnlyList<string> words, string what) =>
        text => words[Position(text, words, what)];

    private static int Position(string text, IReadOnlyList<string> words, string what)
    {
        for (var i = 0; i < words.Count; i++)
            if (words[i].Equals(text.Trim(), StringComparison.OrdinalIgnoreCase))
                return i;
        throw new FormatException(
            $"\"{text}\" is not a {what}; {Spelling.Meant(text, words)}write one of {string.Join(", ", words)}");
    }
}
