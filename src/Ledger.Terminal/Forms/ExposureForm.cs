using Ledger.Core.Film;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Terminal.Gui.Input;

namespace Ledger.Terminal.Forms;

/// <summary>Sheets in holders were exposed: side, date, group, one free line.</summary>
internal sealed class ExposureForm : FormModel
{
    private readonly Holdings _holdings;

    public ExposureForm(ILedger ledger, string? holder)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        Sides = new("Sides", 44)
        {
            Choices = () => Loaded.Select(side => side.Code),
            Hint = "Sides such as E07-2, or holders for all their sides. F3: the next loaded one.",
        };
        Sides.Offer(Loaded.FirstOrDefault(side => holder is null || side.Holder == holder)?.Code);
        Group.Offer(Exposure.Normal);
        Rows = [[Date, Group, Anyway], [Sides], [Subject], [Note]];
    }

    public override string Title => "Exposure";

    public override IReadOnlyList<string> Purpose =>
        ["Sheets in holders were exposed: which side, for which development group, and one free line. Everything else is optional."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override IReadOnlyList<FormKey> Keys =>
        [new(Key.F3, "Next side", "adds the next loaded side", _ => NamesField.AddNext(Sides, Loaded.Select(side => side.Code), " "))];

    public override FormField First => Sides;

    public FormField Sides { get; }

    public FormField Group { get; } = new("Group", 5)
    {
        Choices = () => ["N", "N-1", "N-2", "N+1", "N+2"], Hint = "How it will be developed.",
    };

    public FormField Subject { get; } = new("Subject", 50) { Hint = "The picture: what, light, lens." };

    public FormField Anyway { get; } = YesNo.Anyway();

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new ExposureNote
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Sides = answers.Names(Sides),
        Group = Group.Text,
        Subject = Subject.Text,
        Anyway = answers.IsYes(Anyway),
        Note = Note.Text,
    };

    private IEnumerable<HolderSide> Loaded => _holdings.Film.Holders.SelectMany(holder => holder.Sides)
        .Where(side => _holdings.Film.In(side) is { Exposure: null });
}
