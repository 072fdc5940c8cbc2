namespace Ledger.Core.Keeping;

/// <summary>From this day on something was kept at a place that slows its ageing, or at one that does not.</summary>
/// <param name="Since">The day it came there.</param>
/// <param name="DaysAYear">The days that a year there adds, by the user's setting: 365 stops the ageing, 0 does not
/// slow it.</param>
public sealed record ColdStay(LocalDate Since, int DaysAYear);

/// <summary>
/// The time that something really spent in the cold. Each day there moves an expiry date by the share of a day that the
/// user's setting says, and stays won when it is taken out. What had expired before it was put there is not revived.
/// This project's rule; how much a material gains is for the user to say, from the maker's data.
/// </summary>
/// <param name="Stays">Where it was kept, in the order of days.</param>
/// <param name="Until">The day up to which the time is counted.</param>
public sealed record ColdTime(IReadOnlyList<ColdStay> Stays, LocalDate Until)
{
    private const int Year = 365;

    /// <summary>The whole days by which a date has moved.</summary>
    /// <param name="date">The last good day without any cold.</param>
    public int DaysWon(LocalDate date)
    {
        long won = 0; // in 365ths of a day
        for (var i = 0; i < Stays.Count; i++)
        {
            var share = Math.Clamp(Stays[i].DaysAYear, 0, Year);
            var end = i + 1 < Stays.Count ? LocalDate.Min(Stays[i + 1].Since, Until) : Until;
            var days = Period.DaysBetween(Stays[i].Since, end);
            var left = Period.DaysBetween(Stays[i].Since, date) * (long)Year
                + won; // what it still had when it came there
            if (left < 0)
                break;
            if (days <= 0 || share == 0)
                continue;
            var lasts = share == Year ? days : Math.Min(days, left / (Year - share));
            won += lasts * share;
        }

        return (int)(won / Year);
    }
}
