using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Terminal.Forms;

/// <summary>An item is written down, or its settings are changed.</summary>
internal sealed class ItemForm : FormModel
{
    private readonly Holdings _holdings;
    private readonly ItemFields _fields;

    public ItemForm(ILedger ledger, string? code)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        _fields = new(_holdings);
        if (code is not null && _holdings.Item(code) is { } known)
            _fields.Offer(known);
    }

    public override string Title => "Item";

    public override IReadOnlyList<string> Purpose =>
    [
        "A film, chemical or supply with its settings; all but the first three lines may stay empty. What was recorded before keeps its settings.",
        "Capacity is in sq in per litre and always has its basis: maker's, handbook, strict or own. Days are how long it keeps: sealed, opened "
        + "while at least half full, below half full; then mixed in a full bottle, a part-full one, under a floating lid; hours in an open tray.",
        "Cautions are yours, from the maker's safety data sheet, which governs with local rules.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows =>
    [
        [_fields.Code, _fields.Name], [_fields.Kind, _fields.Role, _fields.Format], [_fields.Pack, _fields.Unit, _fields.Dilution],
        [_fields.Capacity, _fields.Basis, _fields.Others], [_fields.Minimum, _fields.Replenisher, _fields.Weight],
        [_fields.Sealed, _fields.OpenedFull, _fields.OpenedPart], [_fields.WorkingFull, _fields.WorkingPart, _fields.Lid, _fields.Tray],
        [_fields.Lead, _fields.Service, _fields.Least], [_fields.Density, _fields.Dead, _fields.StockOf], [_fields.Formula],
        [_fields.Cautions], [Note],
    ];

    public override FormField First => _fields.Code.IsEmpty ? _fields.Code : _fields.Name;

    public FormField Note { get; } = new("Note", 50);

    public override void Edited(FormField field)
    {
        if (field == _fields.Format && _holdings.Formats.TryFind(field.Text, out var format))
            _fields.Unit.Offer(format.Unit.Name());
        else if (field == _fields.Kind)
            _fields.Unit.Offer(Usual(field.Text).Name());
    }

    protected override Entry Read(Answers answers) => new ItemDefinition
    {
        Key = EntryKey,
        Date = Ledger.Today,
        Item = _fields.Read(answers),
        Note = Note.Text,
    };

    private static Unit Usual(string kind) =>
        kind == ItemKind.Film.Name() ? Unit.Sheet : kind == ItemKind.Supply.Name() ? Unit.Piece : Unit.Millilitre;
}
