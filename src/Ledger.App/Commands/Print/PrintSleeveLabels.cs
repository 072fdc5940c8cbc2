using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>print sleeve-labels: a label for each negative of a session.</summary>
internal sealed class PrintSleeveLabels : PrintCommand
{
    private readonly Argument<string> _session = Typed.Argument("session", Text.NotEmpty,
        "the session's name, such as S22")
        .Offered(Offers.Sessions);
    private readonly LabelOptions _labels = new();

    public PrintSleeveLabels(Workbench bench)
        : base(bench, "sleeve-labels", "Prints a label for the sleeve of each negative of a session.", """
            Each bears the negative's own number. Rejects, tests and practice sheets get none.
            Example: trayledger print sleeve-labels S22 --html sleeves.html
            """)
    {
        Arguments.Add(_session);
        _labels.AddTo(this);
    }

    protected override PrintedPage Page(ParseResult parse, ILedger ledger, Holdings holdings)
    {
        var name = parse.GetRequiredValue(_session).Trim();
        var session = ledger.Session(name, ledger.Today) ?? throw new RefusedByCommandException(
            $"there is no session \"{name}\" in the journal; `show sessions` lists them");
        var placing = _labels.Placing(parse);
        var labels = placing.Copied(SleeveLabels.Of(session, ledger.SheetsOf(name, ledger.Today), holdings));
        return SleeveLabels.Page(labels, placing.On(LabelSheet.Small, labels));
    }
}
