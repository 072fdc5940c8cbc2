namespace Ledger.App.Commands.Plan;

/// <summary>
/// What a session is planned from: a kept plan, or a process and sheets. Planning and the mixing sheet share it.
/// </summary>
internal sealed class PlanOptions
{
    private readonly Option<string?> _fromPlan = Typed.Option<string?>(
        "--from-plan", "NAME", Text.NotEmpty,
        "a plan that was kept with `record plan`; what else is said takes the place of its own")
        .Offered(Offers.Plans);

    private readonly Option<string?> _process = Typed.Option<string?>(
        "--process", "NAME", Text.NotEmpty, "the process; not needed while there is only one")
            .Offered(Offers.Processes);

    private readonly Option<string[]> _sheets = new(Line.Option)
    {
        HelpName = "LINE", AllowMultipleArgumentsPerToken = true,
        Description = $"what is to be developed, once for each film and group: \"{LinePhrase.Pattern(Line)}\"",
    };

    private readonly Option<ExposedPhrase[]> _exposed = ExposedOption.New();

    private readonly Option<GroupTimes?> _minutes = Typed.Option<GroupTimes?>(
        "--minutes", "TIMES", Times, "developing times in place of the process's: 11, or \"11 N-1=9 N+1=14\"");

    private readonly Option<string?> _bath = Typed.Option<string?>(
        "--bath", "BATHS", Text.NotEmpty,
        "the bath, the first of a pair, or one of each item that is used again: \"F9, ST2\"; otherwise the only one "
            + "that fits")
        .Offered(Offers.Baths);

    private readonly Option<LocalDate?> _on = Typed.Option(
        "--on", "DATE", Text.Date,
        "the day of the session, on which everything must be usable; otherwise the plan's, or today");

    /// <summary>All of them, in the order in which help shows them.</summary>
    public IReadOnlyList<Option> All => [_process, _sheets, _exposed, _minutes, _bath, _fromPlan, _on];

    /// <summary>The name of the plan that was asked for; empty when there was none.</summary>
    public string NameIn(ParseResult parse) => parse.GetValue(_fromPlan)?.Trim() ?? "";

    /// <summary>Plans the session, or refuses with a sentence.</summary>
    public SessionPlan PlanIn(ParseResult parse, Holdings holdings, ICostRecords prices)
    {
        var kept = Kept(parse.GetValue(_fromPlan), holdings);
        var sheets = ExposedOption.Sheets(parse.GetValue(_exposed), holdings)
            .Concat(Sheets(parse.GetValue(_sheets) ?? [], holdings)).ToList();
        var request = new PlanRequest
        {
            Process = parse.GetValue(_process) ?? kept?.Request.Process ?? OnlyProcess(holdings),
            Sheets = sheets.Count > 0 ? sheets : kept?.Request.Sheets
                ?? throw new FormatException(
                    "--sheets, --exposed or --from-plan is needed: what is to be developed, as \""
                        + $"{LinePhrase.Pattern(Line)}\""),
            Times = parse.GetValue(_minutes) ?? kept?.Request.Times ?? GroupTimes.None,
            Bath = new SessionBaths(holdings, holdings.AsOf).Instead(parse.GetValue(_bath), kept?.Request.Bath),
        };
        var day = parse.GetValue(_on) ?? (kept?.On > holdings.AsOf ? kept.On : holdings.AsOf);
        if (day < holdings.AsOf)
            throw new FormatException(
                $"--on {Dates.Text(day)} lies before {Dates.Text(holdings.AsOf)}; a session is planned for a day to "
                    + "come");
        return SessionPlanning.Of(request, holdings, day, prices) switch
        {
            Planned planned => planned.Plan,
            NotPlanned not => throw new RefusedByCommandException(not.Refusal.Sentence),
            var other => throw new InvalidOperationException($"the plan is {other}"),
        };
    }

    /// <summary>The open plan of that name; null when none was named.</summary>
    public static OpenPlan? Kept(string? name, Holdings holdings) => name is null ? null
        : holdings.Plan(name) ?? throw new RefusedByCommandException(
            $"there is no plan \"{name.Trim()}\" that is still open; `show plans` lists them");

    private static LineKind Line => EntryKinds.Named("plan")!.Line!;

    /// <summary>The lines as they were typed, in the words of a plan's description.</summary>
    private static List<RequestedSheets> Sheets(string[] phrases, Holdings holdings)
    {
        var (terms, problems) = (ReadingTerms.Typed(holdings, holdings.AsOf), new List<FieldProblem>());
        var sheets = phrases.Select(phrase => EntryReading.Line(Line, LinePhrase.Read(Line, phrase, terms, problems),
            terms, problems)).ToList();
        return problems.Count == 0 ? [.. sheets.Cast<RequestedSheets>()]
            : throw new FormatException($"{Line.Option}: {problems[0].Sentence(field => field.Name)}");
    }

    private static GroupTimes Times(string text) => GroupTimes.Read(text)
        ?? throw new FormatException($"--minutes: found \"{text}\"; accepted is {GroupTimes.Accepted}");

    private static string OnlyProcess(Holdings holdings)
    {
        var processes = holdings.Processes.Take(2).ToList();
        return processes.Count == 1 ? processes[0].Name : throw new FormatException(
            processes.Count == 0
                ? "there is no process yet; define one with `trayledger record process`"
                : "--process is needed, since there are several processes");
    }
}
