using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Stock;

namespace Ledger.Terminal.Forms;

/// <summary>A strip of film is timed until it clears.</summary>
internal sealed class ClearingTestForm : FormModel
{
    private readonly Holdings _holdings;

    public ClearingTestForm(ILedger ledger, string? bath)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        var fixers = _holdings.Baths.Where(one => one is { Role: ItemRole.Fixer, Material: BathMaterial.Film }).ToList();
        Bath = new("Bath", 10, FieldKind.Choice) { Choices = () => fixers.Select(one => one.Code), Hint = "The fixer for film." };
        Bath.Offer((fixers.Find(one => one.Code == bath) ?? fixers.FirstOrDefault())?.Code);
        Film = new("Film", 16, FieldKind.Choice)
        {
            Choices = () => _holdings.Items.Where(item => item is { Kind: ItemKind.Film, IsPaper: false }).Select(item => item.Code),
            Hint = "The film the strip is of: always compare the same film.",
        };
        Film.Offer(_holdings.Bath(Bath.Text)?.ClearingTests is [.., var last] ? last.Film : LastDeveloped ?? Film.Choices().FirstOrDefault());
        Rows = [[Date, Bath, Film], [Seconds, Fresh], [Sheets], [Note]];
    }

    public override string Title => "Clearing test";

    public override IReadOnlyList<string> Purpose =>
    [
        "How long an undeveloped strip of film takes to clear, in room light. The first test of a film in a fresh bath is its baseline.",
        "At so many times the fresh time the bath is spent: the setting exhausted-multiple. Three tests or more foretell when.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Seconds;

    public FormField Bath { get; }

    public FormField Film { get; }

    public FormField Seconds { get; } = new("Cleared in, seconds", 8, FieldKind.Figure) { Hint = "Tenths at the finest." };

    public FormField Fresh { get; } = new("The bath is fresh", 4, FieldKind.Tick)
    {
        Hint = "Later tests of this film are measured against it.",
    };

    public FormField Sheets { get; } = new("Sheets cut up", 6, FieldKind.Figure)
    {
        Hint = "Taken from stock; empty when a scrap was used.",
    };

    public FormField Note { get; } = new("Note", 50);

    private string? LastDeveloped => Ledger.Sessions(Ledger.Today, null, 1) is [{ Lines: [var line, ..] }] ? line.Item : null;

    protected override Entry Read(Answers answers) => new ClearingTest
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Bath = answers.Needed(Bath),
        Film = answers.Needed(Film),
        Seconds = answers.Needed(Seconds).Length == 0 ? 0 : answers.Figure(Seconds),
        IsFresh = Fresh.IsTicked,
        Sheets = Sheets.IsEmpty ? 0 : answers.Whole(Sheets),
        Note = Note.Text,
    };
}
