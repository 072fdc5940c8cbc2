using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>
/// A product is written down for the first time, or the settings of a known one are changed. Each kind is asked for
/// what it has; what a known item has besides is asked for too, so that nothing is lost by saving it.
/// </summary>
internal sealed class ItemForm : KindForm
{
    private static readonly string[] Common =
        ["item", "name", "kind", "pack", "lead_time_days", "service_level", "minimum_on_hand",
            "cautions", "note", "date"];

    private static readonly string[] OfFilm = ["format", "role", "fixer_factor", "sealed_days",
        "freezer_days", "fridge_days", "thaw_hours", "formula"];

    private static readonly string[] OfFilmAlone = ["format", "fixer_factor"];

    private readonly Item? _known;
    private string _kindNow = "film";

    /// <summary>Opens the form.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="code">The item to change; null for a new one.</param>
    /// <param name="name">What a new one is to be called; null where that is not known yet.</param>
    public ItemForm(ILedger ledger, string? code, string? name = null)
        : base(ledger, "item", ("item", code ?? name))
    {
        _known = code is null ? null : Holdings.Item(code);
        if (_known is { } known)
        {
            var definition = new ItemDefinition { Key = EntryKey, Date = ledger.Today, Item = known };
            Own.Begin(EntryWriting.Write(EntryKinds.Of(definition), definition, Terms));
            OfferAll();
            return;
        }

        Own.Offer("kind", "film");
        Own.Offer("format", "8x10");
    }

    public override string Title => _known is null ? "New item" : $"Settings of {_known.Code}";

    public override FormField First => _known is not null ? this["pack"] : this[this["item"].IsEmpty ? "item" : "name"];

    protected override bool Asks(Field field) =>
        field == CommonFields.FromDay || Common.Contains(field.Name) || _kindNow switch
        {
            "film" => OfFilm.Contains(field.Name),
            "chemical" => !OfFilmAlone.Contains(field.Name),
            _ => false,
        } || (_known is not null && field.Name is not ("unit" or "from_day") && !this[field.Name].IsEmpty
            && !IsSilent(field.Name));

    protected override void OfferAll()
    {
        var (kind, format) = (this["kind"].Text, this["format"].Text);
        base.OfferAll();
        if (this["kind"].Choices().FirstOrDefault(word => word.Equals(this["kind"].Text.Trim(),
            StringComparison.OrdinalIgnoreCase)) is { } said)
            _kindNow = said;
        if (Holdings.Item(this["item"].Text.Trim()) is not null)
            return;
        Own.Offer("kind", kind);
        Own.Offer("format", format);
    }

    /// <summary>A new item's settings, or what changes in a known one.</summary>
    protected override IReadOnlyList<Block> More(Posting posting)
    {
        if (posting.Entry is not ItemDefinition { Item: var item })
            return [];
        var style = Holdings.Settings.Style;
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
        return [changed.Count == 0 ? Block.Of("Before -> after", "Nothing changes yet.")
            : Block.Facts("Before -> after", changed)];
    }

    private static string All(IEnumerable<(string Label, string? Text)> facts, string label) =>
        string.Join(", ", facts.Where(fact => fact.Label == label).Select(fact => fact.Text).DefaultIfEmpty("not set"));

    /// <summary>What every item has, whether or not it was ever said.</summary>
    private bool IsSilent(string field) => field switch
    {
        "role" => _known!.Role == ItemRole.Other,
        "fixer_factor" => _known!.FixerFactorThousandths == 1000,
        _ => false,
    };
}
