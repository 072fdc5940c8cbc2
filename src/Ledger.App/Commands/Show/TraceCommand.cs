namespace Ledger.App.Commands.Show;

/// <summary>What is traced, and what of it is shown.</summary>
/// <param name="Trace">Both directions; null where only what is at risk is asked for.</param>
/// <param name="Risk">What shares a fault, worst first; null where it is not asked for.</param>
internal sealed record TraceShown(TraceReading? Trace, RiskReading? Risk);

/// <summary>trace: what something came through, and what else came through that.</summary>
internal sealed class TraceCommand : ShowCommand<TraceShown>
{
    private readonly Argument<string> _what = Typed.Argument("what", Text.NotEmpty, Traced.Accepted)
        .Offered(Offers.Traceable);
    private readonly Option<bool> _risk = new("--at-risk")
    {
        Description = "what shares a fault of it, worst first, with the reason for each and what can be done",
    };

    private readonly Option<LocalDate?> _by = Typed.Option(
        "--by", "DATE", Text.Date, "the day by which the fault was there; with --at-risk, which it implies");

    public TraceCommand(Workbench bench)
        : base(bench, "trace", "Shows what something came through, and what else came through that.", """
            Back goes from a sheet to its box, holder side, exposure, session, developer and
            baths, each bath as it was at that moment; forward to every sheet that shares any
            of them. A bath is shared by many, so what came by way of one is told apart.
            From a fault: trayledger trace F3 --at-risk --by 2026-08-24
            As a list to work off on paper: trayledger print check-list F3
            Example: trayledger trace F3 --at-risk
            """, TraceShape.Of)
    {
        Arguments.Add(_what);
        Options.Add(_risk);
        Options.Add(_by);
    }

    protected override TraceShown Read(View view, ParseResult parse)
    {
        var (what, by) = (parse.GetRequiredValue(_what), parse.GetValue(_by));
        return parse.GetValue(_risk) || by is not null
            ? new(null, Traced.Risk(what, view.Ledger, view.Holdings, by))
            : new(Traced.Read(what, view.Ledger, view.AsOf), null);
    }

    protected override void WriteText(TraceShown shown, View view, TextWriter output)
    {
        if (shown.Trace is { } trace)
            TraceText.Write(trace, view, output);
        if (shown.Risk is { } risk)
            RiskText.Write(risk, view, output);
    }
}
