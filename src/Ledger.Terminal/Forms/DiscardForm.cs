using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Forms;

/// <summary>A bath is poured out, or stock is thrown away unused.</summary>
internal sealed class DiscardForm : FormModel
{
    private readonly Holdings _holdings;

    public DiscardForm(ILedger ledger, string what)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        What = new("What", 16, FieldKind.Choice)
        {
            Choices = () =>
            [
                .. _holdings.Baths.Select(bath => bath.Code), .. _holdings.Items.Select(item => item.Code),
                .. _holdings.Containers.Select(container => container.Code), .. FilmPlaces(_holdings),
            ],
            Hint = "A bath, a box or bottle, an item, a holder side, or a box of exposed sheets.",
        };
        What.Offer(what);
        Jug = JugField.Of(_holdings);
        var isBath = _holdings.Bath(what) is not null;
        Reason.Offer(!isBath ? "too old" : InUse(what) is null ? "spent" : "");
        if (!isBath)
            Jug.Offer(null);
        Rows = isBath ? [[Date, What], [Reason], [Jug], [Note]]
            : UnitOf(_holdings, what) == Unit.Millilitre ? [[Date, What], [Amount], [Reason], [Jug], [Note]]
            : [[Date, What], [Amount], [Reason], [Note]];
    }

    public override string Title => _holdings.Bath(What.Text) is null ? "Throw away" : "Pour out";

    public override IReadOnlyList<string> Purpose =>
    [
        "A bath is poured out whole; a box or bottle is thrown away, or part of it.",
        "Used fixer holds silver. Local rules and the maker's safety data sheet say where it may go; never mix anything with bleach.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Reason;

    public FormField What { get; }

    public FormField Jug { get; }

    public FormField Amount { get; } = new("How much", 10, FieldKind.Figure) { Hint = "In the item's unit; empty for all of it." };

    public FormField Reason { get; } = new("Reason", 20, FieldKind.Choice)
    {
        Choices = () => ["spent", "too old", "specks", "yellow", "smell", "fogged", "given away"],
        Hint = "Up and Down offer the usual reasons.",
    };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers)
    {
        var what = answers.Needed(What);
        return new Discard
        {
            Key = EntryKey,
            Date = answers.Date(Date),
            What = what,
            Quantity = answers.Quantity(Amount, UnitOf(_holdings, what)),
            Reason = Because(answers, what),
            Jug = Answers.Optional(Jug),
            Note = Note.Text,
        };
    }

    protected override IReadOnlyList<Block> More(Posting posting) =>
        posting.Entry is Discard discard && InUse(discard.What) is { } reading ? [Block.Of("Before you pour it out", $"  {Good(reading)}.")] : [];

    /// <summary>Why a bath that could be used is poured out, only the user knows.</summary>
    private string Because(Answers answers, string what)
    {
        if (!Reason.IsEmpty || InUse(what) is not { } reading)
            return answers.Needed(Reason);
        answers.Problem($"{Reason.Label}: {Good(reading)}; write why it is poured out");
        return "";
    }

    private BathReading? InUse(string what) =>
        _holdings.Bath(what) is { } bath && new BathReading(bath, _holdings.AsOf) is { IsSpent: false } reading ? reading : null;

    private static string Good(BathReading reading) => reading.GoodUntil is { } good
        ? $"{reading.Bath.Code} is good until {Dates.Text(good.Date)}"
        : $"{reading.Bath.Code} has not ended";

    /// <summary>What an item, or the item in a container, is counted in; a holder and a box of exposed ones hold sheets.</summary>
    internal static Unit UnitOf(Holdings holdings, string what) =>
        holdings.Item(what)?.Unit ?? holdings.Item(holdings.Container(what)?.Lot.Item ?? "")?.Unit ?? Unit.Sheet;

    /// <summary>The boxes of exposed sheets, and the holder sides with a sheet in them.</summary>
    internal static IEnumerable<string> FilmPlaces(Holdings holdings) =>
    [
        .. holdings.Film.ExposedBoxes.Select(box => box.Code),
        .. holdings.Film.Sheets.Select(sheet => holdings.Film.Side(sheet.At)?.Code).OfType<string>(),
    ];
}
