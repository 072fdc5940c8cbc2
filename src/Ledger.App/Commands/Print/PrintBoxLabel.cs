using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>print box-label: the seal of a box of film, exposed or not.</summary>
internal sealed class PrintBoxLabel : PrintCommand
{
    private readonly Argument<string> _film = Typed.Argument(
        "film", Text.NotEmpty, "the film's code; or an unexposed box of it, such as fen80/6").Offered(Offers.FilmBoxes);
    private readonly Argument<string?> _group = new Argument<string?>("group")
    {
        HelpName = "GROUP",
        Description = "the development group: N, N+1, N-1",
        Arity = ArgumentArity.ZeroOrOne,
    }.Offered(Offers.Groups);

    private readonly Option<int?> _sheets = Typed.Option("--sheets", "N", Text.Whole,
        "how many are in it; otherwise left to be filled in");
    private readonly Option<bool> _unexposed = new("--unexposed") { Description = "for a box of unexposed sheets" };
    private readonly LabelOptions _labels = new();

    public PrintBoxLabel(Workbench bench)
        : base(bench, "box-label", "Prints seals for boxes of film, exposed or unexposed: open in total darkness only.",
            """
                An unexposed box: trayledger print box-label fen80 --unexposed
                Example: trayledger print box-label fen80 N+1 --copies 2
                """)
    {
        Arguments.Add(_film);
        Arguments.Add(_group);
        Options.Add(_sheets);
        Options.Add(_unexposed);
        _labels.AddTo(this);
    }

    protected override PrintedPage Page(ParseResult parse, ILedger ledger, Holdings holdings)
    {
        if (parse.GetValue(_sheets) is < 1 or > 10_000)
            throw new FormatException("--sheets: a box holds from 1 to 10000");
        var placing = _labels.Placing(parse);
        var labels = placing.Copied([Of(parse, ledger, holdings)]);
        return BoxLabel.Page(labels, placing.On(LabelSheet.Large, labels));
    }

    private Label Of(ParseResult parse, ILedger ledger, Holdings holdings)
    {
        var code = parse.GetRequiredValue(_film);
        var group = parse.GetValue(_group)?.Trim() ?? "";
        var box = holdings.Container(code);
        var isUnexposed = box is not null || parse.GetValue(_unexposed);
        if (holdings.Item(box?.Lot.Item ?? code) is not { Kind: ItemKind.Film } film)
            throw new RefusedByCommandException(
                $"no film and no box of film is called \"{code}\"; `show shelf` lists them");
        if (isUnexposed && group.Length > 0)
            throw new FormatException(
                $"\"{group}\": a development group is for exposed sheets; leave it out for an unexposed box");
        if (box is not null && parse.GetValue(_sheets) is not null)
            throw new FormatException($"--sheets: what {box.Code} holds is in the ledger; leave it out");
        return box is not null ? BoxLabel.Unexposed(film, box)
            : isUnexposed ? BoxLabel.Unexposed(film, parse.GetValue(_sheets), ledger.Today)
            : BoxLabel.Of(film, group, parse.GetValue(_sheets), ledger.Today);
    }
}
