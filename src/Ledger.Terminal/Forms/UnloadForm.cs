using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Terminal.Gui.Input;

namespace Ledger.Terminal.Forms;

/// <summary>Sheets leave their holders, or a box of exposed sheets with a wrong label is put right.</summary>
internal sealed class UnloadForm : FormModel
{
    private readonly Holdings _holdings;

    public UnloadForm(ILedger ledger, string? from)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        From = new("From", 44)
        {
            Choices = () => Exposed.Concat(_holdings.Film.ExposedBoxes.Select(box => box.Code)),
            Hint = "Sides, holders, boxes of exposed sheets, divided by commas. F3: the next side.",
        };
        To = new("Back into", 16, FieldKind.Choice)
        {
            Choices = () => _holdings.Containers.Where(box => !box.IsSealed).Select(box => box.Code),
            Hint = "The box for sheets that were not exposed; empty for the one they came out of.",
        };
        From.Offer(Offered(from));
        Rows = [[Date], [From], [Group, To], [Note]];
    }

    public override string Title => "Unload";

    public override IReadOnlyList<string> Purpose =>
    [
        "Exposed sheets go from their holders into the box of their film and group; sheets that were not exposed go back to their box.",
        "A box of exposed sheets with a wrong label is put right here too: name it, and the group it really is.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override IReadOnlyList<FormKey> Keys =>
        [new(Key.F3, "Next side", "adds the next exposed side", _ => NamesField.AddNext(From, Exposed, ", "))];

    public override FormField First => From;

    public FormField From { get; }

    public FormField Group { get; } = new("Other group", 5) { Hint = "Only when the exposure notes are wrong." };

    public FormField To { get; }

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new Unload
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        From = answers.LongNames(From),
        Group = Group.Text,
        To = Answers.Optional(To),
        Note = Note.Text,
    };

    private IEnumerable<string> Exposed => _holdings.Film.Holders.SelectMany(holder => holder.Sides)
        .Where(side => _holdings.Film.In(side) is { Exposure: not null }).Select(side => side.Code);

    private string? Offered(string? from)
    {
        if (from is not null && _holdings.Film.Holder(from) is { } holder)
            return string.Join(", ", holder.Sides.Where(side => _holdings.Film.In(side) is not null).Select(side => side.Code));
        return from ?? Exposed.FirstOrDefault();
    }
}
