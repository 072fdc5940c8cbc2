using System.Text;
using System.Text.RegularExpressions;
using Ical.Net.DataTypes;
using Ledger.Exchange.Calendars;
using Calendar = Ical.Net.Calendar;

namespace Ledger.Exchange.Tests.Calendars;

/// <summary>The calendar file against RFC 5545; the numbers are its sections.</summary>
public sealed partial class CalendarFileTests
{
    private const string Ledger = "20250102030405000001";

    private static readonly Instant _now = Instant.FromUtc(2026, 3, 15, 18, 30, 5);

    private static readonly Reminder[] _reminders =
    [
        new(ReminderKind.GoodUntil, "fen80/3", new(2026, 11, 30), "fen80/3 is good until today",
            "Pan, 3 sheets; a, b\nc \\ d", 14),
        new(ReminderKind.BathGoodUntil, "F4", new(2026, 3, 20), "Bath F4 is good until today",
            "mixed; since mixing", 5),
        new(ReminderKind.OrderBy, "syrup", new(2026, 3, 15), "Order 1 pack of syrup", new string('x', 160), 0),
        new(ReminderKind.Delivery, "été/fen80", new(2026, 2, 28), string.Concat(Enumerable.Repeat("é", 40)),
            "order", 0),
    ];

    [Fact]
    public void Every_line_ends_in_CRLF_and_holds_75_octets_at_most() // 3.1
    {
        var text = CalendarFile.Text(_reminders, Ledger, _now);
        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        Assert.DoesNotContain('\uFFFD', text);
    }

