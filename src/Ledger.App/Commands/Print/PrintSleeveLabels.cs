using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>print sleeve-labels: a label for each negative of a session.</summary>
internal sealed class PrintSleeveLabels : PrintCommand
{
    private const int PageSize = 100;

    private readonly Argument<string> _session = Typed.Argument("session", Text.NotEmpty, "the session's name, such as S22");
    private readonly LabelOptions _labels = new();

    public PrintSleeveLabels(Workbench bench)
        : base(bench, "sleeve-labels", "A label for the sleeve of each negative of a session.", """
            Rejects, tests and practice sheets get none.
            Example: trayledger print sleeve-labels S22 --html sleeves.html
            """)
    {
        Arguments.Add(_session);
        _labels.AddTo(this);
    }

    protected override PrintedPage Page(ParseResult parse, ILedger ledger, Holdings holdings)
    {
        var name = parse.GetRequiredValue(_session).Trim();
        var session = Find(name, ledger) ?? throw new RefusedByCommandException(
            $"there is no session \"{name}\" in the journal; `show sessions` lists them");
        return SleeveLabels.Page(
            _labels.Copies(SleeveLabels.Of(session, holdings), parse), _labels.On(LabelSheet.Small, parse));
    }

    private static SessionRecord? Find(string name, ILedger ledger)
    {
        SessionRecord? last = null;
        while (ledger.Sessions(ledger.Today, last, PageSize) is { Count: > 0 } page)
        {
            if (page.FirstOrDefault(session => session.Session.Equals(name, StringComparison.OrdinalIgnoreCase)) is { } found)
                return found;
            last = page[^1];
        }

        return null;
    }
}
