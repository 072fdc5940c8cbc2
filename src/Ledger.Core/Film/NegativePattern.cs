namespace Ledger.Core.Film;

/// <summary>
/// How negatives are numbered: YYYY or YY stands for the year, a run of # for the running number. YYYY-### gives
/// 2025-014.
/// </summary>
public sealed record NegativePattern
{
    private const int LongestText = 40;

    private NegativePattern(string text) => Text = text;

    /// <summary>The pattern as it is written.</summary>
    public string Text { get; }

    /// <summary>Year and running number: 2025-014.</summary>
    public static NegativePattern Default { get; } = new("YYYY-###");

    /// <summary>Whether the running number starts again each year.</summary>
    public bool HasYear => Text.Contains("YY", StringComparison.Ordinal);

    /// <summary>Reads a pattern; null when it has not exactly one run of #.</summary>
    public static NegativePattern? Parse(string text)
    {
        var trimmed = text.Trim();
        var (first, last) = (trimmed.IndexOf('#', StringComparison.Ordinal), trimmed.LastIndexOf('#'));
        var isOneRun = first >= 0 && trimmed.AsSpan(first, last - first + 1).IndexOfAnyExcept('#') < 0;
        return isOneRun && trimmed.Length <= LongestText && !trimmed.Any(char.IsControl) ? new(trimmed) : null;
    }

    /// <summary>The number of a negative.</summary>
    /// <param name="year">The year of the session.</param>
    /// <param name="number">The running number.</param>
    public string Number(int year, long number)
    {
        var run = new string('#', Text.Count(c => c == '#'));
        var whole = year.ToString("0000", CultureInfo.InvariantCulture);
        return Text
            .Replace(run, number.ToString(CultureInfo.InvariantCulture).PadLeft(run.Length, '0'),
                StringComparison.Ordinal)
            .Replace("YYYY", whole, StringComparison.Ordinal)
            .Replace("YY", whole[2..], StringComparison.Ordinal);
    }
}
