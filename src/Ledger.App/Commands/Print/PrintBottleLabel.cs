using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>print bottle-label: what is in a bottle, a bath or a waste jug, since when, until when.</summary>
internal sealed class PrintBottleLabel : PrintCommand
{
    private readonly Argument<string[]> _what = new Argument<string[]>("what")
    {
        HelpName = "WHAT",
        Description = "bottles, such as syrup/2, baths, such as F4, or waste jugs, such as J2; of an item's code, all "
            + "its bottles",
        Arity = ArgumentArity.OneOrMore,
    }.Offered(Offers.Bottles);

    private readonly LabelOptions _labels = new();

    public PrintBottleLabel(Workbench bench)
        : base(bench, "bottle-label",
            "Prints labels for bottles, baths and waste jugs: name, dilution, opened or mixed, discard by, "
                + "cautions.", """
            Example: trayledger print bottle-label syrup F4 J2 --html labels.html
            """)
    {
        Arguments.Add(_what);
        _labels.AddTo(this);
    }

    protected override PrintedPage Page(ParseResult parse, ILedger ledger, Holdings holdings)
    {
        var placing = _labels.Placing(parse);
        var labels = placing.Copied(parse.GetRequiredValue(_what).SelectMany(what => Of(what, holdings)));
        return BottleLabel.Page(labels, placing.On(LabelSheet.Large, labels));
    }

    private static List<Label> Of(string what, Holdings holdings) =>
        BottleLabel.Named(what, holdings).ToList() is { Count: > 0 } labels
            ? labels
            : throw new RefusedByCommandException(
                $"there is no bottle, bath, jug or item called \"{what}\" in use; `show shelf`, `show baths` and `show "
                    + "jugs` list them");
}
