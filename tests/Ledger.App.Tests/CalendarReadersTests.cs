using System.Text.Json;
using Ledger.Exchange.Calendars;

namespace Ledger.App.Tests;

/// <summary>
/// The calendar file, read by two programs that share no code with its writer nor with each other: the Python packages
/// icalendar 4 (Debian's python3-icalendar) and vObject 0.9 (python3-vobject). RFC 5545, "Internet Calendaring and
/// Scheduling Core Object Specification", IETF 2009, is what they read by.
/// </summary>
public sealed class CalendarReadersTests
{
    private const string Python = "/usr/bin/python3";
    private const string Ledger = "20250102030405000001";

    /// <summary>Each writes what it read as one JSON list: an event a row, its alarm in seconds from its day.</summary>
    private const string Icalendar =
        """
        import icalendar, json, sys
        text = lambda event, name: str(event[name]) if name in event else None
        calendar = icalendar.Calendar.from_ical(open(sys.argv[1], "rb").read())
        print(json.dumps([[text(event, "UID"), event.decoded("DTSTART").isoformat(), text(event, "SUMMARY"),
            text(event, "DESCRIPTION"), text(event, "STATUS"), int(event["SEQUENCE"]),
            [int(alarm.decoded("TRIGGER").total_seconds()) for alarm in event.walk("VALARM")]]
            for event in calendar.walk("VEVENT")]))
        """;

    private const string Vobject =
        """
        import json, sys, vobject
        text = lambda event, name: getattr(event, name).value if hasattr(event, name) else None
        calendar = vobject.readOne(open(sys.argv[1], encoding="utf-8", newline="").read())
        print(json.dumps([[text(event, "uid"), event.dtstart.value.isoformat(), text(event, "summary"),
            text(event, "description"), text(event, "status"), int(event.sequence.value),
            [int(alarm.trigger.value.total_seconds()) for alarm in event.contents.get("valarm", [])]]
            for event in calendar.vevent_list]))
        """;

    private static readonly Instant _now = Instant.FromUtc(2026, 3, 15, 18, 30, 5);

    private static readonly Reminder[] _reminders =
    [
        new(ReminderKind.GoodUntil, "fen80/3", new(2026, 11, 30), "fen80/3 is good until today",
            "Pan, 3 sheets; a, b\nc \\ d: \"e\"", 14),
        new(ReminderKind.BathGoodUntil, "F4", new(2026, 3, 20), "Bath F4 is good until today", "mixed; since", 5),
        new(ReminderKind.Delivery, "été/fen80", new(2028, 2, 29), string.Concat(Enumerable.Repeat("é", 40)),
            new string('x', 160), 0),
        new(ReminderKind.Session, "tarn", new(2026, 4, 1), "Session tarn", "🎞 8 sheets", 1),
    ];

    public static TheoryData<string, string> Readers => new() { { "icalendar", Icalendar }, { "vobject", Vobject } };

    [Theory]
    [MemberData(nameof(Readers))]
    public void It_says_to_others_what_it_was_written_from(string package, string script)
    {
        using var room = new Darkroom();
        var events = ReadBack(room, CalendarFile.Text(_reminders, Ledger, _now), package, script);
        Assert.Equal(
            [
                ("good-until.fen80%2F3", "2026-11-30", -14 * 86400 + 9 * 3600),
                ("bath-good-until.F4", "2026-03-20", -5 * 86400 + 9 * 3600),
                ("delivery.%C3%A9t%C3%A9%2Ffen80", "2028-02-29", 9 * 3600),
                ("session.tarn", "2026-04-01", -86400 + 9 * 3600),
            ],
            events.Select(one => (one.Uid.Replace($"@{Ledger}.trayledger", "", StringComparison.Ordinal), one.Date,
                Assert.Single(one.Alarms))));
        Assert.Equal(_reminders.Select(reminder => (reminder.Summary, reminder.Details)),
            events.Select(one => (one.Summary, one.Description!)));
        Assert.All(events, one => Assert.Null(one.Status));
    }

    [Theory]
    [MemberData(nameof(Readers))]
    public void It_takes_back_for_others_what_no_longer_holds(string package, string script)
    {
        using var room = new Darkroom();
        var earlier = CalendarFile.Text(_reminders, Ledger, _now);
        Reminder[] kept = [_reminders[0], _reminders[2]];
        var events = ReadBack(room,
            CalendarFile.Text(kept, Ledger, _now + NodaTime.Duration.FromDays(1),
                CalendarFile.NoLongerSo(earlier, kept, Ledger, new(2026, 3, 16))),
            package, script);
        Assert.Equal(
            [("Bath F4 is good until today", "2026-03-20"), ("Session tarn", "2026-04-01")],
            events.Where(one => one.Status == "CANCELLED").Select(one => (one.Summary, one.Date)));
        var before = ReadBack(room, earlier, package, script).ToDictionary(one => one.Uid, one => one.Sequence);
        Assert.Equal(before.Count, events.Count);
        Assert.All(events, one => Assert.True(one.Sequence > before[one.Uid], one.Uid));
    }

    /// <summary>The calendar of a whole year is read to its last event, with nothing that they take amiss.</summary>
    [Theory]
    [MemberData(nameof(Readers))]
    public void They_read_the_calendar_of_the_demo_year(string package, string script)
    {
        using var room = Darkroom.WithDemoYear();
        using var done = JsonDocument.Parse(room.Do("calendar", room.PathOf("year.ics"), "--json"));
        var events = ReadBack(room, File.ReadAllText(room.PathOf("year.ics")), package, script);
        Assert.Equal(done.RootElement.GetProperty("days").GetInt32(), events.Count);
        Assert.All(events, one => Assert.NotEqual("", one.Summary));
    }

    private static IReadOnlyList<Event> ReadBack(Darkroom room, string calendar, string package, string script)
    {
        if (!File.Exists(Python) || Executables.Run(Python, ["-c", $"import {package}"]).Status != 0)
            Assert.Skip($"there is no python3-{package} here");
        var ran = Executables.Run(Python, ["-c", script, room.Write("read.ics", calendar)]);
        Assert.Equal(("", 0), (ran.Errors, ran.Status));
        using var rows = JsonDocument.Parse(ran.Output);
        return
        [
            .. rows.RootElement.EnumerateArray().Select(row => new Event(row[0].GetString()!, row[1].GetString()!,
                row[2].GetString()!, row[3].GetString(), row[4].GetString(), row[5].GetInt64(),
                [.. row[6].EnumerateArray().Select(alarm => alarm.GetInt32())])),
        ];
    }

    /// <summary>An event as another program reads it.</summary>
    private sealed record Event(string Uid, string Date, string Summary, string? Description, string? Status,
        long Sequence, IReadOnlyList<int> Alarms);
}
