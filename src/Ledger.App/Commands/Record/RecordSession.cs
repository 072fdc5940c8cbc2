using System.CommandLine;
using Ledger.App.Commands.Plan;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Planning;
using Ledger.Core.Sessions;

namespace Ledger.App.Commands.Record;

/// <summary>record session: a session of developing.</summary>
internal sealed class RecordSession : RecordCommand
{
    private readonly Argument<string> _session = Typed.Argument("session", Text.NotEmpty, "the session's name, such as S23");
    private readonly Option<string?> _process = Typed.Option<string?>("--process", "NAME", Text.NotEmpty, "the process");
    private readonly Option<SessionLine[]> _sheets = Typed.Options(
        "--sheets", "LINE", SheetsPhrase.Parse,
        $"what was developed, once for each film, group and fate: \"{SheetsPhrase.Form}\"");

    private readonly Option<Volume?[]> _developer = Typed.Options(
        "--developer", "ML", Text.Volume,
        "the concentrate measured out, once for each batch in the order of the lines; otherwise each line is a batch and takes "
        + "what the process asks for");

    private readonly Option<string?> _bath = Typed.Option<string?>(
        "--bath", "BATHS", Text.NotEmpty,
        "the bath the film went through, the first of a pair; where the process uses several again, one of each: \"F9, ST2\"; "
        + "what is not named is the only one that fits");

    private readonly Option<string?> _fromPlan = Typed.Option<string?>(
        "--from-plan", "NAME", Text.NotEmpty,
        "the plan that was carried out; say only what differed: --sheets takes the place of all its lines, and it is then no longer open");

    private readonly Option<bool> _bookDifference = BookDifference();
    private readonly Option<bool> _anyway = AnywayOption.New();

    public RecordSession(Workbench bench)
        : base(bench, "session", "A session of developing: sheets, developer, supplies, and the area through the bath.", """
            Fates are negative (unless said), keeper, reject, test, practice, dummy. A group
            that is named like one of them is written "group test". A reject may name what
            spoiled it: dust, scratch, unexposed, double exposure, fogged, loaded backwards,
            uneven, under-fixed. Known sheets are drawn "from E07-2", "from E01-1,E01-2",
            "from #12" or "from exposed N-1".
            Example: trayledger record session S23 --process tray
                       --sheets "3 fen80 N keeper 25ml" "1 fen80 N reject: dust"
            Example: trayledger record session S24 --from-plan spring
            Sheets that take the place of a plan's lines keep its batches and amounts,
            unless one of them says its developer.
            """)
    {
        Arguments.Add(_session);
        AddOwn(_process, _sheets, _developer, _bath, _fromPlan, _bookDifference, _anyway);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings)
    {
        var kept = PlanOptions.Kept(parse.GetValue(_fromPlan), holdings);
        var plan = kept is null ? null : Planned(kept, parse, frame, holdings);
        var planned = plan?.ToLog(frame.Key, parse.GetRequiredValue(_session), frame.Date);
        return new SessionLog
        {
            Key = frame.Key,
            Date = frame.Date,
            Note = frame.Note,
            Session = parse.GetRequiredValue(_session),
            Process = parse.GetValue(_process) ?? planned?.Process
                ?? throw new FormatException("--process or --from-plan is needed: how the film was developed"),
            Lines = SheetsPhrase.WithDeveloper(
                Written(parse, plan) ?? Measured(planned?.Lines, parse)
                    ?? throw new FormatException($"--sheets or --from-plan is needed: what was developed, as \"{SheetsPhrase.Form}\""),
                parse.GetValue(_developer) ?? []),
            Bath = planned?.Bath ?? parse.GetValue(_bath),
            DrawFirst = planned?.DrawFirst ?? [],
            Plan = kept?.Name,
            Anyway = parse.GetValue(_anyway),
            BooksDifference = parse.GetValue(_bookDifference),
        };
    }

    /// <summary>What was really measured out, once for each batch, takes the place of what was planned.</summary>
    private IReadOnlyList<SessionLine>? Measured(IReadOnlyList<SessionLine>? lines, ParseResult parse) =>
        parse.GetValue(_developer) is { Length: > 0 } ? lines?.Select(line => line with { Developer = null }).ToList() : lines;

    /// <summary>The lines of the command line; those that say no developer take what the plan measures out for their batches.</summary>
    private IReadOnlyList<SessionLine>? Written(ParseResult parse, SessionPlan? plan)
    {
        if (parse.GetValue(_sheets) is not { Length: > 0 } lines)
            return null;
        return plan is null || parse.GetValue(_developer) is { Length: > 0 } ? lines : PlannedDeveloper.Over(lines, plan);
    }

    /// <summary>The plan that was carried out, with the baths that were named instead.</summary>
    private SessionPlan Planned(KeptPlan kept, ParseResult parse, EntryFrame frame, Holdings holdings)
    {
        var baths = new SessionBaths(holdings, frame.Date).Instead(parse.GetValue(_bath), kept.Request.Bath);
        return SessionPlanning.Of(kept.Request with { Bath = baths }, holdings, frame.Date) switch
        {
            Planned planned => planned.Plan,
            NotPlanned not => throw new RefusedByCommandException(not.Refusal.Sentence),
            var other => throw new InvalidOperationException($"the plan is {other}"),
        };
    }
}
