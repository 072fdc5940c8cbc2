using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;
using Ledger.Terminal.Screens;
using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Forms;

/// <summary>A product is written down for the first time, or the settings of a known one are changed.</summary>
internal sealed class ItemForm : FormModel
{
    private readonly Holdings _holdings;
    private readonly Item? _known;
    private readonly ItemUseFields _use = new();
    private readonly ItemKeepingFields _keeping = new();
    private readonly ItemOrderFields _order = new();

    private readonly FormField _role = new("role", 14, FieldKind.Choice)
    {
        Choices = () => ItemNames.Roles.Where((_, i) => (ItemRole)i is var role && !role.IsOfStepsOnly() && !IsPaper(role)),
        Hint = "What the chemical does.",
    };

    private readonly FormField _paper = new("role", 14, FieldKind.Choice)
    {
        Choices = () => ItemNames.Roles.Where((_, i) => (ItemRole)i is ItemRole.Other || IsPaper((ItemRole)i)),
        Hint = "Other for film; paper has baths of its own.",
    };

    /// <summary>Opens the form.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="code">The item to change; null for a new one.</param>
    public ItemForm(ILedger ledger, string? code)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        _known = code is null ? null : _holdings.Item(code);
        Format = new("format", 10, FieldKind.Choice)
        {
            Choices = () => _holdings.Formats.All.Select(format => format.Code), Hint = $"{FormatTable.Accepted}.",
        };
        Code.Offer(_known?.Code);
        Name.Offer(_known?.Name);
        Kind.Offer((_known?.Kind ?? ItemKind.Film).Name());
        foreach (var field in new[] { _role, _paper })
            field.Offer((_known?.Role ?? ItemRole.Other).Name());
        Format.Offer(_known is null ? "8x10" : _known.Format?.Code);
        Unit.Offer((_known?.Unit ?? Core.Measures.Unit.Millilitre).Name());
        Pack.Offer(_known is null ? "" : Scaled.ToText(_known.Pack.Value, 3));
        Formula.Offer(_known?.Formula);
        Cautions.Offer(_known?.Cautions);
        if (_known is null)
            return;
        _use.Offer(_known);
        _keeping.Offer(_known.Keeping);
        _order.Offer(_known);
    }

    public override string Title => _known is null ? "New item" : $"Settings of {_known.Code}";

    public override IReadOnlyList<string> Purpose =>
    [
        "A product that you keep: a film or paper in one format, a chemical, a supply. Only its code, kind and pack must be written.",
        "What happened before keeps the settings it was recorded with. Kind, format and unit stay as they are once the item is known: "
        + "a changed product gets a code of its own.",
        "Limits come from the maker's data sheet or your own tests; an empty field sets no limit.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => KindNow switch
    {
        ItemKind.Film => [[Code, Name], [Kind, Format, Role], [Pack, _use.FixerFactor], [_keeping.Sealed], .. _order.Rows, [Formula], [Cautions]],
        ItemKind.Chemical =>
            [[Code, Name], [Kind, Role], [Pack, Unit], .. _use.Rows, .. _keeping.Rows, .. _order.Rows, [Formula], [Cautions]],
        _ => [[Code, Name], [Kind], [Pack], .. _order.Rows, [Cautions]],
    };

    public override FormField First => _known is null ? Code : Pack;

    public FormField Code { get; } = new("Item", 16) { Hint = "The short code that forms, labels and files use, such as fen80." };

    public FormField Name { get; } = new("name", 36) { Hint = "As it stands on the box." };

    public FormField Kind { get; } = new("Kind", 10, FieldKind.Choice) { Choices = () => ItemNames.Kinds };

    public FormField Role => KindNow == ItemKind.Film ? _paper : _role;

    public FormField Format { get; }

    public FormField Unit { get; } = new("in", 6, FieldKind.Choice)
    {
        Choices = () => new[] { Core.Measures.Unit.Millilitre, Core.Measures.Unit.Gram }.Select(unit => unit.Name()),
        Hint = "Liquids in ml, powders in g.",
    };

    public FormField Pack { get; } = new("Pack", 8, FieldKind.Figure) { Hint = "What one pack holds: sheets, rolls, pieces, ml or g." };

    public FormField Formula { get; } = new("Formula", 30) { Hint = "The maker's formula version, where a changed recipe keeps differently." };

    public FormField Cautions { get; } = new("Cautions", 60) { Hint = "From the maker's safety data sheet; printed on labels and cards." };

    private ItemKind KindNow => (ItemKind)Math.Max(0, ItemNames.Kinds.ToList().IndexOf(Kind.Text.Trim().ToLowerInvariant()));

    protected override Entry Read(Answers answers)
    {
        var kind = (ItemKind)answers.OneOf(Kind, ItemNames.Kinds);
        var format = kind == ItemKind.Film ? answers.Format(Format, _holdings.Formats) : null;
        var unit = kind switch
        {
            ItemKind.Film => format?.Unit ?? Core.Measures.Unit.Sheet,
            ItemKind.Chemical => (Unit)answers.OneOf(Unit, Units.Names),
            _ => Core.Measures.Unit.Piece,
        };
        var code = answers.Needed(Code);
        var item = (_known ?? new() { Code = code, Name = code, Kind = kind, Unit = unit, Pack = new(0, unit) }) with
        {
            Code = code,
            Name = Answers.Optional(Name) ?? code,
            Kind = kind,
            Role = kind == ItemKind.Supply ? ItemRole.Other : (ItemRole)answers.OneOf(Role, ItemNames.Roles),
            Format = format,
            Unit = unit,
            Pack = answers.NeededQuantity(Pack, unit),
            Formula = Formula.Text.Trim(),
            Cautions = Cautions.Text.Trim(),
        };
        item = _order.Read(answers, _use.Read(answers, item with { Keeping = _keeping.Read(answers) }));
        return new ItemDefinition { Key = EntryKey, Date = Ledger.Today, Item = item };
    }

    /// <summary>A new item's settings, or what changes in a known one.</summary>
    protected override IReadOnlyList<Block> More(Posting posting)
    {
        if (posting.Entry is not ItemDefinition { Item: var item })
            return [];
        var style = _holdings.Settings.Style;
        var after = ShelfBlocks.Settings(item, style).ToList();
        if (_known is null)
            return [Block.Facts($"{item.Code}: {item.Name}", after)];
        var before = ShelfBlocks.Settings(_known, style).ToList();
        var changed = before.Concat(after).Select(fact => fact.Label).Distinct()
            .Select(label => (Label: label, Before: All(before, label), After: All(after, label)))
            .Where(fact => fact.Before != fact.After)
            .Select(fact => (fact.Label, (string?)$"{fact.Before} -> {fact.After}")).ToList();
        if (_known.Name != item.Name)
            changed.Insert(0, ("Name", $"{_known.Name} -> {item.Name}"));
        return [changed.Count == 0 ? Block.Of("Before -> after", "Nothing changes yet.") : Block.Facts("Before -> after", changed)];
    }

    private static string All(IEnumerable<(string Label, string? Text)> facts, string label) =>
        string.Join(", ", facts.Where(fact => fact.Label == label).Select(fact => fact.Text).DefaultIfEmpty("not set"));

    private static bool IsPaper(ItemRole role) => role is ItemRole.ResinCoatedPaper or ItemRole.FibrePaper;
}
