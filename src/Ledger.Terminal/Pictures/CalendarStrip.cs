namespace Ledger.Terminal.Pictures;

/// <summary>
/// The coming weeks as a strip, a cell for each day, Monday to Sunday: a letter for what is due that day. As many weeks
/// stand beside each other as the width takes.
/// </summary>
internal static class CalendarStrip
{
    /// <summary>What the letters mean.</summary>
    public const string Legend = "x expires   o order by   d delivery   p plan   * several   > today";

    private const int Weeks = 8;
    private const int DaysOfWeek = 7;

    /// <summary>The lines of the strip.</summary>
    /// <param name="days">The days with their letters.</param>
    /// <param name="today">The day on which it begins.</param>
    /// <param name="width">The columns there are.</param>
    public static IEnumerable<string> Of(IEnumerable<(LocalDate Day, char Letter)> days, LocalDate today, int width)
    {
        var marks = days.GroupBy(day => day.Day).ToDictionary(day => day.Key,
            day => day.Select(one => one.Letter).Distinct().ToList());
        var monday = today.With(DateAdjusters.PreviousOrSame(IsoDayOfWeek.Monday));
        var abreast = Math.Clamp((width + 1) / (DaysOfWeek + 1), 1, Weeks);
        foreach (var weeks in Enumerable.Range(0, Weeks).Chunk(abreast))
        {
            yield return string.Join(' ',
                weeks.Select(week => Label(monday.PlusWeeks(week)).PadRight(DaysOfWeek))).TrimEnd();
            yield return string.Join(' ', weeks.Select(week => string.Concat(
                Enumerable.Range(0, DaysOfWeek)
                    .Select(day => Cell(monday.PlusDays(week * DaysOfWeek + day), today, marks))))).TrimEnd();
        }
    }

    private static char Cell(LocalDate day, LocalDate today, Dictionary<LocalDate, List<char>> marks) =>
        marks.GetValueOrDefault(day) switch
        {
            { Count: 1 } one => one[0],
            { Count: > 1 } => '*',
            _ => day == today ? '>' : day < today ? ' ' : Signs.Here.Rest,
        };

    private static string Label(LocalDate monday) =>
        string.Create(CultureInfo.InvariantCulture, $"{monday.Month:00}-{monday.Day:00}");
}
