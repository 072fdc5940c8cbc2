using System.Text.RegularExpressions;

namespace Ledger.Exchange.Import.Rows;

/// <summary>
/// How a whole file writes days and numbers. One that a German spreadsheet saved says 05.01.2026, 186,50 and 1.500,00:
/// it is read so where every day and every number in it can be, and one of them at least can be read no other way.
/// </summary>
internal sealed partial class FileSpeech
{
    private readonly HashSet<string> _days, _numbers;

    private FileSpeech(IEnumerable<string> days, IEnumerable<string> numbers) =>
        (_days, _numbers) = ([.. days], [.. numbers]);

    /// <summary>A file that writes as the program does.</summary>
    public static FileSpeech Plain { get; } = new([], []);

    /// <summary>How a file writes, from all of its cells.</summary>
    /// <param name="mark">What separates its fields: a spreadsheet that writes commas into numbers puts none between
    /// them.</param>
    /// <param name="columns">The fields of its columns.</param>
    /// <param name="cells">The cells of a column that are not empty.</param>
    public static FileSpeech Of(char mark, IReadOnlyDictionary<string, Field> columns,
        Func<string, IEnumerable<string>> cells)
    {
        if (mark == ',')
            return Plain;
        var days = columns.Where(column => column.Value.Notation.Shape == Shape.Date)
            .Select(column => column.Key).ToList();
        var numbers = columns.Where(column => column.Value.Notation.Shape == Shape.Number)
            .Select(column => column.Key).ToList();
        var dates = days.SelectMany(cells).ToList();
        var figures = numbers.SelectMany(cells)
            .SelectMany(text => Figure().Matches(text).Select(figure => figure.Value)).ToList();
        var isOnlyGerman = dates.Count > 0
            ? dates.TrueForAll(text => Day(text) is not null) && figures.TrueForAll(IsGerman)
            : figures.Exists(text => text.Contains(',', StringComparison.Ordinal)) && figures.TrueForAll(IsGerman);
        return isOnlyGerman ? new(days, numbers) : Plain;
    }

    /// <summary>A cell as the program writes it.</summary>
    public string Plainly(string column, string text) =>
        _days.Contains(column) && Day(text) is { } day ? Dates.Text(day)
        : _numbers.Contains(column) ? Figure().Replace(text,
            figure => figure.Value.Replace(".", "", StringComparison.Ordinal).Replace(',', '.'))
        : text;

    private static LocalDate? Day(string text) =>
        DateOnly.TryParseExact(text, ["d.M.yyyy"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? LocalDate.FromDateOnly(day)
            : null;

    private static bool IsGerman(string figure) => German().IsMatch(figure);

    [GeneratedRegex(@"\d[\d.,]*")]
    private static partial Regex Figure();

    [GeneratedRegex(@"^(\d+|\d{1,3}(\.\d{3})+)(,\d+)?$")]
    private static partial Regex German();
}
