namespace Ledger.Exchange.Print;

/// <summary>
/// An axis of days, from the first of a month to the last of one, marked every 1, 2, 3 or 6 months or every 1, 2, 5,
/// 10… years.
/// </summary>
internal sealed class MonthAxis
{
    private const int MostMarks = 9;
    private static readonly int[] Rounds = [1, 2, 3, 6, 12, 24, 60, 120, 240, 600, 1200];
    private readonly int _every;

    public MonthAxis(LocalDate from, LocalDate to)
    {
        var months = (to.Year - from.Year) * 12 + to.Month - from.Month + 1;
        _every = Rounds.FirstOrDefault(round => months <= round * MostMarks, Rounds[^1]);
        var first = new LocalDate(from.Year, 1,
            1).PlusMonths((from.Month - 1) / Math.Min(_every, 12) * Math.Min(_every, 12));
        Start = first;
        End = to.With(DateAdjusters.StartOfMonth).PlusMonths(1);
    }

    public LocalDate Start { get; }

    public LocalDate End { get; }

    public IEnumerable<(LocalDate Day, string Text)> Marks
    {
        get
        {
            for (var day = Start; day < End; day = day.PlusMonths(_every))
                yield return (day, Dates.Text(day)[..(_every >= 12 ? 4 : 7)]);
        }
    }

    /// <summary>Where a day stands, from 0 to 1.</summary>
    public double At(LocalDate day) =>
        (double)Period.DaysBetween(Start, day) / Period.DaysBetween(Start, End);
}
