using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.Terminal.Forms;

/// <summary>Sides are taken out of service with the film in them, or put back.</summary>
internal sealed class ServiceForm : FormModel
{
    public ServiceForm(ILedger ledger, string? sides)
        : base(ledger)
    {
        var film = ledger.HoldingsOn(ledger.Today).Film;
        Sides = new("Sides", 44)
        {
            Choices = () => film.Holders.SelectMany(holder => holder.Sides).Select(side => side.Code),
                Hint = "Sides such as E07-2, or holders.",
        };
        Sides.Offer(sides);
        Back.Offer(sides is not null && film.Side(sides) is { OutOfService: not null } ? "yes" : "no");
        Rows = [[Date, Back], [Sides], [Reason], [Note]];
    }

    public override string Title => "Service";

    public override IReadOnlyList<string> Purpose =>
        ["A side that leaks or sticks is taken out of service; the film in it stays on the books. Repaired, it comes back."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Sides;

    public FormField Sides { get; }

    public FormField Back { get; } = YesNo.Field("Back in service", "Yes when it is repaired.");

    public FormField Reason { get; } = new("Reason", 30, FieldKind.Choice)
    {
        Choices = () => ["light leak", "stiff slide", "scratches", "repaired"], Hint = "Up and Down offer the usual reasons.",
    };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new SideService
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Sides = answers.Names(Sides),
        IsInService = answers.IsYes(Back),
        Reason = answers.Needed(Reason),
        Note = Note.Text,
    };
}
