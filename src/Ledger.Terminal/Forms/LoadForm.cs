using Ledger.Core.Film;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;
using Terminal.Gui.Input;

namespace Ledger.Terminal.Forms;

/// <summary>Sheets are loaded into holders, several sides in one step.</summary>
internal sealed class LoadForm : FormModel
{
    private readonly Holdings _holdings;
    private readonly Format? _format;

    public LoadForm(ILedger ledger, string? holder)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        _format = (holder is null ? _holdings.Film.Holders.FirstOrDefault() : _holdings.Film.Holder(holder))?.Format;
        Sides = new("Sides", 44)
        {
            Choices = () => Free.Select(side => side.Code),
                Hint = "Sides such as E07-2, or holders for all their sides. F3: the next empty one.",
        };
        From = new("Film or box", 16, FieldKind.Choice)
        {
            Choices = () => [.. Films.Select(film => film.Code), .. Boxes.Select(box => box.Code)],
                Hint = "A film, for the box that is reached for first; or a box.",
        };
        Sides.Offer(string.Join(' ', Free.Where(side => side.Holder == holder).Select(side => side.Code)));
        From.Offer(LastLoaded ?? Films.FirstOrDefault(IsAtHand)?.Code);
        Rows = [[Date], [Sides], [From, Anyway], [Note]];
    }

    public override string Title => "Load";

    public override IReadOnlyList<string> Purpose =>
    [
        "Sheets go from their box into holders, one into each side. A side that holds a sheet cannot be loaded again.",
        "Clean a holder before you load it; the form reminds you of those that are not.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override IReadOnlyList<FormKey> Keys =>
        [new(Key.F3, "Next side", "adds the next empty side", _ => NamesField.AddNext(Sides, Free.Select(side => side.Code), " "))];

    public override FormField First => Sides;

    public FormField Sides { get; }

    public FormField From { get; }

    public FormField Anyway { get; } = YesNoField.Anyway();

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new Load
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Sides = answers.Names(Sides),
        From = answers.Needed(From),
        Anyway = answers.IsYes(Anyway),
        Note = Note.Text,
    };

    private IEnumerable<HolderSide> Free => _holdings.Film.Holders.Where(holder => _format is null || holder.Format == _format)
        .SelectMany(holder => holder.Sides).Where(side => side.OutOfService is null && _holdings.Film.In(side) is null);

    private IEnumerable<Item> Films => _holdings.Items.Where(item => item is { Kind: ItemKind.Film, Unit: Unit.Sheet });

    /// <summary>The film of this format that was loaded last, while there is more of it.</summary>
    private string? LastLoaded => _holdings.Film.Sheets.Select(sheet => _holdings.Item(sheet.Item)!).LastOrDefault(IsAtHand)?.Code;

    private bool IsAtHand(Item film) => film.Format == _format && _holdings.ContainersOf(film.Code).Any();

    private IEnumerable<Container> Boxes => Films.SelectMany(film => _holdings.ContainersOf(film.Code));
}
