using Ledger.App.Commands.Plan;
using Ledger.Storage;

namespace Ledger.App.Commands.Record;

/// <summary>record session: a session of developing, from what was planned where a plan is named.</summary>
internal sealed class RecordSession : RecordKind
{
    private const string Developer = "developer_ml";

    private readonly Option<string[]> _developer = new("--developer")
    {
        HelpName = "ML", AllowMultipleArgumentsPerToken = true,
        Description = "the concentrate measured out, once for each batch in the order of the lines; otherwise each "
            + "line is a batch and takes what the process asks for",
    };

    private readonly Option<bool> _again = new("--same-again")
    {
        Description = "the batches, developer and baths of the last session once more; exposed sheets that wait are "
            + "taken first",
    };

    private SessionPlan? _plan;
    private bool _hasOwnLines;

    public RecordSession(Workbench bench)
        : base(bench, EntryKinds.Named("session")!)
    {
        Options.Add(_developer);
        Options.Add(_again);
    }

    protected override void Complete(EntryText text, ParseResult parse, LedgerFile ledger,
        Holdings holdings, ReadingTerms terms)
    {
        (_plan, _hasOwnLines) = (null, text.Lines.Count > 0);
        if (PlanOptions.Kept(text["plan"] is { Length: > 0 } name ? name : null, holdings) is { } kept)
            Follow(kept, text, holdings, terms);
        if (parse.GetValue(_again))
            Repeat(text, ledger, holdings, terms);
        Measure(text, parse.GetValue(_developer) ?? []);
    }

    /// <summary>Fills in what the last session says and the command line does not.</summary>
    private static void Repeat(EntryText text, LedgerFile ledger, Holdings holdings, ReadingTerms terms)
    {
        var kind = EntryKinds.Named("session")!;
        var day = EntryReading.Read(kind, text, terms).Values.Date;
        if (ledger.Sessions(day, null, 1) is not [var last])
            throw new RefusedByCommandException("no session was held yet, so none can be repeated");
        var again = SessionAgain.Of(last, ledger.Said(last.Number) as SessionLog, holdings) with { Date = day };
        var written = EntryWriting.Write(kind, WaitingFirst.In(again, holdings), terms);
        foreach (var field in new[] { "process", "bath" })
            if (text[field].Length == 0)
                text[field] = written[field];
        foreach (var line in text.Lines.Count > 0 ? [] : written.Lines.ToList())
            text.Lines.Add(line);
    }

    /// <summary>Lines that say no developer take what the plan measures out for their batches.</summary>
    protected override Entry React(
        Entry entry, ParseResult parse, LedgerFile ledger, ReadingTerms terms, ICollection<FieldProblem> problems) =>
        entry is SessionLog log && _plan is { } plan && _hasOwnLines
            && parse.GetValue(_developer) is not { Length: > 0 }
            ? log with { Lines = PlannedDeveloper.Over(log.Lines, plan) } : entry;

    /// <summary>
    /// Fills in what the plan says and the command line does not, with the baths that were named instead.
    /// </summary>
    private void Follow(OpenPlan kept, EntryText text, Holdings holdings, ReadingTerms terms)
    {
        var day = EntryReading.Read(EntryKinds.Named("session")!, text, terms).Values.Date;
        var baths = new SessionBaths(holdings, day).Instead(text["bath"] is { Length: > 0 } named ? named : null,
            kept.Request.Bath);
        _plan = Planned(SessionPlanning.Of(kept.Request with { Bath = baths }, holdings, day));
        var log = EntryWriting.Write(EntryKinds.Named("session")!, _plan.ToLog("", text["session"], day), terms);
        text["bath"] = log["bath"];
        text["draw_first"] = log["draw_first"];
        if (text["process"].Length == 0)
            text["process"] = log["process"];
        foreach (var line in text.Lines.Count > 0 ? [] : log.Lines.ToList())
            text.Lines.Add(line);
    }

    /// <summary>What was really measured out, once for each batch, takes the place of what was planned.</summary>
    private void Measure(EntryText text, string[] developer)
    {
        if (developer.Length == 0)
            return;
        if (_hasOwnLines && text.Lines.Any(line => line[Developer].Length > 0 || line["developer_g"].Length > 0))
            throw new FormatException(
                "say the developer either in the lines of sheets or with --developer, not in both");
        if (developer.Length > text.Lines.Count)
            throw new FormatException(
                $"--developer was given {Counted.Of(developer.Length, "time")} for "
                    + $"{Counted.Of(text.Lines.Count, "line")} of sheets; at most once a line");
        for (var i = 0; i < text.Lines.Count; i++)
            text.Lines[i][Developer] = i < developer.Length ? developer[i] : "";
    }

    private static SessionPlan Planned(PlanDecision decision) => decision switch
    {
        Planned planned => planned.Plan,
        NotPlanned not => throw new RefusedByCommandException(not.Refusal.Sentence),
        var other => throw new InvalidOperationException($"the plan is {other}"),
    };
}
