namespace Ledger.Terminal.Forms;

/// <summary>A field of several names, divided by blanks or commas; a key adds the next one that fits.</summary>
internal static class NamesField
{
    /// <summary>The names in the field.</summary>
    public static IReadOnlyList<string> Names(this Answers answers, FormField field)
    {
        var names = Split(field.Text);
        return names.Length > 0 ? names : [answers.Needed(field)];
    }

    /// <summary>The names in a field whose names hold blanks themselves: only commas divide them.</summary>
    public static IReadOnlyList<string> LongNames(this Answers answers, FormField field) =>
    [
        .. answers.Needed(field).Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries),
    ];

    /// <summary>Adds the first candidate that is not among the names yet.</summary>
    public static FormField AddNext(FormField field, IEnumerable<string> candidates, string divider)
    {
        var names = divider == " " ? Split(field.Text)
            : [.. field.Text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
        if (candidates.FirstOrDefault(name => !names.Contains(name, StringComparer.OrdinalIgnoreCase)) is { } next)
            field.Type(string.Join(divider, names.Append(next)));
        return field;
    }

    private static string[] Split(string text) =>
        text.Split([' ', ','], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
