using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.App.Commands.Record;

/// <summary>record bath: a working solution is mixed that will be used again.</summary>
internal sealed class RecordBath : RecordCommand
{
    private readonly Argument<string> _bath = Typed.Argument("bath", Text.NotEmpty, "a new name for the bath, such as F3");
    private readonly Argument<string> _item = Typed.Argument("item", Text.NotEmpty, "the item it is mixed from");
    private readonly Argument<Volume?> _volume = Typed.Argument(
        "volume", Text.Volume, "how much working solution is made, such as 1500ml or 1.5l");
    private readonly Option<Dilution?> _dilution = Typed.Option(
        "--dilution", "1+N", Text.Dilution, "how it is diluted; otherwise as the item usually is");

    private readonly Option<Amount?> _amount = Typed.Option<Amount?>(
        "--amount", "AMOUNT", Amount.Parse, "what was measured out, such as 300ml or 40g; otherwise what the dilution asks for");

    private readonly Option<BathMaterial?> _material = Typed.Option(
        "--material", "film|paper", Text.OneOf<BathMaterial>(BathMaterials.Names, "material"), "what will pass through it; otherwise film");

    private readonly Option<Area?> _capacity = Typed.Option(
        "--capacity", "SQIN", Text.SquareInches, "what a litre can take, in square inches of film; otherwise the item's own");

    private readonly Option<string?> _basis = new("--basis")
    {
        HelpName = "TEXT",
        Description = "where that capacity comes from: maker's, handbook, strict, own",
    };
    private readonly Option<string?> _pairedWith = Typed.Option<string?>(
        "--paired-with", "BATH", Text.NotEmpty, "the bath that stands before it in two-bath fixing");

    private readonly Option<string?> _from = Typed.Option<string?>(
        "--from", "BOTTLE", Text.NotEmpty, "the bottle to draw from; otherwise the one that is reached for first");

    private readonly Option<WorkingContainer?> _standsIn = Typed.Option(
        "--stands-in", "CONTAINER", Text.OneOf<WorkingContainer>(WorkingContainers.Names, "container"),
        $"what it stands in: {string.Join(", ", WorkingContainers.Names)}; otherwise a full bottle");

    private readonly Option<bool> _bookDifference = BookDifference();

    public RecordBath(Workbench bench)
        : base(bench, "bath", "A working solution is mixed that will be used again: fixer, stop, wash aid.", """
            Example: trayledger record bath F4 tarnfix 1.5l --dilution 1+4 --paired-with F3
            """)
    {
        Arguments.Add(_bath);
        Arguments.Add(_item);
        Arguments.Add(_volume);
        AddOwn(_dilution, _amount, _material, _capacity, _basis, _pairedWith, _standsIn, _from, _bookDifference);
    }

    protected override Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings) => new BathMixing
    {
        Key = frame.Key,
        Date = frame.Date,
        Note = frame.Note,
        Bath = parse.GetRequiredValue(_bath),
        Item = parse.GetRequiredValue(_item),
        WorkingVolume = parse.GetValue(_volume)!.Value,
        Dilution = parse.GetValue(_dilution),
        Amount = parse.GetValue(_amount)?.For(holdings.Item(parse.GetRequiredValue(_item))),
        Material = parse.GetValue(_material) ?? BathMaterial.Film,
        Capacity = Capacity(parse),
        PairedWith = parse.GetValue(_pairedWith),
        StandsIn = parse.GetValue(_standsIn) ?? WorkingContainer.FullBottle,
        Container = parse.GetValue(_from),
        BooksDifference = parse.GetValue(_bookDifference),
    };

    private Capacity? Capacity(ParseResult parse) => (parse.GetValue(_capacity), parse.GetValue(_basis)) switch
    {
        ({ } perLitre, var basis) => new(perLitre, basis ?? ""),
        (null, null) => null,
        _ => throw new FormatException("--basis says where a capacity comes from; give the capacity too"),
    };
}
