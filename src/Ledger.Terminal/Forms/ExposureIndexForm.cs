using System.Globalization;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Stock;

namespace Ledger.Terminal.Forms;

/// <summary>The speed at which the user exposes a lot of film.</summary>
internal sealed class ExposureIndexForm : FormModel
{
    private readonly Holdings _holdings;

    public ExposureIndexForm(ILedger ledger, string container)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        Container = new("Box", 16, FieldKind.Choice)
        {
            Choices = () => _holdings.Containers.Where(IsFilm).Select(box => box.Code), Hint = "A box of the lot; all boxes of its delivery follow.",
        };
        Container.Offer(container);
        ExposureIndex.Offer(_holdings.Container(container)?.Lot.ExposureIndex?.ToString(CultureInfo.InvariantCulture));
        Rows = [[Date, Container], [ExposureIndex], [Note]];
    }

    public override string Title => "Exposure index";

    public override IReadOnlyList<string> Purpose => ["The exposure index at which you expose a lot of film: your own figure, from your own tests."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => ExposureIndex;

    public FormField Container { get; }

    public FormField ExposureIndex { get; } = new("Exposed at", 6, FieldKind.Figure) { Hint = "Such as 64." };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new ExposureIndexSetting
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Container = answers.Needed(Container),
        ExposureIndex = answers.Whole(ExposureIndex),
        Note = Note.Text,
    };

    private bool IsFilm(Container box) => _holdings.Item(box.Lot.Item)?.Kind == ItemKind.Film;
}
