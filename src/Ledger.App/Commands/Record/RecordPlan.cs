using System.CommandLine;
using Ledger.App.Commands.Plan;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;
using NodaTime;

namespace Ledger.App.Commands.Record;

/// <summary>record plan: a session or a trip is kept with its day.</summary>
internal sealed class RecordPlan : RecordCommand
{
    private readonly Argument<string> _plan = Typed.Argument("plan", Text.NotEmpty, "the plan's name, such as spring-coast");
    private readonly Option<LocalDate?> _on = Typed.Option("--on", "DATE", Text.Date, "the day it is planned for");
    private readonly Option<string?> _process = Typed.Option<string?>("--process", "NAME", Text.NotEmpty, "the process; a trip needs none");
    private readonly Option<RequestedSheets[]> _sheets = Typed.Options(
        "--sheets", "LINE", PlanPhrase.Parse, $"what will be used, once for each film and group: \"{PlanPhrase.Form}\"");

    private readonly Option<ExposedPhrase[]> _exposed = ExposedOption.New();

    private readonly Option<GroupTimes?> _minutes = Typed.Option<GroupTimes?>(
        "--minutes", "TIMES", PlanPhrase.Times, "developing times in place of the process's: 11, or \"11 N-1=9 N+1=14\"");

    private readonly Option<string?> _bath = Typed.Option<string?>(
        "--bath", "BATHS", Text.NotEmpty, "the bath, or one of each item that is used again: \"F9, ST2\"; otherwise the only one that fits");

    private readonly Option<bool> _trip = new("--trip") { Description = "film is taken along to be exposed; nothing is developed that day" };

    public RecordPlan(Workbench bench)
        : base(bench, "plan", "A session or a trip is planned for a day, so that what it will use can be counted on.", """
            A plan under a name that is open already takes that one's place. It ends with
            `record session S23 --from-plan NAME`, or with `record plan-ending NAME`.
            Example: trayledger record plan spring --on 2026-04-12 --process tray
                       --sheets "8 fen80 N" "4 fen80 N-1"
            Example: trayledger record plan sunday --on 2026-03-22 --process tray
                       --exposed "fen80 until 2026-03-01"
            """)
    {
        Arguments.Add(_plan);
        _on.Required = true;
        AddOwn(_on, _process, _sheets, _exposed, _minutes, _bath, _trip);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new PlannedSession
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Plan = parse.GetRequiredValue(_plan),
        On = parse.GetRequiredValue(_on)!.Value,
        IsTrip = parse.GetValue(_trip),
        Request = new()
        {
            Process = parse.GetValue(_process) ?? "",
            Sheets = Sheets(parse, holdings),
            Times = parse.GetValue(_minutes) ?? GroupTimes.None,
            Bath = parse.GetValue(_bath),
        },
    };

    private RequestedSheets[] Sheets(ParseResult parse, Holdings holdings)
    {
        RequestedSheets[] sheets = [.. ExposedOption.Sheets(parse.GetValue(_exposed), holdings), .. parse.GetValue(_sheets) ?? []];
        return sheets.Length > 0 ? sheets
            : throw new FormatException($"--sheets or --exposed is needed: what is to be developed, as \"{PlanPhrase.Form}\"");
    }
}
