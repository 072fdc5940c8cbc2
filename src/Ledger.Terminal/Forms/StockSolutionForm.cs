using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Terminal.Forms;

/// <summary>A powder or concentrate is mixed into a stock solution.</summary>
internal sealed class StockSolutionForm : FormModel
{
    private readonly Holdings _holdings;

    public StockSolutionForm(ILedger ledger, string? item)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        Item = new("Stock", 16, FieldKind.Choice)
        {
            Choices = () => Stocks.Select(stock => stock.Code),
            Hint = "The stock solution's own item.",
        };
        From = new("Mixed from", 16, FieldKind.Choice)
        {
            Choices = () => _holdings.Items.Where(one => one.Kind == ItemKind.Chemical).Select(one => one.Code),
            Hint = "The powder or concentrate.",
        };
        var isPowder = item is not null && Stocks.All(stock => stock.Code != item);
        Item.Offer(isPowder || item is null ? Stocks.FirstOrDefault(stock => stock.StockOf == item || item is null)?.Code : item);
        Packs.Offer("1");
        Rows = [[Date, Item], [From, Packs, Amount], [Volume], [Count, Size], [Note]];
        From.Offer(isPowder ? item : _holdings.Item(Item.Text)?.StockOf);
    }

    public override string Title => "Mix a stock solution";

    public override IReadOnlyList<string> Purpose =>
    [
        "Whole packs of powder, or a concentrate, become a stock solution with its own cost, mixing date and life; "
        + "working solutions are drawn from it.",
        "Do not breathe the dust; gloves, eye protection and fresh air. The maker's safety data sheet governs.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Volume;

    public FormField Item { get; }

    public FormField From { get; }

    public FormField Packs { get; } = new("Packs", 5, FieldKind.Figure) { Hint = "Mixed whole." };

    public FormField Amount { get; } = new("or weighed", 8, FieldKind.Figure) { Hint = "In the powder's unit, in place of whole packs." };

    public FormField Volume { get; } = new("Made, ml", 8, FieldKind.Figure) { Hint = "How much stock solution is made." };

    public FormField Count { get; } = new("Bottles", 5, FieldKind.Figure) { Hint = "Empty for a single one that just holds it." };

    public FormField Size { get; } = new("Each holds, ml", 8, FieldKind.Figure) { Hint = "What one bottle holds when it is full." };

    public FormField Note { get; } = new("Note", 50);

    public override void Edited(FormField field)
    {
        if (field == Item)
            From.Offer(_holdings.Item(Item.Text)?.StockOf);
    }

    protected override Entry Read(Answers answers)
    {
        var from = answers.Needed(From);
        var size = answers.Quantity(Size, Unit.Millilitre);
        var count = Count.IsEmpty ? 0 : answers.Whole(Count);
        if (count is < 0 or > 200 || (count > 0 && size is null))
            answers.Problem("Bottles: from 1 to 200, with what each holds");
        return new StockSolution
        {
            Key = EntryKey,
            Date = answers.Date(Date),
            Item = answers.Needed(Item),
            From = from,
            Packs = Packs.IsEmpty ? 1 : answers.Whole(Packs),
            Amount = answers.Quantity(Amount, _holdings.Item(from)?.Unit ?? Unit.Gram),
            Volume = answers.Needed(Volume).Length == 0 ? default : answers.Volume(Volume) ?? default,
            Bottles = size is { } each ? [.. Enumerable.Range(0, Math.Clamp(count, 0, 200)).Select(_ => new FilledBottle(each))] : [],
            Note = Note.Text,
        };
    }

    private IEnumerable<Item> Stocks => _holdings.Items.Where(item => item is { Kind: ItemKind.Chemical, Unit: Unit.Millilitre });
}
