using System.Diagnostics.CodeAnalysis;
using System.Text;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Calendar = Ical.Net.Calendar;
using Duration = Ical.Net.DataTypes.Duration;

namespace Ledger.Exchange.Calendars;

/// <summary>
/// Reminders as an iCalendar file (RFC 5545). A reminder keeps its UID from one file to the next, and later files have
/// higher sequence numbers, so that a calendar that imports the file again changes what it has instead of doubling it.
/// What no longer holds is cancelled: that is found in the file that is replaced, and nothing more is kept.
/// </summary>
public static class CalendarFile
{
    private const string Program = "trayledger";
    private const string Product = "-//Trayledger//Reminders//EN";

    private const int MorningHour = 9;

    /// <summary>The calendar as text: lines end in CRLF and are folded at 75 octets.</summary>
    /// <param name="reminders">What it holds.</param>
    /// <param name="ledger">What tells the ledger from all others, in letters and digits.</param>
    /// <param name="now">When it is made.</param>
    /// <param name="cancelled">What it takes back.</param>
    public static string Text(IEnumerable<Reminder> reminders, string ledger, Instant now,
        IEnumerable<EarlierEvent>? cancelled = null)
    {
        var calendar = new Calendar { ProductId = Product };
        foreach (var reminder in reminders)
            calendar.Events.Add(ToEvent(reminder, ledger, now));
        foreach (var earlier in cancelled ?? [])
            calendar.Events.Add(Cancelled(earlier, now));
        return new CalendarSerializer().SerializeToString(calendar)
            ?? throw new InvalidOperationException("the calendar gave no text");
    }

    /// <summary>Writes the calendar as UTF-8; the stream stays open.</summary>
    public static void Write(
        Stream target, IEnumerable<Reminder> reminders, string ledger, Instant now,
        IEnumerable<EarlierEvent>? cancelled = null) =>
        target.Write(Encoding.UTF8.GetBytes(Text(reminders, ledger, now, cancelled)));

    /// <summary>
    /// What an earlier file of this ledger announced for a day to come and this one does not: what no longer holds, and
    /// what earlier versions named otherwise. What lies behind stays as it was.
    /// </summary>
    /// <param name="earlier">The text of the file that is replaced.</param>
    /// <param name="reminders">What takes its place.</param>
    /// <param name="ledger">What tells the ledger from all others.</param>
    /// <param name="today">The day from which on something is taken back.</param>
    public static IReadOnlyList<EarlierEvent> NoLongerSo(string earlier, IReadOnlyCollection<Reminder> reminders,
        string ledger, LocalDate today)
    {
        var kept = reminders.Select(reminder => Uid(reminder, ledger)).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. EarlierCalendar.Read(earlier).Where(one => one.Date >= today && !kept.Contains(one.Uid)
                && (one.Uid.EndsWith($"@{ledger}.{Program}", StringComparison.Ordinal)
                    || one.Uid.EndsWith($"@{Program}", StringComparison.Ordinal))),
        ];
    }

    /// <summary>
    /// The identity of a reminder: its kind and subject, whatever its date, and the ledger that it is of.
    /// </summary>
    internal static string Uid(Reminder reminder, string ledger) =>
        $"{reminder.Kind.Name()}.{Uri.EscapeDataString(reminder.Subject)}@{ledger}.{Program}";

    /// <remarks>Ical.Net makes copies of these by reflection, so a native binary must keep their
    /// constructors.</remarks>
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(Trigger))]
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(CalDateTime))]
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(Alarm))]
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(CalendarEvent))]
    private static CalendarEvent ToEvent(Reminder reminder, string ledger, Instant now)
    {
        var made = new CalendarEvent
        {
            Uid = Uid(reminder, ledger),
            DtStamp = Stamp(now),
            Sequence = Sequence(now),
            Start = Day(reminder.Date),
            Summary = reminder.Summary,
            Description = reminder.Details,
            Transparency = TransparencyType.Transparent,
        };
        made.Alarms.Add(
            new Alarm { Action = AlarmAction.Display, Description = reminder.Summary,
                Trigger = new Trigger(Ahead(reminder.DaysAhead)) });
        return made;
    }

    private static CalendarEvent Cancelled(EarlierEvent earlier, Instant now) => new()
    {
        Uid = earlier.Uid, DtStamp = Stamp(now), Sequence = Math.Max(Sequence(now), earlier.Sequence + 1),
        Start = Day(earlier.Date), Summary = earlier.Summary, Status = EventStatus.Cancelled,
        Transparency = TransparencyType.Transparent,
    };

    private static CalDateTime Stamp(Instant now)
    {
        var stamp = now.ToDateTimeUtc();
        return new(stamp.Year, stamp.Month, stamp.Day, stamp.Hour, stamp.Minute, stamp.Second, CalDateTime.UtcTzId);
    }

    /// <summary>Grows with each file, and fits until the year 6000.</summary>
    private static int Sequence(Instant now) => (int)(now.ToUnixTimeSeconds() / 60);

    /// <summary>A date without a time: all day.</summary>
    private static CalDateTime Day(LocalDate date) => new(date.Year, date.Month, date.Day);

    /// <summary>
    /// At nine in the morning, so many days before; counted from the midnight with which the day begins.
    /// </summary>
    private static Duration Ahead(int days) => days == 0
        ? Duration.FromHours(MorningHour)
        : new Duration(days: days == 1 ? null : 1 - days, hours: MorningHour - 24);
}
