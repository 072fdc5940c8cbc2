using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.Terminal.Forms;

/// <summary>A box or bottle is kept somewhere else: freezer, fridge, shelf.</summary>
internal sealed class StorageForm : FormModel
{
    private readonly Holdings _holdings;

    public StorageForm(ILedger ledger, string container)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        Container = new("What", 16, FieldKind.Choice) { Choices = () => _holdings.Containers.Select(known => known.Code), Hint = "A box or bottle." };
        Container.Offer(container);
        To.Offer(Other(container));
        Rows = [[Date, Container], [To, OpensFrom], [Note]];
    }

    public override string Title => "Move";

    public override IReadOnlyList<string> Purpose =>
    [
        "A box or bottle is kept somewhere else from now on.",
        "Film that comes out of the cold warms up before its box is opened, or it sweats: the setting thaw-hours says how long.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => To;

    public FormField Container { get; }

    public FormField To { get; } = new("Kept in", 12, FieldKind.Choice)
    {
        Choices = () => ["freezer", "fridge", "shelf"], Hint = "Freezer, fridge, shelf, or a place of your own.",
    };

    public FormField OpensFrom { get; } = new("not opened before", 10, FieldKind.Date) { Hint = "Empty for what the setting thaw-hours gives." };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new StorageMove
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Container = answers.Needed(Container),
        To = answers.Needed(To),
        OpensFrom = answers.OptionalDate(OpensFrom),
        Note = Note.Text,
    };

    /// <summary>What is taken out of the cold goes to the shelf, anything else into the freezer.</summary>
    private string Other(string container) =>
        _holdings.Container(container)?.Storage.Trim().ToLowerInvariant() is "freezer" or "fridge" ? "shelf" : "freezer";
}
