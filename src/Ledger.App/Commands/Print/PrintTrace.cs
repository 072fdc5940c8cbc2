using Ledger.App.Commands.Show;
using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>print trace X: what something came through, and what else came through that.</summary>
internal sealed class PrintTrace : PrintCommand
{
    private readonly Argument<string> _what = Typed.Argument("what", Text.NotEmpty, Traced.Accepted)
        .Offered(Offers.Traceable);

    public PrintTrace(Workbench bench)
        : base(bench, "trace", "What something came through, and what else came through that.", """
            Example: trayledger print trace 2025-014 --html trace.html
            """) => Arguments.Add(_what);

    protected override PrintedPage Page(ParseResult parse, ILedger ledger, Holdings holdings) =>
        TracePage.Of(Traced.Read(parse.GetRequiredValue(_what), ledger, holdings.AsOf), holdings.Settings.Style);
}

/// <summary>print check-list X: a list to work off a fault with a pencil.</summary>
internal sealed class PrintCheckList : PrintCommand
{
    private readonly Argument<string> _what = Typed.Argument("what", Text.NotEmpty, Traced.Accepted)
        .Offered(Offers.Traceable);
    private readonly Option<LocalDate?> _by = Typed.Option("--by", "DATE", Text.Date,
        "the day by which the fault was there");

    public PrintCheckList(Workbench bench)
        : base(bench, "check-list", "What shares a fault, worst first, to be worked off with a pencil.", """
            What to keep apart, which sheets to test first, and a line for each sheet's result.
            Example: trayledger print check-list F3 --by 2026-08-24
            """)
    {
        Arguments.Add(_what);
        Options.Add(_by);
    }

    protected override PrintedPage Page(ParseResult parse, ILedger ledger, Holdings holdings) =>
        CheckList.Of(Traced.Risk(parse.GetRequiredValue(_what), ledger, holdings, parse.GetValue(_by)));
}

/// <summary>print sheets WORDS: what a search finds, as a list on paper.</summary>
internal sealed class PrintSheets : PrintCommand
{
    private readonly SheetSearchOptions _search = new();

    public PrintSheets(Workbench bench)
        : base(bench, "sheets", "A list of sheets: what a search finds.", """
            The words and options are those of `trayledger show sheets`.
            Example: trayledger print sheets mill --fate keeper --html mill.html
            """) => _search.AddTo(this);

    protected override PrintedPage Page(ParseResult parse, ILedger ledger, Holdings holdings)
    {
        var search = _search.Read(parse);
        return TracePage.Of(
            search.Words.Count > 0 ? $"Sheets: {string.Join(" ", search.Words)}" : "Sheets",
            [.. ledger.Cards(search, holdings.AsOf).Where(search.Finds)]);
    }
}