    [Fact]
    public void A_fold_falls_between_characters_and_unfolding_gives_the_text_back() // 3.1: SUMMARY and 40 é fold to 74 and 15 octets, 160 x to 75, 75 and the rest
    {
        var lines = CalendarFile.Text(_reminders, Ledger, _now).Split("\r\n");
        var accents = Array.FindIndex(lines, line => line.StartsWith("SUMMARY:é", StringComparison.Ordinal));
        Assert.Equal((74, 15),
            (Encoding.UTF8.GetByteCount(lines[accents]), Encoding.UTF8.GetByteCount(lines[accents + 1])));
        Assert.Equal(' ', lines[accents + 1][0]);
        var plain = Array.FindIndex(lines, line => line.StartsWith("DESCRIPTION:x", StringComparison.Ordinal));
        Assert.Equal((75, 75, 24), (lines[plain].Length, lines[plain + 1].Length, lines[plain + 2].Length));
        Assert.Contains("SUMMARY:" + string.Concat(Enumerable.Repeat("é", 40)) + "\r\n", Unfolded(_now),
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_object_and_each_event_have_what_they_must_have_once() // 3.6, 3.6.1, 3.6.6
    {
        var text = Unfolded(_now);
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.Single(Regex.Matches(text, "^PRODID:.+\r$", RegexOptions.Multiline));
        Assert.Single(Regex.Matches(text, "^VERSION:2.0\r$", RegexOptions.Multiline));
        var events = Event().Matches(text);
        Assert.Equal(_reminders.Length, events.Count);
        Assert.All(events, one =>
        {
            var (outside, alarm) = (Alarm().Replace(one.Value, ""), Alarm().Match(one.Value).Value);
            foreach (var name in new[] { "UID:", "DTSTAMP:20260315T183005Z", "DTSTART;VALUE=DATE:",
                "SUMMARY:", "SEQUENCE:" })
                Assert.Single(Regex.Matches(outside, $"^{name}", RegexOptions.Multiline));
            Assert.DoesNotMatch("(?m)^(DTEND|DURATION|RRULE)", outside); // one day by itself
            foreach (var name in new[] { "ACTION:DISPLAY\r", "TRIGGER:-?P", "DESCRIPTION:." })
                Assert.Single(Regex.Matches(alarm, $"^{name}", RegexOptions.Multiline));
        });
    }

    [Fact]
    public void Special_characters_are_escaped_and_a_colon_is_not() => Assert.Contains( // 3.3.11
        "DESCRIPTION:Pan\\, 3 sheets\\; a\\, b\\nc \\\\ d\r\n", Unfolded(_now), StringComparison.Ordinal);

    [Fact]
    public void The_file_is_read_back_as_what_was_written()
    {
        var calendar = Calendar.Load(CalendarFile.Text(_reminders, Ledger, _now))!;
        Assert.Equal(_reminders.Length, calendar.Events.Count);
        foreach (var reminder in _reminders)
        {
            var read = Assert.Single(calendar.Events, one => one.Uid == CalendarFile.Uid(reminder, Ledger));
            Assert.Equal((reminder.Summary, reminder.Details), (read.Summary, read.Description));
            Assert.Equal(new CalDateTime(reminder.Date.Year, reminder.Date.Month, reminder.Date.Day), read.Start);
            Assert.True(read.IsAllDay);
            Assert.Equal(reminder.Summary, Assert.Single(read.Alarms).Description);
        }
    }

    [Fact]
    public void A_moved_reminder_keeps_its_identity_and_has_a_higher_sequence() // 3.8.4.7, 3.8.7.4
    {
        var before = Calendar.Load(CalendarFile.Text(_reminders, Ledger, _now))!;
        var moved = _reminders.Select(reminder => reminder with { Date = reminder.Date.PlusDays(20),
            Summary = "moved", Details = "so" });
        var after = Calendar.Load(CalendarFile.Text(moved, Ledger, _now + NodaTime.Duration.FromDays(1)))!;
        Assert.Equal(before.Events.Select(one => one.Uid).Order(), after.Events.Select(one => one.Uid).Order());
        Assert.True(after.Events.Min(one => one.Sequence) > before.Events.Max(one => one.Sequence));
    }

    [Fact]
    public void Identities_are_told_apart_and_plain()
    {
        Assert.Equal($"good-until.fen80%2F3@{Ledger}.trayledger", CalendarFile.Uid(_reminders[0], Ledger));
        Assert.All(_reminders,
            reminder => Assert.Matches("^[a-z-]+[.][A-Za-z0-9%._~-]+@[0-9]+[.]trayledger$",
                CalendarFile.Uid(reminder, Ledger)));
        Assert.Equal(
            Enum.GetValues<ReminderKind>().Length,
            Enum.GetValues<ReminderKind>().Select(kind => CalendarFile.Uid(_reminders[0] with { Kind = kind }, Ledger))
                .Distinct().Count());
    }

    [Theory]
    [InlineData(14, "TRIGGER:-P13DT15H")]
    [InlineData(1, "TRIGGER:-PT15H")]
    [InlineData(0, "TRIGGER:PT9H")]
    public void An_alarm_goes_off_at_nine_in_the_morning_days_ahead_or_of_the_day(int days, string trigger) =>
        Assert.Contains(
            trigger + "\r\n", CalendarFile.Text([_reminders[0] with { DaysAhead = days }], Ledger, _now),
            StringComparison.Ordinal);

    [Fact]
    public void What_no_longer_holds_is_cancelled_with_a_higher_sequence() // 3.8.1.11, 3.8.7.4
    {
        var earlier = CalendarFile.Text(_reminders, Ledger, _now);
        var later = _now + NodaTime.Duration.FromDays(1);
        Reminder[] kept = [_reminders[0]];
        var cancelled = CalendarFile.NoLongerSo(earlier, kept, Ledger, new(2026, 3, 16));
        Assert.Equal([CalendarFile.Uid(_reminders[1], Ledger)],
            cancelled.Select(one => one.Uid)); // the others lie behind
        var read = Calendar.Load(CalendarFile.Text(kept, Ledger, later, cancelled))!.Events.ToList();
        var gone = Assert.Single(read, one => one.Status == "CANCELLED");
        Assert.Equal((_reminders[1].Summary, new CalDateTime(2026, 3, 20)), (gone.Summary, gone.Start));
        Assert.True(gone.Sequence > Calendar.Load(earlier)!.Events.Max(one => one.Sequence));
        Assert.Null(Assert.Single(read, one => one.Uid == CalendarFile.Uid(kept[0], Ledger)).Status);
        // It stays cancelled in the files that follow, until its day is past.
        var next = CalendarFile.NoLongerSo(CalendarFile.Text(kept, Ledger, later, cancelled),
            kept, Ledger, new(2026, 3, 17));
        Assert.Equal(cancelled.Select(one => one.Uid), next.Select(one => one.Uid));
        Assert.Empty(CalendarFile.NoLongerSo(earlier, kept, Ledger, new(2026, 3, 21)));
    }

    [Fact]
    public void Names_of_earlier_versions_are_cancelled_and_those_of_others_are_not()
    {
        var old = CalendarFile.Text(_reminders, Ledger, _now).Replace($"@{Ledger}.trayledger",
            "@trayledger", StringComparison.Ordinal);
        Assert.Equal(
            ["good-until.fen80%2F3@trayledger", "bath-good-until.F4@trayledger"],
            CalendarFile.NoLongerSo(old, _reminders, Ledger, new(2026, 3, 16)).Select(one => one.Uid));
        var other = CalendarFile.Text(_reminders, "1999", _now).Replace("1999.trayledger",
            "example.org", StringComparison.Ordinal);
        Assert.Empty(CalendarFile.NoLongerSo(other, [], Ledger, new(2026, 3, 16)));
        Assert.Empty(CalendarFile.NoLongerSo(CalendarFile.Text(_reminders, "1999", _now), [],
            Ledger, new(2026, 3, 16)));
    }

    /// <summary>
    /// Why the library does not read what is replaced: one line of another program, and it reads nothing. What there is
    /// to cancel is found all the same.
    /// </summary>
    [Fact]
    public void A_line_that_no_calendar_may_hold_does_not_keep_the_rest_from_being_cancelled()
    {
        const string Foreign =
            "BEGIN:VEVENT\r\nUID:dinner@example.org\r\nDTSTART;TZID=Europe/Somewhere:20260401T190000\r\n"
                + "RRULE:FREQ=WEEKLY;COUNT=3\r\nno property at all\r\nSUMMARY:Dinner\r\nEND:VEVENT\r\n";
        var file = CalendarFile.Text(_reminders, Ledger, _now).Replace("END:VCALENDAR", Foreign + "END:VCALENDAR",
            StringComparison.Ordinal);
        Assert.ThrowsAny<Exception>(() => Calendar.Load(file));
        Assert.Equal(
            [CalendarFile.Uid(_reminders[0], Ledger), CalendarFile.Uid(_reminders[1], Ledger)],
            CalendarFile.NoLongerSo(file, [], Ledger, new(2026, 3, 16)).Select(one => one.Uid));
    }

    /// <summary>The program's own reader of earlier files finds in one what the library finds.</summary>
    [Fact]
    public void The_reader_of_earlier_files_finds_the_same_events()
    {
        var text = CalendarFile.Text(_reminders, Ledger, _now);
        var own = EarlierCalendar.Read(text);
        Assert.Equal(
            Calendar.Load(
                text)!.Events.Select(one => (one.Uid, one.Start!.ToString("yyyy-MM-dd",
                    System.Globalization.CultureInfo.InvariantCulture), one.Summary, one.Sequence)),
            own.Select(one => ((string?)one.Uid, Core.Measures.Dates.Text(one.Date), (string?)one.Summary,
                one.Sequence)));
    }

    [Fact]
    public void The_bytes_are_UTF8_without_a_mark()
    {
        using var stream = new MemoryStream();
        CalendarFile.Write(stream, _reminders, Ledger, _now);
        Assert.Equal(Encoding.UTF8.GetBytes(CalendarFile.Text(_reminders, Ledger, _now)), stream.ToArray());
        Assert.Equal((byte)'B', stream.ToArray()[0]);
    }

    private static string Unfolded(Instant now) =>
        CalendarFile.Text(_reminders, Ledger, now).Replace("\r\n ", "", StringComparison.Ordinal);

    [GeneratedRegex("BEGIN:VEVENT\r\n.*?END:VEVENT\r\n", RegexOptions.Singleline)]
    private static partial Regex Event();

    [GeneratedRegex("BEGIN:VALARM\r\n.*?END:VALARM\r\n", RegexOptions.Singleline)]
    private static partial Regex Alarm();
}
