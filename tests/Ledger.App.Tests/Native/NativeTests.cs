using System.Text.Json;
using System.Text.RegularExpressions;

namespace Ledger.App.Tests.Native;

/// <summary>
/// What works in the tests must work in the one native binary too: nothing there may need reflection.
/// </summary>
public sealed partial class NativeTests(PublishedBinary binary) : IClassFixture<PublishedBinary>
{
    [Fact]
    public void Every_reading_of_the_demo_year_is_the_same_as_in_the_tests()
    {
        var ledger = Demo();
        foreach (var what in new[] { "today", "shelf", "baths", "sessions", "costs", "journal",
            "item fen80", "bath F4" })
        {
            var json = Do(["--file", ledger, "show", .. what.Split(' '), "--json"]);
            using var document = JsonDocument.Parse(json);
            Assert.NotEmpty(document.RootElement.EnumerateObject());
            Assert.NotEmpty(Do(["--file", ledger, "show", .. what.Split(' ')]));
        }

        using var costs = JsonDocument.Parse(Do("--file", ledger, "show", "costs", "--json"));
        Assert.True(costs.RootElement.GetProperty("reconciles").GetBoolean());
    }

    [Fact]
    public void An_entry_is_posted_checked_exported_and_backed_up()
    {
        var ledger = Demo();
        Assert.Contains("fen80", Do("--file", ledger, "record", "count", "fen80", "60", "--reason", "miscounted"));
        Do("--file", ledger, "check");
        Assert.Contains("BEGIN:VALARM", Do("--file", ledger, "calendar", "-"), StringComparison.Ordinal);
        Do("--file", ledger, "export", Path.Combine(binary.Folder, Guid.NewGuid().ToString("N")));
        Do("--file", ledger, "backup", Path.Combine(binary.Folder, Guid.NewGuid().ToString("N")));
    }

    /// <summary>
    /// The calendar's library and what reads the file that is replaced, in the binary: names of earlier versions,
    /// events of others with values of all sorts, and what is cancelled.
    /// </summary>
    [Fact]
    public void A_calendar_is_written_and_replaced_and_what_no_longer_holds_is_cancelled()
    {
        var (ledger, file) = (Demo(), Path.Combine(binary.Folder, $"{Guid.NewGuid():N}.ics"));
        Do("--file", ledger, "calendar", file);
        var text = File.ReadAllText(file);
        Assert.Contains("BEGIN:VALARM", text, StringComparison.Ordinal);
        File.WriteAllText(file, text.Replace("END:VCALENDAR", """
            BEGIN:VEVENT
            UID:order-by.gone@trayledger
            DTSTART;VALUE=DATE:20990401
            SEQUENCE:7
            SUMMARY:Order 1 pack of gone\, soon
            END:VEVENT
            BEGIN:VEVENT
            UID:dinner@example.org
            DTSTART;TZID=Europe/Somewhere:20990401T190000
            RRULE:FREQ=WEEKLY;COUNT=3
            GEO:1;2
            ATTENDEE;CN=Somebody:mailto:somebody@example.org
            no property at all
            SUMMARY:Dinner
            END:VEVENT
            END:VCALENDAR
            """, StringComparison.Ordinal));
        Assert.Contains(", 1 cancelled that no longer hold", Do("--file", ledger, "calendar", file),
            StringComparison.Ordinal);
        var again = File.ReadAllText(file);
        var cancelled = again.Split("BEGIN:VEVENT")
            .Single(one => one.Contains("STATUS:CANCELLED", StringComparison.Ordinal));
        Assert.Contains("UID:order-by.gone@trayledger", cancelled, StringComparison.Ordinal);
        Assert.Contains("SUMMARY:Order 1 pack of gone\\, soon", cancelled, StringComparison.Ordinal);
        Assert.DoesNotContain("Dinner", again, StringComparison.Ordinal);
        Assert.Contains("\"cancelled\": 1", Do("--file", ledger, "calendar", file, "--json"),
            StringComparison.Ordinal); // it stays so until its day
    }

    [Fact]
    public void Without_a_terminal_the_screens_say_that_they_need_one()
    {
        var ran = binary.Trayledger("--file", Demo());
        Assert.Equal(2, ran.Status);
        Assert.Contains("need a terminal", ran.Errors);
    }

    [Fact]
    public void The_screens_open_in_a_terminal_show_what_another_process_records_and_are_left_with_one_key()
    {
        if (!PublishedBinary.HasTmux)
            Assert.Skip("there is no tmux here");
        var ledger = Demo();
        using var terminal = new Tmux($"{binary.Binary} --file {ledger}");
        terminal.Await("bath F4 expired 2 days ago");
        terminal.Press("6");
        terminal.Await("planned trip");
        Do("--file", ledger, "record", "discard", "practice", "1", "--reason", "bent");
        terminal.Await("discarded 1 sheet of practice");
        terminal.Press("C-q");
        terminal.Await("ended with 0");
    }

    /// <summary>The C library, its mathematics and its loader are one package of the system.</summary>
    [Fact]
    public void The_binary_needs_no_library_but_the_systems_C_library()
    {
        if (!Executables.Has("readelf"))
            Assert.Skip("there is no readelf here");
        var needed = Needed().Matches(Executables.Run("readelf", ["--dynamic", "--wide", binary.Binary]).Output)
            .Select(found => found.Groups["library"].Value).ToList();
        Assert.Contains("libc.so.6", needed);
        Assert.All(needed, library => Assert.Matches(SystemLibrary(), library));
    }

    /// <summary>
    /// Alone in a folder it works where SQLite was linked in; where the distribution had no static library to link, it
    /// says what is missing.
    /// </summary>
    [Fact]
    public void Alone_in_a_folder_it_makes_and_reads_a_ledger_or_says_which_library_belongs_beside_it()
    {
        var beside = Path.Combine(Path.GetDirectoryName(binary.Binary)!, "libe_sqlite3.so");
        var folder = Directory.CreateDirectory(Path.Combine(binary.Folder, "alone")).FullName;
        var alone = Path.Combine(folder, "trayledger");
        File.Copy(binary.Binary, alone);
        var ledger = Path.Combine(folder, "demo.db");
        var made = PublishedBinary.Run(alone, ["demo", "--into", ledger, "--no-ui"]);
        if (File.Exists(beside))
        {
            Assert.Equal(4, made.Status);
            Assert.StartsWith("SQLite's library is missing", made.Errors, StringComparison.Ordinal);
            Assert.Contains(folder, made.Errors, StringComparison.Ordinal);
            Assert.False(File.Exists(ledger));
            return;
        }

        Assert.Equal(0, made.Status);
        var today = PublishedBinary.Run(alone, ["--file", ledger, "show", "today"]);
        Assert.Contains("bath F4", today.Output, StringComparison.Ordinal);
    }

    private string Demo()
    {
        var ledger = Path.Combine(binary.Folder, $"{Guid.NewGuid():N}.db");
        Do("demo", "--into", ledger, "--no-ui");
        return ledger;
    }

    private string Do(params string[] arguments)
    {
        var ran = binary.Trayledger(arguments);
        Assert.True(ran.Status == 0, $"{string.Join(' ', arguments)} ended with {ran.Status}: {ran.Errors}");
        return ran.Output;
    }

    [GeneratedRegex(@"\(NEEDED\).*\[(?<library>[^\]]+)\]")]
    private static partial Regex Needed();

    [GeneratedRegex(@"^(lib(c|m|dl|pthread|rt)\.so\.\d+|ld-linux.*)$")]
    private static partial Regex SystemLibrary();
}
