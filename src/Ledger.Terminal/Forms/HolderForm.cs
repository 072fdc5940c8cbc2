using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Terminal.Forms;

/// <summary>A holder is registered.</summary>
internal sealed class HolderForm : FormModel
{
    private readonly FormatTable _formats;

    public HolderForm(ILedger ledger)
        : base(ledger)
    {
        var holdings = ledger.HoldingsOn(ledger.Today);
        _formats = holdings.Formats;
        Format = new("Format", 12, FieldKind.Choice)
        {
            Choices = () => _formats.All.Where(format => format.Unit == Unit.Sheet).Select(format => format.Code),
            Hint = "The film it takes, such as 8x10, or a format of your own.",
        };
        var last = holdings.Film.Holders.LastOrDefault();
        Holder.Offer(last is null ? "H01" : NextName.After(last.Code, code => holdings.Film.Holder(code) is not null));
        Format.Offer(last?.Format.Code ?? "8x10");
        Sides.Offer(last is null ? holdings.Settings.Film.SideNames : string.Join('/', last.Sides.Select(side => side.Name)));
        Rows = [[Holder, Format], [Sides, Notch], [Bought, Date], [Note]];
    }

    public override string Title => "Holder";

    public override IReadOnlyList<string> Purpose =>
        ["A film holder is registered with its sides. A side is called by its holder and its own name: E07-2. Its format and sides stay "
            + "as they are."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public FormField Holder { get; } = new("Holder", 12) { Hint = "The name on it." };

    public FormField Format { get; }

    public FormField Sides { get; } = new("Sides", 16) { Hint = "Their names with strokes between: 1/2, A/B, or six of them." };

    public FormField Notch { get; } = new("Notch", 10) { Hint = "The notches in its flap, to tell it in the dark." };

    public FormField Bought { get; } = new("Bought", 10, FieldKind.Date);

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new HolderDefinition
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Holder = answers.Needed(Holder),
        Format = answers.Format(Format, _formats) ?? Core.Measures.Format.Common[0],
        Sides = Sides.IsEmpty ? [] : Sides.Text.Split('/', StringSplitOptions.TrimEntries),
        Notch = Notch.Text.Trim(),
        BoughtOn = answers.OptionalDate(Bought),
        Note = Note.Text,
    };
}
