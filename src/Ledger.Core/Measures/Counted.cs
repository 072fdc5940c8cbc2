namespace Ledger.Core.Measures;

/// <summary>Counts in words: "1 day", "3 days".</summary>
public static class Counted
{
    /// <summary>So many of a thing.</summary>
    /// <param name="count">How many.</param>
    /// <param name="one">The word for one of them.</param>
    public static string Of(long count, string one) =>
        $"{count.ToString(CultureInfo.InvariantCulture)} {Noun(count, one)}";

    /// <summary>The word for so many of a thing, without the number.</summary>
    /// <param name="count">How many.</param>
    /// <param name="one">The word for one of them.</param>
    public static string Noun(decimal count, string one) => count == 1 ? one : Many(one);

    private static string Many(string one) => one switch
    {
        [.., 'c' or 's', 'h'] or [.., 'x'] => $"{one}es",
        [.., not ('a' or 'e' or 'i' or 'o' or 'u'), 'y'] => $"{one[..^1]}ies",
        _ => $"{one}s",
    };
}
