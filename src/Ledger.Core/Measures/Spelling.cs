namespace Ledger.Core.Measures;

/// <summary>Tells names that differ by a slip of the fingers.</summary>
public static class Spelling
{
    private const int Most = 5;

    /// <summary>
    /// Whether one name becomes the other by at most one letter that is missing, added, wrong or swapped with its
    /// neighbour; two in names of six letters and more. Names that differ only in figures, or in a letter that stands
    /// alone ("box A", "box B"), are different names.
    /// </summary>
    public static bool IsNear(string left, string right)
    {
        var (one, other) = (Bare(left), Bare(right));
        return one != other && one.Length > 2 && other.Length > 2
            && Distance(one, other) <= (Math.Min(one.Length, other.Length) >= 6 ? 2 : 1);
    }

    /// <summary>
    /// The names that may have been meant, in their order: spelled nearly so, or continuing what was written; at most
    /// five.
    /// </summary>
    public static IReadOnlyList<string> Near(string written, IEnumerable<string> names) =>
        written.Trim() is not { Length: > 0 } text ? [] :
        [
            .. names.Distinct(StringComparer.OrdinalIgnoreCase)
                .Where(name => IsNear(text, name)
                    || (text.Length > 1 && name.StartsWith(text, StringComparison.OrdinalIgnoreCase))).Take(Most),
        ];

    /// <summary>
    /// The question whether one of the names was meant, with a blank behind it; empty where none is near.
    /// </summary>
    public static string Meant(string written, IEnumerable<string> names) => Near(written, names) switch
    {
        { Count: 0 } => "",
        { Count: 1 } one => $"did you mean {one[0]}? ",
        var some => $"did you mean {string.Join(", ", some.SkipLast(1))} or {some[^1]}? ",
    };

    private static string Bare(string name) =>
        string.Join(' ', new string([.. name.ToUpperInvariant().Where(sign => !char.IsDigit(sign))])
            .Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(word => word.Length > 1));

    /// <summary>
    /// The steps from one to the other, a swap of neighbours counted as one (Damerau 1964, in the form of optimal
    /// string alignment).
    /// </summary>
    private static int Distance(string left, string right)
    {
        var steps = new int[left.Length + 1, right.Length + 1];
        for (var i = 0; i <= left.Length; i++)
            for (var j = 0; j <= right.Length; j++)
                steps[i, j] = i == 0 || j == 0 ? i + j : Step(i, j);
        return steps[left.Length, right.Length];

        int Step(int i, int j)
        {
            var least = Math.Min(
                Math.Min(steps[i - 1, j], steps[i, j - 1]) + 1,
                steps[i - 1, j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1));
            return i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1]
                ? Math.Min(least, steps[i - 2, j - 2] + 1) : least;
        }
    }
}
