using System.Text.Json;
using Ledger.Exchange.Calendars;

namespace Ledger.App.Commands.Files;

/// <summary>calendar: the days to be reminded of, as a file that a calendar imports.</summary>
internal sealed class CalendarCommand : ExplainedCommand, IDescribed
{
    private readonly Workbench _bench;
    private readonly Argument<string> _file = Typed.Argument("file", Text.NotEmpty,
        "the file, such as darkroom.ics; - writes to the output");

    private readonly Option<bool> _replace = new(
        "--replace") { Description = "replace a file of this name even if it is not a calendar" };
    private readonly Told<CalendarWritten> _told = new(new Shape<CalendarWritten>()
        .Text("file", written => written.File)
        .Whole("days", written => written.Days, "how many days it reminds of")
        .Whole("cancelled", written => written.Cancelled, "events of the calendar in that place which no longer hold"));

    public CalendarCommand(Workbench bench)
        : base("calendar",
            "Writes the days to be reminded of (ends of bottles and baths, orders, deliveries, plans) as "
                + "iCalendar.", """
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
        Options.Add(_told.Option);
        SetAction(Run);
    }

    public void Describe(Utf8JsonWriter json) => _told.Describe(json);

    private int Run(ParseResult parse)
    {
        var file = parse.GetRequiredValue(_file);
        _told.RequireOutput(parse, isTaken: Dash.Is(file));
        using var ledger = _bench.OpenToRead(parse);
        var now = _bench.Around.Clock.GetCurrentInstant();
        if (Dash.Is(file))
        {
            _bench.Around.Out.Write(CalendarFile.Text(CalendarWriting.Days(ledger), ledger.Identity, now));
            return ExitStatus.Done;
        }

        var written = CalendarWriting.Write(ledger, Path.GetFullPath(file), now, parse.GetValue(_replace),
            ", or say --replace");
        _bench.Written = written.Sentence;
        if (!_told.Write(parse, _bench.Around.Out, written))
            _bench.Around.Out.WriteLine(written.Sentence);
        return ExitStatus.Done;
    }
}
