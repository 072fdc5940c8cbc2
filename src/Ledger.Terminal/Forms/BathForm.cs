using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Terminal.Forms;

/// <summary>A working solution is mixed that will be used again.</summary>
internal sealed class BathForm : FormModel
{
    private readonly Holdings _holdings;
    private readonly Bath? _like;

    /// <param name="ledger">The ledger.</param>
    /// <param name="like">The bath whose successor is mixed; null for the one mixed last.</param>
    public BathForm(ILedger ledger, string? like)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        _like = like is null ? _holdings.Baths.LastOrDefault() : ledger.Bath(like, ledger.Today);
        Item = new("Mixed from", 16, FieldKind.Choice)
        {
            Choices = () => Mixable.Select(item => item.Code),
            Hint = "The item it is mixed from.",
        };
        PairedWith = new("Second after", 10, FieldKind.Choice)
        {
            Choices = () => ["", .. _holdings.Baths.Select(bath => bath.Code)],
            Hint = "Two-bath fixing: the bath before it. Empty when it stands alone or first.",
        };
        Rows = [[Date, Bath], [Item, Volume, Dilution], [Amount, Material], [PairedWith, StandsIn], [Capacity, Basis], [Difference], [Note]];
        OfferLike();
    }

    public override string Title => "Mix a bath";

    public override IReadOnlyList<string> Purpose =>
    [
        "A working solution that is used again: fixer, stop, wash aid. The concentrate leaves its bottle and the bath begins to age.",
        "For two-bath fixing, mix the second bath and name the one it stands after. "
        + "When the first is spent, pour it out: the second moves up.",
        "Wear gloves and eye protection and see to fresh air; the maker's safety data sheet and local rules govern.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Item.IsEmpty ? Item : Bath;

    public FormField Bath { get; } = new("Bath", 10) { Hint = "A name of its own, never used before." };

    public FormField Item { get; }

    public FormField Volume { get; } = new("Made, ml", 8, FieldKind.Figure) { Hint = "How much working solution is made." };

    public FormField Dilution { get; } = new("Dilution", 10) { Hint = "Such as 1+4; empty for the item's usual one." };

    public FormField Amount { get; } = new("Measured out", 8, FieldKind.Figure)
    {
        Hint = "In the item's unit; empty for what the dilution asks. A powder needs it.",
    };

    public FormField Material { get; } = new("For", 6, FieldKind.Choice)
    {
        Choices = () => BathMaterials.Names,
        Hint = "Film and paper never share a bath.",
    };

    public FormField PairedWith { get; }

    public FormField StandsIn { get; } = new("Kept in", 16, FieldKind.Choice)
    {
        Choices = () => WorkingContainers.Names,
        Hint = "What it stands in between sessions; empty for a full bottle.",
    };

    public FormField Capacity { get; } = new("Capacity, sq in/litre", 8, FieldKind.Figure) { Hint = "Empty for the item's own." };

    public FormField Basis { get; } = new("Basis", 12, FieldKind.Choice)
    {
        Choices = () => ["maker's", "handbook", "strict", "own"],
        Hint = "Where the capacity comes from.",
    };

    public override FormField Difference { get; } = new("Book the difference", 4, FieldKind.Tick)
    {
        Hint = "When the bottle holds more than the book says.",
    };

    public FormField Note { get; } = new("Note", 50);

    public override void Edited(FormField field)
    {
        if (field == Item && _holdings.Item(Item.Text) is { } item)
            Dilution.Offer(item.Dilution?.Text);
    }

    protected override Entry Read(Answers answers)
    {
        var item = answers.Needed(Item);
        return new BathMixing
        {
            Key = EntryKey,
            Date = answers.Date(Date),
            Bath = answers.Needed(Bath),
            Item = item,
            WorkingVolume = answers.Volume(Volume) ?? default,
            Dilution = answers.Dilution(Dilution),
            Amount = answers.Quantity(Amount, _holdings.Item(item)?.Unit ?? Unit.Millilitre),
            Material = (BathMaterial)answers.OneOf(Material, BathMaterials.Names),
            Capacity = ReadCapacity(answers),
            PairedWith = Answers.Optional(PairedWith),
            StandsIn = StandsIn.IsEmpty ? WorkingContainer.FullBottle : (WorkingContainer)answers.OneOf(StandsIn, WorkingContainers.Names),
            BooksDifference = Difference.IsTicked,
            Note = Note.Text,
        };
    }

    private Capacity? ReadCapacity(Answers answers)
    {
        if (answers.OptionalFigure(Capacity) is not { } written)
            return null;
        if (written is > 0 and < 1_000_000)
            return new(Area.FromSquareInches(written), Basis.Text.Trim());
        answers.Problem("Capacity: it must be more than nothing and less than 1000000 sq in per litre");
        return null;
    }

    private IEnumerable<Item> Mixable => _holdings.Items.Where(item => item.Kind == ItemKind.Chemical && item.Role != ItemRole.Water);

    private void OfferLike()
    {
        Material.Offer(BathMaterials.Names[0]);
        if (_like is not { } like)
        {
            Item.Offer(Mixable.FirstOrDefault(item => item.Role == ItemRole.Fixer)?.Code);
            Edited(Item);
            return;
        }

        Bath.Offer(NextName.After(like.Code, name => Ledger.Bath(name, Ledger.Today) is not null));
        Item.Offer(like.Item);
        Volume.Offer(Scaled.InUnits(like.WorkingVolume.Microlitres, 1000));
        Dilution.Offer(like.Dilution.Text);
        Material.Offer(like.Material.Name());
        PairedWith.Offer(WasOfAPair(like) ? Alone(like)?.Code : null);
    }

    private bool WasOfAPair(Bath bath) => bath.PairedWith is not null || _holdings.SecondAfter(bath) is not null;

    /// <summary>A bath of the same item that has no second one yet: after a rotation, the one that moved up.</summary>
    private Bath? Alone(Bath like) => _holdings.WorkingBaths.LastOrDefault(bath =>
        bath.Item.Equals(like.Item, StringComparison.OrdinalIgnoreCase)
        && bath.Material == like.Material
        && _holdings.SecondAfter(bath) is null);
}
