using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Stock;
using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>print box-label: the seal of a box of exposed film.</summary>
internal sealed class PrintBoxLabel : PrintCommand
{
    private readonly Argument<string> _film = Typed.Argument("film", Text.NotEmpty, "the film's code").Offered(Offers.Films);
    private readonly Argument<string?> _group = new Argument<string?>("group")
    {
        HelpName = "GROUP",
        Description = "the development group: N, N+1, N-1",
        Arity = ArgumentArity.ZeroOrOne,
    }.Offered(Offers.Groups);

    private readonly Option<int?> _sheets = Typed.Option("--sheets", "N", Text.Whole, "how many are in it; otherwise left to be filled in");
    private readonly LabelOptions _labels = new();

    public PrintBoxLabel(Workbench bench)
        : base(bench, "box-label", "Prints seals for boxes of exposed film: open in total darkness only.", """
            Example: trayledger print box-label fen80 N+1 --copies 2
            """)
    {
        Arguments.Add(_film);
        Arguments.Add(_group);
        Options.Add(_sheets);
        _labels.AddTo(this);
    }

    protected override PrintedPage Page(ParseResult parse, ILedger ledger, Holdings holdings)
    {
        var code = parse.GetRequiredValue(_film);
        if (holdings.Item(code) is not { Kind: ItemKind.Film } film)
            throw new RefusedByCommandException($"no film is called \"{code}\"; `show shelf` lists them");
        if (parse.GetValue(_sheets) is < 1 or > 10_000)
            throw new FormatException("--sheets: a box holds from 1 to 10000");
        var label = BoxLabel.Of(film, parse.GetValue(_group)?.Trim() ?? "", parse.GetValue(_sheets), ledger.Today);
        return BoxLabel.Page(_labels.Copies([label], parse), _labels.On(LabelSheet.Large, parse));
    }
}
