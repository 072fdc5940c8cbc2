using System.Diagnostics.CodeAnalysis;
using System.Text;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Ledger.Core.Notices;
using NodaTime;
using Calendar = Ical.Net.Calendar;
using Duration = Ical.Net.DataTypes.Duration;

namespace Ledger.Exchange.Calendars;

/// <summary>
/// Reminders as an iCalendar file (RFC 5545). A reminder keeps its UID from one file to the next, and later files have higher sequence
/// numbers, so that a calendar that imports the file again changes what it has instead of doubling it.
/// </summary>
public static class CalendarFile
{
    private const string Product = "-//Trayledger//Reminders//EN";

    /// <summary>The calendar as text: lines end in CRLF and are folded at 75 octets.</summary>
    /// <param name="reminders">What it holds.</param>
    /// <param name="now">When it is made.</param>
    public static string Text(IEnumerable<Reminder> reminders, Instant now)
    {
        var calendar = new Calendar { ProductId = Product };
        foreach (var reminder in reminders)
            calendar.Events.Add(ToEvent(reminder, now));
        return new CalendarSerializer().SerializeToString(calendar) ?? throw new InvalidOperationException("the calendar gave no text");
    }

    /// <summary>Writes the calendar as UTF-8; the stream stays open.</summary>
    public static void Write(Stream target, IEnumerable<Reminder> reminders, Instant now) =>
        target.Write(Encoding.UTF8.GetBytes(Text(reminders, now)));

    /// <summary>The identity of a reminder: its kind and subject, whatever its date.</summary>
    internal static string Uid(Reminder reminder) => $"{reminder.Kind.Name()}.{Uri.EscapeDataString(reminder.Subject)}@trayledger";

    /// <remarks>Ical.Net makes copies of these by reflection, so a native binary must keep their constructors.</remarks>
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(Trigger))]
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(CalDateTime))]
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(Alarm))]
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(CalendarEvent))]
    private static CalendarEvent ToEvent(Reminder reminder, Instant now)
    {
        var stamp = now.ToDateTimeUtc();
        var made = new CalendarEvent
        {
            Uid = Uid(reminder),
            DtStamp = new CalDateTime(stamp.Year, stamp.Month, stamp.Day, stamp.Hour, stamp.Minute, stamp.Second, CalDateTime.UtcTzId),
            Sequence = (int)(now.ToUnixTimeSeconds() / 60), // grows with each file, and fits until the year 6000
            Start = new CalDateTime(reminder.Date.Year, reminder.Date.Month, reminder.Date.Day), // a date without a time: all day
            Summary = reminder.Summary,
            Description = reminder.Details,
            Transparency = TransparencyType.Transparent,
        };
        made.Alarms.Add(
            new Alarm { Action = AlarmAction.Display, Description = reminder.Summary, Trigger = new Trigger(Ahead(reminder.DaysAhead)) });
        return made;
    }

    /// <summary>Counted from the day's midnight; on the day itself at nine in the morning.</summary>
    private static Duration Ahead(int days) => days == 0 ? Duration.FromHours(9) : Duration.FromDays(-days);
}
