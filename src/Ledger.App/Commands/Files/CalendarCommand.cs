using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Exchange.Calendars;

namespace Ledger.App.Commands.Files;

/// <summary>calendar: the days to be reminded of, as a file that a calendar imports.</summary>
internal sealed class CalendarCommand : ExplainedCommand
{
    private readonly Workbench _bench;
    private readonly Argument<string> _file = Typed.Argument("file", Text.NotEmpty,
        "the file, such as darkroom.ics; - writes to the output");

    public CalendarCommand(Workbench bench)
        : base("calendar", "The days to be reminded of (ends of bottles and baths, orders, deliveries, price rises) as iCalendar.", """
            Import the file again whenever you like: what was moved is changed, nothing is
            doubled. A file of this name that is there already is replaced.
            Example: trayledger calendar darkroom.ics
            """)
    {
        _bench = bench;
        Arguments.Add(_file);
        SetAction(Run);
    }

    private int Run(ParseResult parse)
    {
        using var ledger = _bench.Open(parse);
        var now = _bench.Around.Clock.GetCurrentInstant();
        if (parse.GetRequiredValue(_file) is not "-" and var path)
            _bench.Around.Out.WriteLine(CalendarWriting.Write(ledger, Path.GetFullPath(path), now));
        else
            _bench.Around.Out.Write(CalendarFile.Text(CalendarWriting.Days(ledger), now));
        return ExitStatus.Done;
    }
}
