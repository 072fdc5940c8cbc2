using Ledger.Exchange.Calendars;

namespace Ledger.App.Commands.Files;

/// <summary>calendar: the days to be reminded of, as a file that a calendar imports.</summary>
internal sealed class CalendarCommand : ExplainedCommand
{
    private readonly Workbench _bench;
    private readonly Argument<string> _file = Typed.Argument("file", Text.NotEmpty,
        "the file, such as darkroom.ics; - writes to the output");

    private readonly Option<bool> _replace = new("--replace") { Description = "replace a file of this name even if it is not a calendar" };

    public CalendarCommand(Workbench bench)
        : base("calendar", "Writes the days to be reminded of (ends of bottles and baths, orders, deliveries, plans) as iCalendar.", """
            Import the file again whenever you like: what was moved is changed, nothing is
            doubled. An older calendar of this name is replaced, and what it announced and
            no longer holds is cancelled; some calendars ignore cancellations. Planned
            sessions and trips are among the days. Alarms go off at nine in the morning.
            Example: trayledger calendar darkroom.ics
            """)
    {
        _bench = bench;
        Arguments.Add(_file);
        Options.Add(_replace);
        SetAction(Run);
    }

    private int Run(ParseResult parse)
    {
        using var ledger = _bench.OpenToRead(parse);
        var now = _bench.Around.Clock.GetCurrentInstant();
        if (parse.GetRequiredValue(_file) is not "-" and var path)
        {
            _bench.Written = CalendarWriting.Write(ledger, Path.GetFullPath(path), now, parse.GetValue(_replace), ", or say --replace");
            _bench.Around.Out.WriteLine(_bench.Written);
        }
        else
            _bench.Around.Out.Write(CalendarFile.Text(CalendarWriting.Days(ledger), ledger.Identity, now));
        return ExitStatus.Done;
    }
}
