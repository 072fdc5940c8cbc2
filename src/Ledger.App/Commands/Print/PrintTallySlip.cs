using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>print tally-slip: a slip to hang beside a bath.</summary>
internal sealed class PrintTallySlip : PrintCommand
{
    private readonly Argument<string> _bath = Typed.Argument("bath", Text.NotEmpty, "the bath's name")
        .Offered(Offers.Baths);

    public PrintTallySlip(Workbench bench)
        : base(bench, "tally-slip",
            "Prints a slip beside a bath: a box to cross out for each sheet of its capacity left.", """
            Example: trayledger print tally-slip F4
            """) => Arguments.Add(_bath);

    protected override PrintedPage Page(ParseResult parse, ILedger ledger, Holdings holdings)
    {
        var code = parse.GetRequiredValue(_bath);
        var bath = holdings.Bath(code) ?? throw new RefusedByCommandException(
            $"there is no bath \"{code}\" in use; `show baths` lists them");
        return TallySlip.Of(
            new BathReading(bath, ledger.Today), holdings.ItemsOf(ItemKind.Film), holdings.Settings.Style);
    }
}
